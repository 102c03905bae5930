import type { Cents } from "../money.ts";
import { judgeFix } from "../notes/judging/fixing.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    /** One of them: what the newest note has in its place. */
    fix: {
      amount?: Cents;
      minutes?: number;
      miles?: string;
      percent?: string;
      /** Told without a word that corrects: of the note right before it, or a fact of its own. */
      isTold?: true;
      /** The id of the fact, where it is another than the newest. */
      fact?: number;
    };
  }
}

/** Words that correct what was just said. */
const CORRECTING = [
  ...["i mean", "should say", "that should say", "it should say", "should read", "that should read"],
  ...["was supposed to say", "supposed to say", "should have said", "shouldve said", "meant to type"],
  "make that",
  "make it",
  "meant",
  "i meant",
  "meant to say",
  "i meant to say",
  "meant to put",
  "should be",
  "should have been",
  "should of been",
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
];

/** Words that correct what was just said where nothing else is named. */
const NO_BUT = [
  ...["no", "nope", "no wait", "wait no", "wait", "actually", "sorry", "it was", "that was"],
  ...["whoops", "woops", "my bad", "typo", "wrong amount", "wrong number", "wrong price", "price was"],
  ...["my mistake", "mistake", "sorry it was", "oops it was", "it shouldve been", "that shouldve been"],
  ...["oops", "no make that", "no actually", "it cost", "that cost"],
];

export const fix = defineVerb({
  kind: "fix",
  example: "make that 35",
  page: "slips",
  reads: {
    says: [
      {
        say: CORRECTING,
        with: ["number"],
        without: ["piece", "loan", "supply", "stream"],
      },
      ...(["duration", "miles", "percent"] as const).map((measure) => ({
        say: CORRECTING,
        with: [measure],
        without: ["piece", "loan", "supply", "stream", "labor", "number", "tax"] as const,
      })),
      {
        say: [
          ...["that was", "it was", "make that", "make it", "should be", "that should be"],
          ...[
            "it should be",
            "i meant",
            "meant",
            "actually",
            "no",
            "oops",
            "sorry",
            "wrong day",
            "wrong date",
          ],
          ...["date was", "the date was", "day was", "wait", "no wait", "it happened", "that happened"],
        ],
        with: ["day"],
        without: ["named", "number", "piece", "loan", "supply", "stream", "duration", "miles", "unknown"],
        light: true,
      },
      {
        say: NO_BUT,
        with: ["number"],
        without: ["piece", "named", "loan", "supply", "stream", "duration", "miles"],
        light: true,
      },
      ...(["duration", "miles", "percent"] as const).map((measure) => ({
        say: NO_BUT,
        with: [measure],
        without: ["piece", "named", "loan", "supply", "stream", "labor", "number", "tax"] as const,
        light: true as const,
      })),
    ],
    slots: { amount: "money", minutes: "minutes", miles: "miles", percent: "percent" },
    bears: ["corrects"],
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
    judge: judgeFix,
  },
});
