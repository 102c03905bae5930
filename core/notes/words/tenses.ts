/* Verbs as those say them to whom English came late, or who speak it their own way: one home for their forms. */

import { wordSet } from "./words.ts";

/** Verbs of notes whose past is none of the regular kind, each with it. */
const IRREGULAR: Readonly<Record<string, string>> = Object.fromEntries(
  [
    ..."buy bought,sell sold,give gave,spend spent,drive drove,pay paid,leave left,get got,take took".split(
      ",",
    ),
    ..."bring brought,come came,go went,find found,keep kept,make made,put put,cut cut,throw threw".split(
      ",",
    ),
    ..."send sent,lend lent,hold held,begin began,build built,lose lost,win won,break broke".split(","),
    ..."stick stuck,let let,set set,cost cost,tell told,write wrote,run ran,deal dealt,sweep swept".split(
      ",",
    ),
    ..."tear tore,grind ground,catch caught,fall fell,stand stood,choose chose,split split,meet met".split(
      ",",
    ),
    ..."steal stole,forget forgot,say said,think thought,ride rode,quit quit".split(","),
  ].map((pair) => pair.split(" ") as [string, string]),
);

/** Verbs of notes whose past is regular. */
const REGULAR = wordSet(
  "pick grab collect fetch order finish start list post work sand paint strip deliver haul return refund lower " +
    "drop clean repair fix wax stain oil scrub donate scrap trash dump transfer cancel change reduce move load " +
    "swap trade snag purchase charge stay decide settle hand carry unload advertise publish reserve upload",
);

export const isVowel = (letter: string | undefined): boolean =>
  letter !== undefined && "aeiou".includes(letter);

/** "stop" takes another p, "clean" and "order" do not. */
const doubles = (base: string): boolean =>
  /^[a-z]{0,3}[aeiou][bdgmnprt]$/.test(base) && !isVowel(base.at(-3)) && base.length <= 4;

/** The past that a verb would have were it regular. */
export function regularPast(base: string): string {
  if (base.endsWith("e")) return `${base}d`;
  if (base.endsWith("y") && !isVowel(base.at(-2))) return `${base.slice(0, -1)}ied`;
  return doubles(base) ? `${base}${base.at(-1)}ed` : `${base}ed`;
}

function thirdPerson(base: string): string {
  if (/(?:s|x|ch|sh|o)$/.test(base)) return `${base}es`;
  return base.endsWith("y") && !isVowel(base.at(-2)) ? `${base.slice(0, -1)}ies` : `${base}s`;
}

/** Words of their own. */
const OTHER_WORDS = wordSet("founded");

/** "buyed", "selled", "boughted", "payed": pasts made by the rule, each with the one that is meant. */
export const BROKEN_PASTS: Readonly<Record<string, string>> = Object.fromEntries(
  Object.entries(IRREGULAR).flatMap(([base, past]) => {
    const forms = [regularPast(base), `${base}ed`, `${past}ed`, `${past}${past.at(-1)}ed`];
    // "putted", "cuted": with and without the letter twice.
    const made = [...new Set(forms)].filter((form) => form !== past && !OTHER_WORDS.has(form));
    return made.map((form) => [form, past]);
  }),
);

/** The past of each form of the present: "sell" and "sells" were sold. */
export const PAST_OF: ReadonlyMap<string, string> = new Map([
  ...Object.entries(IRREGULAR).flatMap(([base, past]) => pairs(base, past)),
  ...[...REGULAR].flatMap((base) => pairs(base, regularPast(base))),
  // What is owed is told of today.
  ["owe", "owes"] as const,
]);

function pairs(base: string, past: string): (readonly [string, string])[] {
  return base === past
    ? []
    : [
        [base, past],
        [thirdPerson(base), past],
      ];
}

export const PASTS: ReadonlySet<string> = new Set([
  ...PAST_OF.values(),
  ...Object.keys(BROKEN_PASTS),
  ...Object.values(IRREGULAR),
]);

/** Whether a word is a verb's past by its form: no given name that ends so is longer than "fred". */
export const isDone = (word: string): boolean => PASTS.has(word) || word === "did" || /^.{4,}ed$/.test(word);

/** What stands behind "has" in place of the past: "she has taken the desk". */
export const PAST_OF_PERFECT: ReadonlyMap<string, string> = new Map(
  "taken took,given gave,driven drove,thrown threw,begun began,broken broke,chosen chose,gotten got,written wrote,gone went"
    .split(",")
    .map((pair) => pair.split(" ") as [string, string]),
);

/** What a line says that tells of no past: plans, offers, wishes, questions, denials. */
export const NO_PAST = wordSet(
  "want wants wanna will would wont wouldnt ill id hell shell well theyll wholl itll itd youll whod hed shed theyd youd charges ima imma can cant could couldnt may " +
    "might must should shall if when whenever until till unless tomorrow tmrw tommorow next later soon gonna going plan plans " +
    "planning maybe perhaps probably think thinks say says said ask asks asking need needs try tries hope hopes please let lets not " +
    "pending awaiting unpaid intend intends aim aims dont doesnt didnt isnt arent wasnt aint never yet no usually always sometimes every each how what who " +
    "otherwise before which why where offer offers offered like likes wish gotta fixin fixing about ready able agree agrees promise promises",
);

/** Days on which somebody may still be to come. */
export const WEEKDAYS = wordSet(
  "monday tuesday wednesday thursday friday saturday sunday mon tue wed thu fri sat sun weekend morning evening",
);

/** Beside these a note is whole without a number. */
export const WITHOUT_NUMBER = wordSet(
  "rest free nothing keep stay stays give throw thrown gone begun broken donate scrap trash dump finish start begin collect fetch grab",
);

/** They stand between who does something and what is done. */
export const BESIDE_VERB = wordSet(
  "just today also already now finally then yesterday still only really both",
);

/** Who is told of without a name. */
export const WE = wordSet("i we");
export const OTHERS = wordSet("he she they");

/** Before a verb, in place of its past: "i have sell", "she done bought", "i did sell", "i am sell". */
export const HAS = wordSet("have has ive done did weve hes shes");
export const IS_BARE = wordSet("am im");
export const WAS_BARE = wordSet("is are was were be");

/** "she come take the desk": one doing behind the other. */
export const COMES_AND = wordSet("come comes came go goes went");

/** Behind what somebody gives. */
export const TO_US = wordSet("me us back");

/** Some words, and the present of those of them that are pasts: "take" beside "took". */
export const withPresents = (words: ReadonlySet<string>): ReadonlySet<string> =>
  new Set([...words, ...[...PAST_OF].flatMap(([form, past]) => (words.has(past) ? [form] : []))]);
