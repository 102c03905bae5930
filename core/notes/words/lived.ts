import { formsOf, LongList, wordSet } from "./words.ts";

/*
 * What is told in passing with: verbs of everyday life, which never say that something was bought, sold, paid, kept,
 * fetched, returned or done, and the words beside them that may turn a deal round all the same.
 */

/** In their plain form. */
const STEMS = `
adore annoy appear bark bathe behave bite blame blink block bloom boil brag breathe brush burst buzz chat cheer chew chuckle
clap clash climb coach collapse commute complain complement cook cost cough count crack crave creak crowd crumble cry cuddle dance
decorate deserve dig dine drip drool eat enjoy envy faint fall fancy feed feel fidget fish fit fly freeze frown garden giggle
glow golf graduate grin groan grow grumble hang happen hate hike hug hum hurt inherit insist itch jump kiss knit know laugh
lean leak learn lick live look love marry match melt moan mow open mumble nag nap notice nurse overlook play plead pray preach
purr race rain rattle react read recognize relax remember remind retire rhyme ride ring roar rot run rust sag sail
scare scream seem shake shine shiver sigh sing sink sit skate ski sleep slip smell smile smoke snap sneeze snore snow
sparkle spill spin splinter squeak squeal squeeze stand stare starve step stick sting stink stretch struggle study suffer suit
sulk survive swear sweat swell swim swing talk tear teach tease tempt thrill tickle tip tire travel tremble trip turn twist
wag wake walk warp wear weep weigh whine whisper whistle wiggle wink wobble wonder work worry worship yawn yell
`;

/** Forms that follow no rule, and verbs that only join. */
const FORMS = `
am are ate be been being bent bit bitten born broke bred burnt came caught clung crept cried did does drank drew
dreamt drove dug ended eaten fed fell felt fit flew frozen froze goes going grew grown had has have having heard hes hid
hung hurt im is its knew known lain leant learnt lit made makes making met mean means meant ran rang ridden rode rose sang sank sat saw seen shes
shone shook shrank slept slid spoke spun stank stood stuck stung swam swore swum taught thats theyre thought threw tore torn
understood was were weve wept woke woken won wore worn comes drives fills helped helps reached turned expected
`;

let stems: LongList | undefined;
let forms: LongList | undefined;

/** Whether a word is a verb of everyday life in any of its forms: "stands", "hugged", "crying". */
export function isLived(word: string): boolean {
  stems ??= new LongList(STEMS);
  forms ??= new LongList(FORMS);
  const all = stems;
  return forms.has(word) || formsOf(word).some((form) => all.has(form));
}

/** Beside a verb of everyday life these may still be of a deal: nothing that holds one is told in passing. */
export const OF_DEALS = wordSet(
  "back half rest balance discount refund receipt mistake joke error wrong lie test dream typo duplicate twice instead else " +
    "ours mine hers theirs yours mad angry upset unhappy furious different swap trade loan rent extra tip tips gone " +
    "left out_of_it interested decided deciding mind changed change ready available spoken promised agreed thru " +
    "ship shipped shipping invoice bill bank wire",
);

/** Verbs that may be denied of anybody: "it doesn't fit my car", "I couldn't believe it". */
export const DENIED = wordSet(
  "close shut latch lock slide roll spin swivel recline fold light tilt turn read care come budge open stick dry fit match believe stop help stand look smell hurt sleep know notice mention complain see hear feel eat move budge work go bear",
);

/** What a piece does or does not: "it won't lock". */
export const WORKS = wordSet(
  "close shut latch lock open slide roll spin swivel recline fold light tilt turn stick work budge stand fit match",
);

/** What denies such a verb, or how something is. */
export const DENIES = wordSet(
  "nobody no_one refused refuses not didnt doesnt dont cant couldnt cannot wont isnt wasnt werent arent never",
);

/** Behind somebody else these tell what they do with it: "she will use it as a changing table". */
export const LIVES_ON = wordSet(
  "use love live look fit match be go sit stand enjoy make put break hold_up last",
);
export const WILL = wordSet("will would gonna going_to may might can could");

/** A reason, or what is told beside: each opens a stretch of its own. */
export const OPENS_TOLD = wordSet(
  "because cause cuz coz bc since as though although while who which where so and",
);

/** Behind these "as" opens none. */
export const BEFORE_AS = wordSet("much so_much long far soon well good such same");

/** "But" opens none. */
export const TURNS_ON = wordSet("but if unless until till til once when whenever or except then if");

/** What a buyer does with it once it is sold. */
export const CARRIES = wordSet("carried hauled lifted loaded dragged wheeled lugged");

/** Somebody else's need of it is why it went. */
export const NEEDS = wordSet("need needs needed wanted");
export const NEEDED = wordSet("it one them more a an some something the her his their my our");

/** Before "off" these are a price's. */
export const OFF_PRICE = wordSet("something little bit more money some anything much lot bucks dollars %");

/** "her husband wants it for his garage" */
export const WANTS = wordSet("wants want");
export const WANTED_FOR = wordSet("for in as because");

/** "the baby is due in june", "she is expecting twins" */
export const BE = wordSet("is are was were im shes s");
export const DUE = wordSet("in any any_day next this soon now a her their our twins another again number");

/** "the varnish is coming off" */
export const COMING = wordSet("coming comes");
export const COMES_OFF = wordSet("off loose apart along together up out easy easily");

/** Whose: somebody else's. */
export const HERS = wordSet("hes shes theyre her his their who");

/** "it still has its lock" tells of no work left, "the drawers are still sticky" may. */
export const STILL = wordSet("has have had love loves looks look smells smell works work");
export const THROUGH = wordSet(
  "fit fits run runs ran walk walked drive drove driving all rusted cracked worn",
);

/** "the kid broke it" */
export const HARMS = wordSet(
  "broke broken break breaks burnt burned tore tear tears torn bit cracked snapped smashed lost hurt stepped",
);

/** "the buyer is dana", "it was moms": what stands behind these says who it was, or whose. */
export const NAMES_WHO = wordSet("is was to for from by");
export const NAMES_WHOSE = wordSet("is are was were its thats the");

/** Somebody's words, where they say nothing of a deal. */
export const SAYS = wordSet("says said told tells thinks reckons reckoned figures jokes joked swears swore");

/* What is told beside a deed of ours. */

/** What is wished, denied, offered or still to come there is none of the deed's. */
export const HARMLESS_BESIDE: ReadonlySet<string> = wordSet("intention offer appointment denial");

/** Why we did it, and what went on meanwhile. */
export const REASONS = wordSet("because cause cuz coz bc since as although while which where who so even");

/** Of whom or what something is denied, in one word. */
export const SUBJECTS = wordSet("nobody no_one noone nothing");

/** Somebody of us is content with what we did. */
export const AGREES = wordSet("agrees agree agreed approves approve approved");

export const NAMED_THINGS = wordSet("till back");

/** Behind these "back" is of a body and "till" no time. */
export const NAMES_BODY = wordSet("my our his her the a");

/** What we could not do, before what it was. */
export const UNABLE = wordSet("cant couldnt cannot");

/** These take a deed back, or tell that it went wrong, was somebody else's or is not over. */
export const UNDOES = wordSet(
  "but though if unless until till til once when whenever except then in_case as_soon_as almost nearly about_to " +
    "minus excluding without_it jk kidding just_kidding joking just_joking psych forgot_to failed_to passed_on " +
    "supposed_to todo to_do remember_to let_me lets ready_to sorry oops nope nvm meant " +
    "correction business personal private down off_again removed remove deleted delete cancelled canceled cancel paused pause expired expire " +
    "bounced bounce rejected reject flagged unlisted relisted saved save live published publish ad listing site app photo " +
    "account website page upload online press load show show_up payment payments cleared clear accepted accept received through funds returned missing apart " +
    "ours mine yours happen happened really did",
);

/** Of what is done or begun these tell that it is not. */
export const NOT_DONE_YET = wordSet(
  "still need needs needed coat coats one_more left yet going_to gonna will have_to has_to dry cure set",
);

/** Of what was given away or kept these may tell that it was not taken, or may yet go. */
export const TAKES_IT = wordSet(
  "take takes took taken want wants wanted come comes came coming fetch get gets pick pick_up collect buyer buyers she may might refused stays stay rescued let collect pay",
);

/** What became of a payment. */
export const IT_WENT = wordSet("it they them that this which");

/** Behind what is wished or denied these say no more of it. */
export const MAY_HAVE = wordSet("have had be been to");
export const NOT_US_BUT = wordSet("me us him her it anywhere");

/** What follows these may be for what, from whom or where. */
export const BEFORE_SLOT = wordSet("for to from by at via on in with of per each through off under");

/** What is hoped of a deed done: "perhaps that helps", "should be enough for the seat". */
export const HOPES = wordSet(
  "hope hopefully hoping perhaps maybe see_if see lets_see lets_see_if we_will_see well_see fingers_crossed with_luck should should_be wish",
);
export const HOPED = wordSet(
  "that it this somebody someone they people one enough do last plenty be work works help helps look looks hold holds sell sells see better",
);
export const MORE_OR_LESS = wordSet("more less longer closer than not never about maybe_more or shorter");

/* What leads up to a fact. */

/** What is told behind these may never have happened, or is taken back. */
export const LEADS_NOWHERE = wordSet(
  "if unless until till til when whenever except suppose supposing imagine pretend assuming provided dreamt dreamed " +
    "jk kidding psych oops sorry nope nvm nevermind correction meant remove removed delete deleted cancel undo expired instead ours mine hers his theirs",
);

/** What follows these is what somebody thinks or asks. */
export const SO_FAR = wordSet(
  "asked asks ask asking wonders wondered thought think guess hope hoped wish wished claims claimed swears swore",
);

/** How one of us is, beside which no deed is told. */
export const IS_OR_FEELS = wordSet("am was im were feel felt decided thought");

/** How a piece or a part of it is, or what became of that part. */
export const IS_OR_WENT = wordSet(
  "is was are were isnt wasnt arent werent its has had broke broken cracked snapped split came_off came fell fell_off gave_out gave went popped rattles sticks stuck wobbles leaks looked looks",
);

/** To whom it was done. */
export const WHOM = wordSet("him her them");

/** Behind these the same goes on. */
export const AND_THEN = wordSet("and & then");

/** Marks and words between what leads up to a fact and the fact. */
export const LEADS_ON = wordSet(". , ; ! - – — and & so then but");

/* What is told behind a deal. */

/** A reason, and nothing else. */
export const REASONS_WHY = wordSet("because cause cuz coz bc since");

/** Beside a deal these may be of it: who has not paid, come or made up their mind. */
export const MAY_UNDO_DEAL = wordSet(
  "pay pays paid payed paying come comes came coming show shows showed take takes took taken taking want wants wanted buy bought " +
    "get got sure certain serious able money cash check card there here yet still later soon tomorrow tonight next hold " +
    "return bring send sent text texts texted call calls called answer answered reply replied see seen look looking think thinks",
);

/** Beside a part of a piece these tell how it is. */
export const NONE_OF = wordSet("no without minus missing lost works");

/** Before "have" and one of the others: what one of us did not do, or how it did not go. */
export const REGRETS = wordSet("should could would");
export const REGRETTED = wordSet(
  "asked waited held held_out kept charged got gotten gotten_more listed priced started tried known haggled pushed been had",
);

/** With these one of us begins, and leaves out who. */
export const THOUGHT = wordSet("thought figured never_thought glad wish");

/** Who is back for these wants no more of this deal. */
export const BACK_FOR = wordSet("more another others some");

/** What a deal comes to, by its kind. */
export const IS_OVER: Readonly<Record<string, ReadonlySet<string>>> = {
  sell: wordSet(
    "is was out gone already off released to her him them out_the_door picked_up collected handed_over with",
  ),
  fallthrough: wordSet(
    "is was back up available again free available_again free_again for_sale for_sale_again back_up back_on_the_market on the market still ours here mine",
  ),
};

/** What others do with things of their own, and before which of them. */
export const THEIR_DEALS = wordSet(
  "bought buying buys got gets getting found sold selling sells adopted adopting adopts traded collects picked_up grabbed rents rented",
);
export const ANY_OR_OWN = wordSet("a an another some new his her their more lots");
