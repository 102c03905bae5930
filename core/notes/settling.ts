import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import { lexed } from "./line.ts";
import { pastDay } from "./quantities/days.ts";
import { readMessage } from "./read.ts";
import type { Mention, Reading } from "./reading.ts";
import { centsIn } from "./slots/money.ts";
import {
  ALL_OF_IT,
  BACKS_OUT,
  BESIDE_HOME,
  BESIDE_SETTLING,
  COMES_HOME,
  FETCHED,
  FOR_THEM,
  FROM_THEM,
  GIVES_BACK,
  KEEPS_IT,
  MORE_OF_IT,
  NEVER_PAYS,
  PAID_IN,
  PAYER,
  WANTS_IT,
} from "./words/settling.ts";

/*
 * Messages that settle what stands: about somebody who owes or who holds a piece, or a thing that was lent. They are told
 * by names that are known, which may be any words; every other word has to be of one of a few kinds.
 */

/** What a message of such words says. */
export interface Told {
  who?: string;
  /** "he", "the buyer", or that money came in: somebody other than us. */
  isTheirs: boolean;
  says: Set<ReadonlySet<string>>;
  amounts: Cents[];
  mention?: Mention;
  method?: string;
  date?: Day;
}

/** What is told, in which words, and what became of the piece then. */
export interface Settling {
  told: Told;
  text: string;
  after: Reading[];
}

const KINDS = [
  PAID_IN,
  PAYER,
  ALL_OF_IT,
  MORE_OF_IT,
  FETCHED,
  FROM_THEM,
  NEVER_PAYS,
  BACKS_OUT,
  GIVES_BACK,
  KEEPS_IT,
  WANTS_IT,
  FOR_THEM,
  BESIDE_SETTLING,
];

/** "she paid 12 for it": a price of what was spoken of. */
const OF_IT = /\bfor (?:it|that|them)\b/;

/** "… me the 10", behind an unknown verb. */
const SENT_SOMEHOW = /d (?:me|us|over) (?:the |his |her |their |another )?\$?\d/;

const LENGTH_MAX = 120;

/** "…, gave him his 25 back and sold it to a student 150": what became of the piece then. */
const NEXT_FACT =
  /^(.+?)(?:,? and|,|[.;])(?: then)? ((?:sold|listed|relisted|reposted) (?:it|that|them)\b.*)$/i;

const isAboutIt = ({ kind, follows }: Reading): boolean => kind !== "unclear" && follows === true;

/** A message about one of the names, or about a buyer who needs none; null where it may say anything else. */
export function settlingIn(text: string, names: readonly string[], today: Day): Settling | null {
  if (text.length > LENGTH_MAX || text.includes("?")) return null;
  const [, first, next] = NEXT_FACT.exec(text) ?? [];
  const after = first && next ? readMessage(next, today) : [];
  if (next && !(after.length > 0 && after.every(isAboutIt))) return null;
  const said = first ?? text;
  const told = toldIn(said, names, today);
  return told && { told, text: said, after };
}

function toldIn(text: string, names: readonly string[], today: Day): Told | null {
  const said = ` ${text
    .toLowerCase()
    .replace(/['’]s\b/g, "")
    .replace(
      /\b(?:(?:got|came for) (?:it|them)|came for(?= the )|came (?:by |over )?(?:and got|to get))\b/g,
      "fetched",
    )
    .replace(/[.!,]+(?= |$)/g, " ")
    .replace(/\s+/g, " ")} `;
  const who = names.find((name) => said.includes(` ${name} `));
  const told: Told = { ...(who ? { who } : {}), isTheirs: who !== undefined, says: new Set(), amounts: [] };
  for (const token of lexed(who ? said.replace(` ${who} `, " ") : said)) {
    const { kind, text: word, roles } = token;
    if (kind === "mark") continue;
    if (kind === "piece" && !told.mention && !token.mention!.it) told.mention = token.mention!;
    else if (kind === "amount" && !token.each) {
      const cents = centsIn(token);
      if (cents === null) return null;
      told.amounts.push(cents);
    } else if (kind === "day") {
      const found = pastDay(token.said!, today);
      if (!("day" in found)) return null;
      told.date = found.day;
    } else if (kind !== "word") return null;
    else if (roles.method !== undefined) told.method = roles.method;
    // "oscar wired me the 10": sent in some way or other.
    else if (who && token.unknown && SENT_SOMEHOW.test(said) && /e?d$/.test(word)) told.says.add(PAID_IN);
    else if (!takes(told, word)) return null;
  }
  if (told.says.has(FOR_THEM) && who === undefined) return null;
  if (told.says.has(WANTS_IT) && !told.says.has(BACKS_OUT)) return null;
  const isOurs = /\b(?:i|we)\b/.test(said);
  const isSum = told.amounts.length === (told.says.has(NEVER_PAYS) ? 1 : 2);
  if (who === undefined && (isOurs || OF_IT.test(said))) return null;
  told.isTheirs ||= told.says.has(PAYER) || told.says.has(FETCHED) || isSum;
  return told;
}

/** Notes what a word, or each word of a phrase, tells; false where one is of none of the kinds. */
function takes({ says }: Told, word: string): boolean {
  const found = KINDS.filter((words) => words.has(word));
  if (found.length > 0) {
    for (const words of found) says.add(words);
    return true;
  }
  const words = word.split(" ");
  return words.length > 1 && words.every((one) => takes({ says } as Told, one));
}

const NEXT_NOTE = /^(.+?)(?:,? and|,|[.;])(?: then)? (.+)$/i;

/** Names of a thing that was lent, and of who had it. */
export interface Lent {
  names: readonly string[];
  to: string | undefined;
}

/** Which of the things lent are back, by the order given, and the whole note behind it; null where anything else is said. */
export function homeIn(
  text: string,
  lent: readonly Lent[],
  today: Day,
): { which: number; text: string; after: Reading[] } | null {
  // Nearly every message says none of these.
  const words = text.toLowerCase().split(/[^a-z]+/);
  if (!words.some((word) => COMES_HOME.has(word))) return null;
  const [, first, next] = NEXT_NOTE.exec(text) ?? [];
  const whole = whichIsHome(text, lent);
  if (whole !== null || !first || !next) return whole === null ? null : { which: whole, text, after: [] };
  const which = whichIsHome(first, lent);
  if (which === null) return null;
  const after = readMessage(next, today);
  const isWhole = after.length > 0 && after.every(({ kind, missing }) => kind !== "unclear" && !missing);
  return isWhole ? { which, text: first, after } : null;
}

function whichIsHome(text: string, lent: readonly Lent[]): number | null {
  const said = ` ${text
    .toLowerCase()
    .replace(/['’]s\b/g, "")
    .replace(/[.!,]+(?= |$)/g, "")
    .replace(/\s+/g, " ")} `;
  for (const [which, { names, to }] of lent.entries()) {
    const thing = names.find((name) => said.includes(` ${name} `));
    if (thing === undefined) continue;
    const words = withoutName(said.replace(` ${thing} `, " "), to)
      .trim()
      .split(" ");
    const isHome = words.some((word) => COMES_HOME.has(word));
    if (isHome && words.every((word) => COMES_HOME.has(word) || BESIDE_HOME.has(word))) return which;
  }
  return null;
}

/** Who had it, by all of the name or its last word: "uncle ray", "ray". */
function withoutName(said: string, to: string | undefined): string {
  if (to === undefined) return said;
  const name = [to, to.split(" ").at(-1)!].find((each) => said.includes(` ${each} `));
  return name === undefined ? said : said.replace(` ${name} `, " ");
}
