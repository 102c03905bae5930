import type { Fact } from "../../books/facts.ts";
import { showDay } from "../../calendar.ts";
import type { Past } from "../../mending/past.ts";
import { type Cents, show } from "../../money.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import type { Gathered } from "../../notes/second-look/gathered.ts";
import { NOTE_NAMES } from "../../notes/words/telling.ts";
import type { Looking } from "../decision.ts";
import { showMinutes } from "../echo.ts";
import type { Likely } from "./of-pieces.ts";

/* Which earlier note a message may correct or take back, where nothing else was read. */

type MendTo = NonNullable<ReadingOf<"mend">["to"]>;

/** So many notes back. */
const NEWEST = 8;
const LOOKED_AT = 40;

/** So far from the amount of a note it hardly corrects it. */
const NEAR_LEAST = 0.4;
const NEAR_MOST = 2.5;

export function likelyMends(found: Gathered, numbers: readonly number[], { books, past }: Looking): Likely[] {
  if (!past) return [];
  const { tells } = found;
  const facts = newestOf(books.facts, (fact) => fact.author === past.person && past.isToday(fact));
  const [newest] = facts;
  if (!newest) return [];
  const named = namedIn(found, numbers, facts);
  // "delete the drive" where there is none: of no other note.
  if (named.length === 0 && namesAny(found) && found.amounts.length + found.minutes.length < 2) return [];
  const at = { text: found.text, line: found.line };
  const mend = (fact: Fact, to: MendTo, said: string): Reading => ({
    kind: "mend",
    of: { fact: fact.id },
    to,
    label: `${past.echo(fact)}: now ${said}`,
    ...at,
  });
  const all: Likely[] = [];
  const isOut = tells.has("removes") && !tells.has("still") && !tells.has("doubted") && !tells.has("right");
  if (isOut && found.amounts.length === 0)
    for (const fact of (named.length > 0 ? named : [newest]).slice(0, 2))
      all.push({ weight: 4, reading: outOf(fact, past, at) });
  const isTurned = tells.has("corrects") || tells.has("denied");
  for (const fact of named.length > 0 ? named : facts)
    for (const { to, said, isOld } of changesOf(fact, found))
      if (
        isOld
          ? isTurned
          : tells.has("corrects") &&
            (!tells.has("doubted") || isOrdered(found)) &&
            (named.length > 0 || fact === newest)
      )
        all.push({ weight: isOld ? 6 : 4, reading: mend(fact, to, said) });
  const [owed] = found.amounts.slice(-1);
  if (newest.kind === "sell" && tells.has("owes") && owed !== undefined && owed < (newest.amount ?? 0))
    all.push({ weight: 5, reading: mend(newest, { owed }, `${show(owed)} still owed`) });
  const [now, ...others] = found.mentions.filter(({ name }) => !isCalled(name, books.pieces));
  const bought = facts.find(({ kind }) => kind === "buy");
  if (
    tells.has("corrects") &&
    now?.name &&
    others.length === 0 &&
    bought?.pieces.length === 1 &&
    numbers.includes(bought.pieces[0]!)
  )
    all.push({ weight: 6, reading: mend(bought, { name: now.name }, now.name) });
  return all;
}

/** The newest that fit, looked for among the last noted. */
function newestOf(all: readonly Fact[], fits: (fact: Fact) => boolean): Fact[] {
  return all.slice(-LOOKED_AT).reverse().filter(fits).slice(0, NEWEST);
}

const isCalled = (
  name: string | undefined,
  pieces: ReadonlyMap<number, { readonly name: string }>,
): boolean => [...pieces.values()].some((piece) => piece.name === name);

const outOf = (fact: Fact, past: Past, at: { text: string; line: number }): Reading => ({
  kind: "mend",
  of: { fact: fact.id },
  removed: true,
  label: `Take out: ${past.echo(fact)}`,
  ...at,
});

/** "make it 35, my partner says" */
const isOrdered = ({ tells, words }: Gathered): boolean => tells.has("ordered") && !words.includes("if");

const kindsNamed = ({ words }: Gathered): Set<string> =>
  new Set(words.flatMap((word) => NOTE_NAMES[word] ?? []));

const namesAny = (found: Gathered): boolean =>
  found.mentions.length > 0 || found.supply !== undefined || kindsNamed(found).size > 0;

/** The notes of the kinds, things or pieces that the message names, newest first. */
function namedIn(found: Gathered, numbers: readonly number[], facts: readonly Fact[]): Fact[] {
  const { words, mentions } = found;
  const kinds = kindsNamed(found);
  const isWhat = (fact: Fact): boolean =>
    "what" in fact.data &&
    typeof fact.data.what === "string" &&
    fact.data.what.split(" ").some((word) => words.includes(word));
  const isOf = (fact: Fact): boolean =>
    mentions.length > 0 && fact.pieces.some((number) => numbers.includes(number));
  const byWhat = facts.filter(isWhat);
  if (byWhat.length > 0) return byWhat;
  const byKind = facts.filter(({ kind }) => kinds.has(kind));
  const both = byKind.filter(isOf);
  return both.length > 0 ? both : byKind.length > 0 && mentions.length === 0 ? byKind : facts.filter(isOf);
}

interface Change {
  to: MendTo;
  said: string;
  /** The message has the old value as well. */
  isOld: boolean;
}

/** What becomes of a note by one of the values of the message. */
function changesOf(fact: Fact, { amounts, minutes, miles, date, tells, words, names }: Gathered): Change[] {
  // "the drive wasn't 14 miles it was 41": of the same thing.
  const alike = amounts.map((cents) => String(cents / 100));
  const { amount } = fact;
  const asAmount = (value: Cents) => ({ to: { amount: value }, said: show(value) });
  const byAmount =
    amount !== undefined && amount > 0 ? otherOf(amounts, amount, (each) => each / amount, asAmount) : [];
  const took = fact.kind === "work" ? fact.data.minutes : undefined;
  const times = minutes.length === 1 ? [...minutes, ...alike.map(Number)] : minutes;
  const asTime = (value: number) => ({ to: { minutes: value }, said: showMinutes(value) });
  const byTime = took ? otherOf(times, took, (each) => each / took, asTime) : [];
  const drove = fact.kind === "drive" ? fact.data.miles : undefined;
  const ways = miles.length === 1 ? [...miles, ...alike] : miles;
  const asMiles = (value: string) => ({ to: { miles: value }, said: `${value} miles` });
  const byMiles = drove ? otherOf(ways, drove, (each) => Number(each) / Number(drove), asMiles) : [];
  const owed = fact.kind === "sell" ? fact.data.owed : undefined;
  const asOwed = (value: Cents) => ({ to: { owed: value }, said: `${show(value)} still owed` });
  const byOwed = owed && tells.has("owes") ? otherOf(amounts, owed, () => 0, asOwed) : [];
  const isOther = (tells.has("denied") || tells.has("corrects")) && amounts.length === 0;
  const byDay =
    isOther && date !== undefined && date !== fact.day && fact.kind !== "list"
      ? [{ to: { date }, said: showDay(date, fact.day), isOld: true }]
      : [];
  const buyer = fact.kind === "sell" ? fact.data.buyer : undefined;
  const others = names.filter((name) => name !== buyer);
  const byName =
    isOther && buyer !== undefined && words.includes(buyer) && others.length === 1
      ? [{ to: { buyer: others[0]! }, said: others[0]!, isOld: true }]
      : [];
  return [...byAmount, ...byTime, ...byMiles, ...byOwed, ...byDay, ...byName];
}

/** What becomes of it by the one value beside the old one, or alone and near it. */
function otherOf<V>(
  values: readonly V[],
  old: V,
  share: (value: V) => number,
  as: (value: V) => Omit<Change, "isOld">,
): Change[] {
  const others = values.filter((value) => value !== old);
  const [value] = others;
  if (value === undefined || others.length > 1) return [];
  const isOld = others.length < values.length;
  const ratio = share(value);
  return isOld || (ratio >= NEAR_LEAST && ratio <= NEAR_MOST) ? [{ ...as(value), isOld }] : [];
}
