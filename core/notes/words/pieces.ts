/* What stands around pieces: counts, groups, parts, and nouns that are no piece. */

import { wordSet } from "./words.ts";

/** A piece without a name. */
export const PIECES = wordSet("piece pieces pc pcs pce");

/** Those that are known. */
export const THESE = wordSet("the my our those these");

/** What stands between a count and its noun: "two of the chairs", "both my chairs". */
export const BETWEEN_SET_AND_PIECE = wordSet("of them matching", THESE);

/** Two of a kind. */
export const PAIRS = wordSet("pair pr");

/** Several as one. */
export const GROUPS = wordSet("set lot bunch group");

/** "one of the two left" */
export const LEFT_OF = wordSet("left remaining still_here still_left");

/** Words beside a piece that do not describe it. */
export const NO_TRAITS: ReadonlySet<string> = new Set([
  ...GROUPS,
  ..."getting fetching grabbing hauling delivering returning moving loading bringing driving buying selling".split(
    " ",
  ),
  "pc",
  "pcs",
  "x",
  "each",
  "every",
  "ea",
  "till",
  "until",
  "til",
  "ditto",
]);

/** Others of the same name. */
export const MORE = wordSet("more other extra");

/** Parts that are counted in a description: "3 drawer dresser". */
export const DESCRIBED_PARTS = wordSet(
  "drawer drawers drwr drwrs door doors shelf shelves tier tiers leg legs foot feet ft inch inches cushion cushions panel panels seater leaf leaves",
);

/** Between a piece and such a part. */
export const HAS = wordSet(", with w has of");

/** "check #1042", "lot #12": numbers that are not the bot's own. */
export const OTHER_NUMBERED = wordSet(
  "check cheque chk invoice receipt order confirmation lot unit apt apartment booth space spot row aisle suite door locker",
);

/** "#8 screws", "steel wool #0000": sizes. */
export const SIZED = wordSet(
  "screws screw nails nail bolts bolt wire steel_wool brads brad tacks tack staples staple",
);

/** All that were spoken of: "they're up", "both online now". */
export const ALL_SPOKEN = wordSet("they theyre both");

/** "the last two went to a cafe" */
export const GONE = wordSet("went left went_to");

/** "20 less on the other as well" */
export const AS_WELL = wordSet("too also as");

/** Before a piece that is only described: "bites on the pine", "and the black 75". */
export const BEFORE_DESCRIBED = wordSet("the my our on for and of plus also");

/** More than one, without a name. */
export const SEVERAL = wordSet("them those these em both_of_them");

/** Several, told by a pronoun. */
export const ALL_OF_THEM: ReadonlySet<string> = new Set([...SEVERAL, "they", "theyre"]);

/** The pieces spoken of. */
export const THEM = wordSet("it them those these");

/** How much of a thing was paid for: "34 for a quart". */
export const HOW_MUCH = wordSet("quart pint gallon liter litre tin can pack packet bottle tube jar roll");

/** What money and miles go to beside pieces: no piece is looked for behind these. */
export const PURPOSES = wordSet(
  "house home kitchen bathroom bedroom living room garage basement attic yard porch barn workshop trip trips delivery deliveries pickup pickups drive haul hauling move moving weekend week month year day work job jobs project projects business booth stall market truck van car trailer stock inventory practice everyone everything everybody all fun lunch dinner breakfast coffee gas parking supplies tools stuff things listing listings ad ads photos pictures storage clean cleaning cleanup later now today tomorrow tax taxes",
);

/** Pieces whose names do not describe another one, as those of "vanity dresser" and "bar table" may. */
export const PLAIN_NOUNS = wordSet(
  "dresser nightstand armoire bookcase bookshelf couch sofa loveseat recliner ottoman sideboard credenza",
);

/** Pieces that may be a part of the one before: "vanity with mirror". */
/** What is fit for the dump. */
export const WORN_OUT_TRAITS = wordSet(
  "old broken busted nasty moldy rotten gross stained ruined junky junk wet dirty smelly",
);
export const WITH_PARTS = wordSet("mirror hutch headboard footboard shelf");

/** "the white one": before and behind what tells a piece. */
export const POINTS_OUT = wordSet("the that my");
/** Behind them "the rest" is money. */
export const PAID_WORDS = wordSet("paid pays got sent collected owes gave took brought received");
/** Words by which pieces are told without their noun. */
const REFERS = wordSet("same both all other others another another_one one_more rest last remaining");

/** One more of those spoken of. */
export const ANOTHER = wordSet("another another_one one_more");
export const ONE = wordSet("one ones");

/** Before "all three": pieces that something was for or on. */
export const FOR_ALL = wordSet("for on to into");

/** What stands between pieces and what became of them. */
export const BE = wordSet("is are was were got just");

/** The same of several. */
export const WERE = wordSet("are were");

/** What one of several was like. */
export const WAS = wordSet("was had has is came");

/** Between a piece and its price, where it says no more than both: "lamp was 5". */
export const BEING = wordSet("was were is are");

/** When something was done to those before it: "started both this morning". */
export const WHEN = wordSet(
  "this_morning this_afternoon this_evening tonight today now already too last_night",
);

/** Before what they are together: "all three as a set". */
export const AS_ONE = wordSet("as together");

/** Before several numbers of pieces: "both 3 and 4". */
export const LIST_WORDS = wordSet("both numbers number nos pieces items");

/** A piece that is pointed at. */
export const THAT_ONE = wordSet("it that this them those these");

/** Of these, what stands for pieces only behind a trade. */
export const STANDS_FOR_TRADED = wordSet("it that this");

/** One more of the kind. */
export const ONE_MORE = wordSet("another second 2nd third matching identical twin similar");

/** Which of several it is. */
export const PLACES: Readonly<Record<string, number>> = {
  first: 1,
  "1st": 1,
  second: 2,
  "2nd": 2,
  third: 3,
  "3rd": 3,
  fourth: 4,
  "4th": 4,
  fifth: 5,
  "5th": 5,
  sixth: 6,
  "6th": 6,
};

/** Before one thing that stands for all of its name: "each chair". */
export const EACH_OF = wordSet("each every per");

/** Every one of those spoken of. */
export const EACH_ONE = wordSet("each each_one each_piece");

/** What a time was spent on stands behind it. */
export const WORKED_ON = wordSet("on");

/** That it is of the same kind. */
export const LIKE_IT = wordSet(
  "one ones just exactly like it that them those of the same to match for it kind more just_like_it like_it",
);

/** Between the first number and the last: "1 through 3". */
export const THROUGH = wordSet("through thru");

/** Behind "same": "sandpaper too, 4.50, same piece". */
export const SAME_PIECE = wordSet("one piece project job item");
export const AS_BEFORE = wordSet("as");

/** Where more money goes. */
export const ONTO = wordSet("on to at toward towards into off");

/** Any word without which no pieces are told without their noun. */
export const STANDS_FOR_PIECES: ReadonlySet<string> = new Set([
  ...ONE,
  ...SEVERAL,
  ...REFERS,
  ...THAT_ONE,
  ...MORE,
  ...ANOTHER,
  ...ONE_MORE,
  ...PAIRS,
  ...GROUPS,
  ...EACH_ONE,
]);

/** Told of another piece that is like ours. */
export const ALIKE = wordSet("similar identical comparable lookalike equivalent");

/** The only set that there is. */
export const THE_SET = wordSet("the_set that_set this_set my_set our_set whole_set entire_set full_set");

/** That it is one more, and none that is known. */
export const ONE_MORE_SAID = wordSet("a an another new");

/** Before whom or what one of several is kept or given for. */
export const KEPT_FOR = wordSet("for to");

/** Where one of several goes. */
export const GOES_TO = wordSet("to away back out");

/** Behind one of several: for, to or from whom, and the rest of "let one go", "put one up". */
export const GOES_ON: ReadonlySet<string> = new Set([
  ...KEPT_FOR,
  ...GOES_TO,
  "from",
  "go",
  "up",
  "out",
  "online",
]);

/** Before a count, and it stays the same: "sold just one". */
export const LESSENS = wordSet("just only");

/** Before a piece that has been spoken of. */
export const THE_SAME = wordSet("the that this my our");

/** Several pieces spoken of. */
export const SEVERAL_SAID = /\b(?:they|they'?re|them|em|those|these)\b/i;

/** "and another chair 10": one that is not on the books. */
export const TELLS_ONE_MORE = /^(?:and |oh |then |plus |also )*(?:another|\w+ more)\b/i;

/** What has still to be done with a piece: "pew still needs sanding". */
export const TO_DO = /^(?:still )?(?:needs?|wants)\b/;
