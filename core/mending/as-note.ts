import { readMessage } from "../notes/read.ts";
import type { Mention, Reading, ReadingOf } from "../notes/reading.ts";
import { language } from "../notes/verbs.ts";

/** Kinds that name what they are of by words. */
const NAMED_BY: Readonly<Partial<Record<Reading["kind"], string>>> = {
  spend: "what",
  work: "what",
  income: "stream",
};

/** What a correction says of a note that was never made, as that note; null where it says too little for one. */
export function noteOf({ of = {}, to = {}, removed, text, line }: ReadingOf<"mend">): Reading | null {
  const { kind, what, pieces, number, date: day } = of;
  const { amount, date = day, name, traits, more, also, swap, who, pieces: others, ...fields } = to;
  const grammar = kind === undefined ? undefined : language().grammars.get(kind);
  const isOther = [name, traits, more, also, swap, who].some((each) => each !== undefined);
  if (!kind || !grammar || removed || isOther || of.fact !== undefined) return null;
  const named = others ?? pieces ?? (number === undefined ? undefined : [{ number, count: 1 } as Mention]);
  const main = grammar.main;
  const field = NAMED_BY[kind];
  const said: Record<string, unknown> = {
    ...(main && amount !== undefined ? { [main]: amount } : {}),
    ...(field && what !== undefined ? { [field]: what } : {}),
    ...(named ? { pieces: named } : {}),
    ...(date === undefined ? {} : { date }),
    ...(kind === "spend" && what !== undefined ? categoryOf(what) : {}),
    ...fields,
  };
  const isWhole = (grammar.needs ?? []).every((need) => need === "count" || said[need] !== undefined);
  return isWhole ? ({ ...said, kind, text, line } as Reading) : null;
}

/** What kind of spending a thing is, as a note of it would be read. */
function categoryOf(what: string): Pick<ReadingOf<"spend">, "category"> {
  const [spend] = readMessage(`${what} 1`, "2000-01-01");
  return spend?.kind === "spend" && spend.category ? { category: spend.category } : {};
}
