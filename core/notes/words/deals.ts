/*
 * Words that only complete what a deal says once a row has told which deal it is. A word that is in none of them,
 * and no filler, leaves the deal half read.
 */

import { standFor, wordSet } from "./words.ts";

const WHOSE =
  "he she they him her hers his their them theirs who it that this what was is were are has had been s";
const TAKING_IN =
  "got get received collected collect took picked up brought dropped off handed sent gave paid pay pays me us back over";
const REST =
  "rest other others remaining remainder balance last final payment payments installment second half left more money owed owes owe owing still due outstanding";

/** How somebody leaves a deal, as alternatives of a row. */
export const BACKED_OUT =
  "backed_out|cant_make_it_anymore|cant_make_it_after_all|wont_make_it_anymore|wont_make_it_after_all|cant_come_anymore|cant_come_after_all|back_out|flaked|flaked_out|bailed|bailed_out|ghosted|ghosted_me|never_showed|never_came|no_showed|didnt_show|cancelled|canceled|changed_her_mind|changed_his_mind|changed_their_mind|changed_mind|changed_minds|changed_their_minds|got_cold_feet|pulled_out|walked_away|disappeared|cried_off|bottled_it|bottled_out|chickened_out|wimped_out|did_a_runner|done_a_runner|did_a_bunk|let_me_down|let_us_down|went_cold|gone_cold|gone_off|dropped_out|mucked_me_about|messed_me_about|messed_me_around|blew_me_off|reneged|never_turned_up|didnt_turn_up|never_arrived|had_second_thoughts|has_pulled_out|has_cried_off|has_bailed|has_backed_out|has_gone_off|has_gone_cold|has_dropped_out";

/** What was still to come of a sale comes in. */
export const COLLECT_WORDS = wordSet(
  `${WHOSE} picked up it them grabbed ${TAKING_IN} ${REST} i we my mine in full now finally fully came come comes through by arrived landed cleared showed ` +
    "coughed ponied forked recd short shy more collecting grabbed stopped swung drove pulled over with w another of for on from toward towards all to go settled squared with just it's as well ahead and buyer guy did the whole thing way round been popped nipped stumped bunged brung quid come this_morning this_afternoon this_evening tonight today",
);

/** What was owed never comes. */
export const UNPAID_WORDS = wordSet(
  `${WHOSE} ${TAKING_IN} ${REST} i we never wont cant didnt not coming come came going gonna to ever no good bounced nsf check checks chk cheque payment ` +
    "transfer card reversed declined unpaid for good forever of on the writing wrote write written off stiffed stiffing me us skipped skipping skip out gave give giving up forget " +
    "forgetting forgiving forgave dropping dropped eating ate let letting slide a loss buyer guy lady see saw seen paying money and so be is isnt ran took bad turned " +
    "ghosted ghosting welched disappeared vanished see seeing moved off hes shes theyre that last with returned insufficient funds thing walking walked from as total account clear go through cleared gone got was",
);

/** How a buyer's money came, and that it did not after all. */
export const PAPER = wordSet("check checks chk cheque payment transfer card charge");
export const BOUNCED = wordSet(
  "bounced nsf reversed declined returned disputed bad no_good charged_back chargeback came_back didnt_clear never_cleared insufficient",
);

/** A share of what a piece brought. */
export const SHARE_WORDS = wordSet(
  `${WHOSE} split splits splitting share shares shared sharing divvy divvied divvying divide divided dividing halve halved halving up between us and me i we im our ` +
    "profit profits money made make earned earnings gain gains of on from with w goes go going went gets get give gave giving owe each to for the a half halves third " +
    "quarter evenly equally halfsies fifty 50/50 1/2 1/3 1/4 percent cut part set aside down middle in helped even ways two who my out",
);

/** A piece of somebody else's, sold for a cut. */
export const COMMISSION_WORDS = wordSet(
  `${WHOSE} i we my our me sold selling sell consigned consigning consignment commission cut share part kept keep keeping keeps for of on the a is was got get gets and rest ` +
    "goes went to gave give giving passed on friend friends s out percent paid behalf as from it off took take takes earned made fee finders",
);

/** One piece for another. */
export const TRADE_WORDS = wordSet(
  `${WHOSE} i we me us traded trade trading trades swapped swap swapping swaps swaped bartered barter exchanged exchange up in for even straight fair a an the my our did got get gets getting ` +
    "gave give given giving did made doing deal paid pay received took taking accepted scored plus and with on top extra cash difference boot to of him them threw threw_in kicked added throwing bucks back " +
    "each apiece call calling worth valued value at about as from into toward towards more also another + & my out across no none nothing either way up_front " +
    "counting count counted figure figured figuring say saying says said price priced values im i'm ill like around roughly payment exchange let go went took owe both good w today this one = lb put was were",
);

/** Shares of a whole as said in words, as percents. */
export const SHARES = standFor({
  "50": "half halves halfsies 50/50 fifty_fifty 1/2 fifty evenly equally",
  "33.33": "third 1/3",
  "25": "quarter 1/4",
});

/** Verbs before which one of the household took the money in; before others they are the buyer. */
export const TAKES_IN = wordSet("got get received collected collect took picked");

/** Every word of every deal: none of them is a part of a name. */
export const DEAL_WORDS: ReadonlySet<string> = new Set(
  [COLLECT_WORDS, UNPAID_WORDS, SHARE_WORDS, COMMISSION_WORDS, TRADE_WORDS].flatMap((words) => [...words]),
);

/** Words for people that name nobody. */
export const NOBODY = wordSet(
  "he she they him her hers them his their who you your buyer guy lady person somebody someone man woman dude people",
);

/** Words that say a sale and not whether it is through. */
export const SALE_SAID = wordSet("accepted pocketed went gone left bagged delivered cleared netted fetched");

/** What is only meant to be done: the note that it would be. */
export const INTENDED: Readonly<Record<string, "buy" | "list" | "sell">> = {
  buy: "buy",
  get: "buy",
  grab: "buy",
  list: "list",
  post: "list",
  sell: "sell",
};

/** From an old price to a new one. */
export const PRICE_TO = wordSet("to -> > → down_to");

/** Words beside a price that is none of a sale. */
export const NO_SALE = wordSet("bid bidding bids wish quote quoted quotes estimate estimated almost nearly");
