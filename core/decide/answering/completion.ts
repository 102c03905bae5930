import type { Day } from "../../calendar.ts";
import { saysNoOther, saysOnly } from "../../notes/bare.ts";
import { readMessage } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { anyOf, tellsNoFact } from "../../notes/unclear.ts";
import { SAYS_TODAY } from "../../notes/words/replies.ts";
import { saysAny } from "../../notes/words/words.ts";
import type { Ask, Effect, Matter, Said, Wanted } from "../decision.ts";
import { mentionsOf } from "../pieces/mentioned.ts";

/** What a reading carries beside what it says. */
const ASIDE: ReadonlySet<string> = new Set([
  "kind",
  "text",
  "line",
  "missing",
  "follows",
  "one",
  "longAgo",
  "each",
]);

type Fields = Record<string, unknown>;

/**
 * What an answer in a sentence ("sold it for 190", "190 to neighbor", "kept 15") does to an open question: it
 * gives what was missing, and changes nothing that was said. Null where the text is a note of its own.
 */
export function completeReading(
  asked: { matter: Pick<Matter, "reading" | "said">; ask: Ask },
  said: Said,
): Effect | null {
  const { matter, ask } = asked;
  const { text, today } = said;
  if (said.readings.some(tellsNoFact)) return null;
  if (namesAnother(said.readings, ask.first?.[0] ?? matter.reading)) return null;
  const [first, ...rest] = ask.first ?? [matter.reading];
  const told =
    toldAlone(first!, ask.wants, said.readings) ?? toldTogether(first!, ask.wants, said, matter.said);
  if (!told) return null;
  const missing = (first!.missing ?? []).filter((field) => field !== "pieces" && !(field in told));
  const change = { ...dayOfAnswer(asked, text, today), ...told, missing } as Partial<Reading>;
  if (ask.first) return { kind: "instead", readings: [{ ...first!, ...change } as Reading, ...rest] };
  return { kind: "settle", change };
}

/** "12 for the table" is no price of a wardrobe. */
function namesAnother(readings: readonly Reading[], asked: Reading): boolean {
  const heads = (reading: Reading) =>
    mentionsOf(reading).flatMap(({ name }) => name?.split(" ").at(-1) ?? []);
  const own = heads(asked);
  const said = readings.flatMap((reading) => anyOf(reading).flatMap(heads));
  return own.length > 0 && said.some((head) => !own.includes(head));
}

/** "today" in an answer is the day of the answer, where that is another than the note's and the note named none. */
export function dayOfAnswer(
  { matter, ask }: { matter: Pick<Matter, "reading" | "said">; ask: Ask },
  text: string,
  today: Day,
): { date?: Day } {
  const reading = ask.first?.[0] ?? matter.reading;
  const isNamed = today !== matter.said && reading.date === undefined && saysAny(text, SAYS_TODAY);
  return isNamed ? { date: today } : {};
}

/** "sold it for 190": the same kind of clause, about no piece of its own, that says what is wanted. */
function toldAlone(reading: Reading, wants: Wanted, readings: readonly Reading[]): Fields | null {
  const [said, ...more] = readings;
  if (!said || more.length > 0) return null;
  const isOwn = said.follows || said.missing?.includes("pieces");
  const fields = fieldsOf(said);
  if (wants === "refunded" && said.kind === "refund" && isOwn && "amount" in fields)
    return { refunded: fields["amount"] };
  if (!isOwn || said.kind !== reading.kind || !(wants in fields)) return null;
  const { pieces: _, ...told } = fields;
  return told;
}

/** "190 to neighbor" after "sold dresser": the two read as one note that only adds to the first. */
function toldTogether(
  reading: Reading,
  wants: Wanted,
  { text, today, readings }: Said,
  asked: Day,
): Fields | null {
  const day = reading.date === undefined ? today : asked;
  const alone = day === today ? readings : readMessage(text, day);
  if (
    !alone.every((each) => isPart(each, reading)) ||
    !(wants === "pieces" ? saysOnly : saysNoOther)(text, reading.kind)
  )
    return null;
  const [before] = readMessage(reading.text, day);
  const [whole, ...more] = readMessage(`${reading.text} ${text}`, day);
  if (!before || !whole || more.length > 0 || whole.kind !== reading.kind || before.kind !== whole.kind)
    return null;
  const known = fieldsOf(before);
  const all = fieldsOf(whole);
  const isKept = Object.entries(known).every(([field, value]) => isSame(all[field], value));
  const told = Object.fromEntries(Object.entries(all).filter(([field]) => !(field in known)));
  const answers = wants in told || (wants === "refunded" && "kept" in told);
  return isKept && answers ? told : null;
}

/** No note of its own; "190 fee 5" is one only as long as no sale waits for its price. */
export function isPart(said: Reading, of: Reading): boolean {
  return said.kind === "unclear" || (of.kind === "sell" && said.kind === "spend" && said.category === "fees");
}

function fieldsOf(reading: Reading): Fields {
  return Object.fromEntries(Object.entries(reading).filter(([field]) => !ASIDE.has(field)));
}

function isSame(a: unknown, b: unknown): boolean {
  return JSON.stringify(a) === JSON.stringify(b);
}
