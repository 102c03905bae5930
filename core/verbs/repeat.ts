import * as z from "zod";
import type { RepeatedNote, Standing } from "../books/books.ts";
import { amountOf, type FactOf, type NewFact } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import { categoryShape, dayShape, wordsShape } from "../books/shapes.ts";
import { nextDue } from "../books/standing.ts";
import { addDays, type Day, showDay } from "../calendar.ts";
import type { Decision, Desk } from "../decide/decision.ts";
import { askFirst, setUp } from "../decide/repeating/repeating.ts";
import { standingMeant, standingName, standingWords } from "../decide/repeating/standing.ts";
import type { Cents } from "../money.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    repeat: {
      every?: "week" | "month" | "year";
      /** Day of the month (1-31), name of a weekday, or "MM-DD". */
      day?: number | string;
      /** The first day, which may be in the future. */
      from?: Day;
      /** What is recorded each time: a spend, pay or income. */
      note?: Reading;
      /** Which standing note is stopped or changed. */
      of?: { kind?: Kind; what?: string; loan?: string; stream?: string; amount?: Cents };
      stop?: true;
      /** The new amount. */
      amount?: Cents;
    };
  }
}

declare module "../books/facts.ts" {
  interface FactData {
    /**
     * Sets up a standing note, whose first instance falls on `first`; or changes one (by its place) from a day on:
     * its amount, or that it stops. The amount is that of each instance.
     */
    repeat:
      | { every: "week" | "month" | "year"; first: Day; day?: number; note: RepeatedNote }
      | { of: number; from: Day; stop?: true };
  }
}

const note = z.discriminatedUnion("kind", [
  z.strictObject({
    kind: z.literal("spend"),
    what: wordsShape,
    category: categoryShape,
    method: wordsShape.optional(),
  }),
  z.strictObject({ kind: z.literal("pay"), loan: wordsShape.optional() }),
  z.strictObject({ kind: z.literal("income"), stream: wordsShape, method: wordsShape.optional() }),
]);

const rules: FactRules<"repeat"> = {
  mends: ["amount"],
  data: z.union([
    z.strictObject({
      every: z.enum(["week", "month", "year"]),
      first: dayShape,
      day: z.int().min(1).max(31).optional(),
      note,
    }),
    z.strictObject({ of: z.int().positive(), from: dayShape, stop: z.literal(true).optional() }),
  ]),
  apply(books, fact) {
    const { data, place } = fact;
    if ("note" in data) {
      const { every, first, day = null, note } = data;
      const amounts = [{ from: first, amount: amountOf(fact) }];
      books.standing.set(place, {
        place,
        every,
        first,
        day,
        note,
        by: fact.by ?? null,
        amounts,
        stopped: null,
      });
      return null;
    }
    const standing = books.standing.get(data.of);
    if (!standing) return { kind: "no such repeat" };
    books.standing.set(data.of, changed(standing, data, fact));
    return null;
  },
};

function changed(
  standing: Standing,
  { from, stop }: { from: Day; stop?: true },
  fact: FactOf<"repeat">,
): Standing {
  if (stop) return { ...standing, stopped: from };
  const earlier = standing.amounts.filter((each) => each.from < from);
  return { ...standing, amounts: [...earlier, { from, amount: amountOf(fact) }] };
}

export const repeat = defineVerb({
  kind: "repeat",
  example: "storage 60 every month",
  page: "deals",
  listed: ({ data, place }, _, books) => {
    const standing = books.standing.get("note" in data ? place : data.of);
    const what = standing ? standingName(standing.note) : "a standing note";
    if ("of" in data) return `${data.stop ? "stopped" : "changed"} ${what}`;
    return `every ${data.every}: ${what}`;
  },
  books: rules,
  reads: {
    // How often is a part of the line of its own (notes/repeated.ts); the rest of it is the note that repeats.
    says: [],
    slots: {},
  },

  decide(reading, desk) {
    if (reading.stop || reading.of) return changeStanding(reading, desk);
    return askFirst(reading, desk) ?? setUp(reading, desk);
  },
  echo({ fact, books, today }) {
    const { data } = fact;
    const standing = books.standing.get("note" in data ? fact.place : data.of);
    if (!standing) return ["A standing note"];
    if ("stop" in data && data.stop)
      return [`Stopped from ${showDay(data.from, today)}: ${standingWords(standing, today)}`];
    if ("of" in data) return [`${standingWords(standing, data.from)} from ${showDay(data.from, today)}`];
    // Today's is recorded as it is set up.
    const next = nextDue(standing, addDays(today, 1));
    const begins = `${standingWords(standing, standing.first)} from ${showDay(standing.first, today)}`;
    return [begins, `I record it by myself${next ? `, next: ${showDay(next, today)}` : ""}`];
  },
});

/** Stops a standing note or gives it another amount, for the days to come. */
function changeStanding(reading: ReadingOf<"repeat">, desk: Desk): Decision {
  const meant = standingMeant(reading, desk);
  if (meant.kind !== "settled") return meant;
  const { place } = meant.standing;
  const from = reading.from ?? reading.date ?? desk.today;
  const base = { kind: "repeat" as const, day: desk.today, pieces: [] };
  if (reading.stop) return record({ ...base, data: { of: place, from, stop: true } });
  if (reading.amount === undefined) {
    const prompt = `${standingWords(meant.standing, desk.today)}. What is it now?`;
    return { kind: "ask", ask: { prompt, wants: "amount", choices: [] } };
  }
  return record({ ...base, amount: reading.amount, data: { of: place, from } });
}

function record(fact: NewFact): Decision {
  return { kind: "record", facts: [fact] };
}
