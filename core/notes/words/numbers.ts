import { BEFORE_PRICE } from "./links.ts";
import { inOrder, wordSet } from "./words.ts";

/** Number words, each to its value. */
export const UNITS = inOrder(`
  zero one two three four five six seven eight nine ten eleven twelve thirteen fourteen fifteen sixteen
  seventeen eighteen nineteen
`);
export const TENS: Readonly<Record<string, number>> = {
  twenty: 20,
  thirty: 30,
  forty: 40,
  fourty: 40,
  fifty: 50,
  sixty: 60,
  seventy: 70,
  eighty: 80,
  ninety: 90,
  ninty: 90,
};
export const SCALES: Readonly<Record<string, number>> = {
  hundred: 100,
  thousand: 1000,
  grand: 1000,
  million: 1_000_000,
};
/** After a number: it is money. */
export const CURRENCY_WORDS: ReadonlySet<string> = wordSet(`
  bucks buck bux dollars dollar dollers dollas usd smackers smackeroos bones clams quid squid squids quids
  nicker smackeroonies simoleons greenbacks buckaroos dolla dollaz dollah doller dollor dollors
  spondulicks
`);
/** After a number: money of another country, or notes of nobody knows what worth: asked, as money of these books. */
export const FOREIGN_WORDS: ReadonlySet<string> = wordSet(`
  euro euros eur pounds bills gbp sterling rupees rupee dirhams krona kroner zloty peso pesos yen francs
  cad cdn canadian australian aud
`);
/** Notes of money by name, each to its worth in dollars. */
export const NOTE_WORDS: Readonly<Record<string, number>> = {
  ones: 1,
  singles: 1,
  fives: 5,
  fiver: 5,
  fivers: 5,
  tens: 10,
  tenner: 10,
  tenners: 10,
  twenties: 20,
  fifties: 50,
  hundreds: 100,
  hundos: 100,
  hundo: 100,
  benjamins: 100,
  benjamin: 100,
  sawbuck: 10,
  sawbucks: 10,
};
/** Sums by the names that some give them: asked, with what they are. */
export const SLANG_SUMS: Readonly<Record<string, number>> = {
  score: 20,
  pony: 25,
  bullseye: 50,
  ton: 100,
  century: 100,
  monkey: 500,
};
/** "two twenty dollar bills": notes of a worth. */
export const NOTES_OF = wordSet("bill bills note notes");
/** Parts of a dollar, in cents. */
export const DOLLAR_PARTS: Readonly<Record<string, number>> = { quarter: 25, half: 50, dime: 10, nickel: 5 };
/** Behind "and a half" these make it time or length: "ten dollars and a half hour later". */
export const PART_OF_ELSE = wordSet("hour hours hr hrs h an of mile miles mi inch off percent pct %");
export const CENT_WORDS: ReadonlySet<string> = new Set(["cents", "cent"]);
/** After an amount: it is the price of one. */
export const EACH_WORDS: ReadonlySet<string> = new Set(["each", "ea", "apiece", "eah", "eech"]);

/** Behind these a digit and a word are one price: "for 1 forty". */
export const BEFORE_HUNDREDS = wordSet("asking", BEFORE_PRICE);

/** Every word that an amount may be spelled with. */
export const NUMBER_WORDS: readonly string[] = [
  ...[UNITS, TENS, SCALES].flatMap((words) => Object.keys(words)),
  ...["half", "quarter"],
];

/** Between the words of one amount: "twelve and a half". */
export const BESIDE_SPELLED = wordSet("and a &");

/** Behind "one" these go on with the number: "one thirty", "one hundred". */
export const BEHIND_ONE: ReadonlySet<string> = new Set([...Object.keys(TENS), ...Object.keys(SCALES)]);

/** Behind "one of the" these are pieces: "one of the last ones". */
export const OF_THINGS: ReadonlySet<string> = new Set(
  "ones one pieces items things others other last first rest left remaining two pair set lot batch".split(
    " ",
  ),
);

/** Behind "for a dollar" these say that it is not one dollar. */
export const BEHIND_NO_DOLLAR = wordSet(
  "each apiece ea per or store general tree bill bills amount figure value and a fifty quarter half more something twenty thirty forty ten seventy eighty ninety fifteen",
);
