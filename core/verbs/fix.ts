import type { Cents } from "../money.ts";
import { judgeFix } from "../notes/judging/fixing.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    fix: { amount?: Cents };
  }
}

export const fix = defineVerb({
  kind: "fix",
  example: "make that 35",
  reads: {
    says: [
      {
        say: [
          "make that",
          "make it",
          "meant",
          "i meant",
          "meant to say",
          "i meant to say",
          "meant to put",
          "should be",
          "should have been",
          "shouldve been",
          "shoulda been",
          "was supposed to be",
          "supposed to be",
          "that should be",
          "it should be",
          "change that to",
          "change it to",
          "change to",
          "correction",
          "correct that to",
          "fix that to",
          "fix",
          "fix it to",
          "fix to",
          "it was actually",
          "was actually",
          "actually it was",
          "no it was",
        ],
        with: ["number"],
        without: ["piece", "loan", "supply", "stream"],
      },
      {
        say: [
          "no",
          "nope",
          "no wait",
          "wait no",
          "wait",
          "actually",
          "sorry",
          "it was",
          "that was",
          "oops",
          "oops it was",
          "no make that",
          "no actually",
        ],
        with: ["number"],
        without: ["piece", "named", "loan", "supply", "stream", "duration", "miles"],
        light: true,
      },
    ],
    slots: { amount: "money" },
    needs: ["amount"],
    absorbs: [
      "no",
      "nope",
      "wait",
      "actually",
      "sorry",
      "oops",
      "should be",
      "meant",
      "i meant",
      "make that",
      "it was",
      "not",
      "no wait",
      "typo",
      "my bad",
      "mistake",
      "said",
    ],
    whole: true,
    dateless: true,
    judge: judgeFix,
  },
});
