import type { Kind } from "../reading.ts";
import { wordSet } from "./words.ts";

/** A line without any of these, or of what was noted, corrects nothing. */
export const MAY_CORRECT = wordSet(
  "not no nope nah oops whoops woops wait actually actualy really sorry meant mean should shouldve shoulda supposed fix change correct correction correcting update adjust edit make made " +
    "wrong typo mistake bad autocorrect thumbs fingers fingered finger fart misread mistyped miscounted miscalculated misheard misremembered mixed mixing flipped transposed swapped switched confused jumbled goofed " +
    "messed screwed botched lied backwards reversed cant type turns turned ended wound came out receipt reciept receipts odometer gps says said was were isnt its is only just when tax put had wrote typed logged " +
    "entered remember delete remove scrub bin ditch och ach aw erase scratch nix void scrap undo cancel strike disregard ignore forget drop lose kill wipe yank take pull get pretend twice already never didnt happened move shift switch charge " +
    "didn isn wasn hasn haven weren aren hasnt havent wasnt werent arent accident accidentally sent unsell un unfinish tapped " +
    "lord beg pardon apologies yikes gosh goodness donated kept owes owed haggled " +
    "incorrect backdate backdated regarding hang hold instead rather early rename call called relabel heard remembered idiot tired ways way checked found looked going looking needs used got thats both make made more ended paid bought one used double forgot sold finished done returned refund",
);
/** Words that say that what was noted is another. */
export const DECIDES = wordSet(
  "meant mean should shouldve shoulda supposed fix change correct correction correcting update adjust edit amend wrong rename relabel typo mistake incorrect backdate backdated move shift switch reassign charge i_meant i_mean make_that make_it should_be should_have_been should_say should_read it_should_be that_should_be supposed_to_be was_supposed_to_be meant_to_say meant_to_put",
);
/** Those that are things as well, and what stands behind them where they are not. */
export const THINGS_TOO = wordSet("change shift charge switch");
export const BEFORE_CHANGED = wordSet("the my that it this those these them to from our me");
/** Those by which nothing but a note is put right, unless what was planned stands behind them. */
export const MEANT = wordSet("meant i_meant meant_to_say meant_to_put should_have_been shouldve_been");
export const BEFORE_PLANNED = wordSet("to for as");
/** Before where something is. */
export const BEFORE_PLACE = wordSet("in on at of with about into under");
/** Words that may say so. */
export const DOUBTS = wordSet(
  "no nope nah oops oop oopsie whoops woops wait actually actualy really sorry shoot crap dang darn ugh argh err er dangit dammit nvm never_mind sry hmm hm ah aw lord beg pardon beg_pardon pardon_me apologies apology whoopsie yikes gosh goodness regarding mercy shucks drat rats crikey blast blimey ack ackk gah doh duh dammit damn shit crud mb mybad",
);
/** Words that say, wherever they stand, that what was noted is another. */
export const MARKS = wordSet(
  "sorry sry srry oops oop whoops woops whoopsie wait hold_on hang_on actually actualy correction mistake typo misread misheard mistyped miscounted my_bad apologies apology pardon mb mybad nvm never_mind meant i_mean should_be should_have_been shouldve shoulda should_read wrong amend correct_that correct_it put_that_right put_it_right nope no_it no_that no_i no_not silly_me dear_me forgive_me by_accident take delete remove strike cancel scratch erase i_put i_wrote i_typed i_said we_put he_put she_put he_wrote she_wrote",
);
/** Words that tell of how it came out in the end. */
export const CAME_OUT = wordSet("only ended_up wound_up turned_out came_out ended wound closer nearer");
/** Words beside them that tell nothing of which note it is. */
export const BESIDE_MISNOTED = wordSet(
  "was were is are be been being am it its it_is it_was that_was that thats that_is those these this they theyre them em he she his her him you u ya i im ive we weve me us my our mine ours one ones thing things stuff the a an and or but so then well ok okay k " +
    "for on at of in with to from by as off out up down into onto under over back like about right now today tonight earlier before too still just already even though ended wound turned came come comes went go goes going gone " +
    "put said say says saying wrote typed had has have logged entered noted recorded texted sent did do does done get got getting gets gave give giving gives given handed handing paid pay paying pays cost costs costing ran rang charged spent took takes take taking taken left leave " +
    "price amount total number value note notes entry record records books list line part end ends all in_all altogether grand whole exactly even total_of tbh honestly lol haha hah lmao pls please plz thanks thx ty hey hi yo man dude ugh hm hmm oh ah yeah yep yes uh um " +
    "goes belongs belong belonged used using use really actually sorry bucks dollars dollar buck usd cash_money who whos what which where when because cuz cause since guess know thought needs needed can will do_that instead rather than " +
    "ended_up wound_up turned_out came_out came_to up_being closer nearer more_like only quick fix same receipt reciept slip bill label sticker invoice register ticket talked down haggled me_down him seller buyer customer side write writing writed reading read maths math handwriting own pardon me dictating names name figures piece pieces unit home way both hours hour hrs hr minutes minute mins min mile miles mi later cuz after before mornings evenings yesterdays above earlier previous message accuracy dear forgive forgive_me dear_me oh_dear clarity happened logging noting writing entering",
);
/** Verbs and nouns by which a note is spoken of, each to its kinds. */
export const SPOKEN_OF: Readonly<Record<string, readonly Kind[]>> = {
  asking: ["list", "reprice"],
  listing: ["list", "reprice"],
  listed: ["list", "reprice"],
  list: ["list", "reprice"],
  sell: ["sell"],
  posted: ["list", "reprice"],
  went: ["sell", "collect"],
  sold: ["sell"],
  sale: ["sell"],
  deposit: ["hold"],
  hold: ["hold"],
  held: ["hold"],
  drove: ["drive"],
  drive: ["drive"],
  driving: ["drive"],
  trip: ["drive"],
  mileage: ["drive"],
  odometer: ["drive"],
  gps: ["drive"],
  miles: ["drive"],
  worked: ["work"],
  working: ["work"],
  work: ["work"],
  hours: ["work"],
  finished: ["finish"],
  done: ["finish"],
  finish: ["finish"],
  started: ["start"],
  bought: ["buy"],
  gone: ["sell"],
  purchase: ["buy"],
  buy: ["buy"],
  payment: ["pay"],
  refund: ["refund"],
  refunded: ["refund"],
  spent: ["spend"],
};
/** Verbs and states as they stand behind "isn't" and "didn't", each to the note that is denied. */
export const DENIED_KINDS: Readonly<Record<string, Kind>> = {
  ...{ sold: "sell", sell: "sell", selling: "sell" },
  ...{ unsell: "sell", unsold: "sell", unfinish: "finish", unbuy: "buy" },
  ...{ finished: "finish", finish: "finish", done: "finish", complete: "finish", completed: "finish" },
  ...{ listed: "list", list: "list", posted: "list", post: "list" },
  ...{ started: "start", start: "start", deposit: "hold" },
  ...{ bought: "buy", buy: "buy", buying: "buy", get: "buy", getting: "buy", got: "buy" },
};
/** What became of a piece that was not sold. */
export const BECAME: Readonly<Record<string, "kept" | "given" | "scrapped">> = {
  ...{ kept: "kept", keeping: "kept", keep: "kept" },
  ...{ donated: "given", donate: "given", gifted: "given", given: "given", gave_away: "given" },
  ...{ "gave away": "given", "given away": "given", "giving away": "given" },
  ...{
    scrapped: "scrapped",
    trashed: "scrapped",
    tossed: "scrapped",
    junked: "scrapped",
    dumped: "scrapped",
  },
};
/** Behind these stands what it was not: "it wasnt the thrift store". */
export const WAS_NOT = wordSet("wasnt was_not werent were_not isnt is_not arent didnt did_not");
/** "145 rather than 150": behind these, too. */
export const OLD_PHRASES = wordSet("rather_than instead_of");
/** What a piece is to cost from now on, beside them, and no note put right. */
export const OF_NOW = wordSet("put make set have now go ask price");
export const LOAN = wordSet("loan loans");
/** That it is two notes that are taken back. */
export const TWO_NOTES = wordSet("both before");
/** What we give for a thing. */
export const WE_PAY = wordSet(
  "paid pay paying cost costs costing gave give spent ran charged set_me_back set_us_back rang",
);
/** Words that turn what is told: it is no correction of what was noted. */
export const NO_CORRECTION = wordSet(
  "on_hold_with bring bringing brings owes owe owing payday balance another more extra again also forgot forgot_to_log forgot_to_put forgot_to_add wish wished hoping hope if gonna going_to have_to gotta ill well_have retail believe imagine new_price lower lowered dropped raise raised bump bumped marked relisted per each every next later tomorrow never didnt wont cant hasnt havent dont",
);
/** Words that may turn it: such a message is asked about. */
export const MAY_TURN = wordSet(
  "worth maybe might wants want wanted offered offering asked would could will need need_to",
);
/** Behind "instead" and "rather": what follows is what it was. */
export const BEFORE_OLD = wordSet("of than");
/** The same, whatever stands behind them but a thing. */
export const CORRECTIONS = wordSet("correction a_correction typo");
/** What belongs to no piece, and the words before it that say so. */
export const OF_SHOP = wordSet(
  "overhead general shop workshop everything shop_supplies shop_cost shop_costs",
);
export const BEFORE_SHOP = wordSet(
  "to be is was under in as should_be belongs belongs_to goes goes_to goes_under counts_as for",
);
export const MAKES_IT = wordSet("make_it make_that");
/** When somebody comes for a piece. */
export const APPOINTED = wordSet("pickup pick_up pickups collection handover meetup appointment");
/** Behind what stands wrong. */
export const WRONG = wordSet("wrong off incorrect");
/** Nouns by which an earlier note is called: "the sale was 45". */
export const NOTED_AS = wordSet("sale deposit hold drive listing payment trip purchase mileage refund");
/** Behind them, what it was. */
export const WAS = wordSet("was were is thats its it_was that_was");
/** Who says so, beside those of the household. */
export const THEIRS_SAID = wordSet("she he they");
/** Who may have said so, or paid. */
export const THEIR_OWN = wordSet("he she him her");
/** What comes of many notes, and what tells how much that is. */
export const IN_SUMS = wordSet(
  "total totals sum number count tally figure balance profit income subtotal grand_total bottom_line result take net gross earnings",
);
export const TELLS_SUM = wordSet("should shouldve shoulda ought must is was has supposed");
/** What names a piece anew: "its a highboy". */
export const NAMES_IT = wordSet("a an really actually called call rename");
/** Beside a correction these make something else of it than why it was wrong. */
export const TURNS_REASON = wordSet(
  "maybe might if unless saw seen same similar elsewhere online mall went_on spent offered offers offering would_pay would_give wanted_to_pay perhaps not_sure unsure i_think think_so owes owe owed owing still_owes tomorrow later joking kidding jk another another_one one_more second forgot_to_add forgot_to_log also as_well next_time or",
);
/** What is said of another note: that it is right. */
export const RIGHT_AS_IS = wordSet("right correct fine ok okay stays good still");

/** "not 35": what it was, or how; "the deposit was 50": a note is called by its name. */
export const NAMES_OLD =
  /\bnot\b|n['’]?t\b|\b(?:deposit|sale|payment|trip|drive|listing|tips?|fee|receipt|slip|sticker|tag|asking) (?:was|were|says?)\b/i;

/** "couch was 135, the guy was five short": the difference may be told. */
export const NUMBERS_SAID =
  /\b(?:\d[\d.,]*|one|two|three|four|five|six|seven|eight|nine|ten|fifteen|twenty|couple)\b/gi;

/** Where something else may be told: at a mark or a joint, and behind a value at who did it. */
export const REASON_JOINT =
  /[,;!?.:]+\s+|\s+(?:[-–—]+|\.{2,})\s+|\s+(?=(?:because|cause|cuz|coz|since|but|and|so)\s)|(?<=\d)\s+(?=(?:he|she|they|i|we|the|my|its|it's)\s)/gi;
/** A price is of each of several, or of all of them, or is said not to be. */
export const OF_EACH = wordSet("each apiece every per one_of_them one_of_those just_one");
export const IN_ALL = wordSet("all lot total altogether together whole_set both_of_them in_all for_both");
export const NOT_SO = wordSet("not wasnt isnt werent");
/** That is what a price was. */
export const TOLD_SO = wordSet("was were is thats meant not");
/** Of more notes than one. */
export const SEVERAL = wordSet(
  "both all_of_them all_of_those all_of_these they_all those_all all_three all_four",
);
/** Two of them. */
export const BOTH = wordSet("both");
/** Beside what holds for all of them. */
export const BESIDE_ALL = wordSet(
  "btw by_the_way way to_say forgot_to_say say mention forgot were was is paid of them came went i to_log log it",
);

/** "make the desk 80": a price of a piece that is offered is that from now on. */
export const MAKES_THE = /^(?:ok |and |so )?make (?:the|my|that|our)\b/i;
