import * as z from "zod";
import { amountOf } from "../books/facts.ts";
import type { FactRules } from "../books/rules.ts";
import type { Cents } from "../money.ts";
import { show } from "../money.ts";
import { judgeGoal } from "../notes/judging/aiming.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    goal: { pieces?: number; amount?: Cents; per?: "month" | "year" };
  }
}

const rules: FactRules<"goal"> = {
  mends: ["amount", "date"],
  data: z.strictObject({ per: z.enum(["month", "year"]), pieces: z.int().nonnegative().optional() }),
  apply(books, fact) {
    books.goals.push({
      day: fact.day,
      per: fact.data.per,
      pieces: fact.data.pieces ?? null,
      amount: fact.amount === undefined ? null : amountOf(fact),
    });
    return null;
  },
};

export const goal = defineVerb({
  kind: "goal",
  example: "goal 100 pieces this year",
  page: "slips",
  listed: ({ data: { pieces, per } }) =>
    pieces === undefined ? `goal for a ${per}` : `goal: ${pieces} pieces a ${per}`,
  books: rules,
  reads: {
    says: [
      {
        say: [
          ...phrases(
            "goal my_goal goal_is goals target new_goal set_goal set_a_goal aim aiming_for aim_for shooting_for",
          ),
          ...["aiming to", "shooting to", "fixing to"].flatMap((aims) =>
            phrases("make clear do hit earn sell flip").map((make) => `${aims} ${make}`),
          ),
        ],
        with: ["number"],
        without: ["loan"],
      },
    ],
    slots: {},
    bears: ["any count", "wish"],
    dateless: true,
    needs: ["per"],
    absorbs: phrases(
      "goal sell flip make set to_sell to_flip to_make want_to sales profit want earn selling making change changed raise raised raising lower lowered bump bumped sold flips flipping",
    ),
    judge: judgeGoal,
  },

  decide(reading, desk) {
    const { pieces, amount, per } = reading;
    const data = { per: per!, ...(pieces === undefined ? {} : { pieces }) };
    const day = reading.date ?? desk.today;
    return {
      kind: "record",
      facts: [{ kind: "goal", day, pieces: [], ...(amount === undefined ? {} : { amount }), data }],
    };
  },
  offered: ({ pieces, amount, per = "month" }) =>
    `Goal: ${pieces === undefined ? show(amount ?? 0) : `${pieces} pieces`} a ${per}`,

  echo({ fact }) {
    const what = fact.data.pieces === undefined ? show(fact.amount ?? 0) : `${fact.data.pieces} pieces`;
    return [`Goal: ${what} a ${fact.data.per}`, 'How it goes: "pace"'];
  },
});
