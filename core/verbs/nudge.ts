import { judgeNudge } from "../notes/judging/nudging.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    nudge: { at?: string; off?: true; days?: number };
  }
}

/** "remind me every evening at", "ping me daily at" */
const ASKED_FOR = ["remind me", "nudge me", "ping me", "text me", "message me", "buzz me"].flatMap((ask) =>
  [
    "every day",
    "every night",
    "every evening",
    "every morning",
    "each day",
    "each night",
    "each evening",
    "each morning",
  ]
    .concat([
      "daily",
      "nightly",
      "in the evening",
      "in the morning",
      "at night",
      "mornings",
      "evenings",
      "nights",
    ])
    .map((often) => `${ask} ${often}`),
);

export const nudge = defineVerb({
  kind: "nudge",
  example: "nudge at 6:30pm",
  page: "slips",
  reads: {
    says: [
      {
        say: [
          "nudge",
          "nudges",
          "nudge me",
          "remind me at",
          "remind me daily at",
          "reminder",
          "reminders",
          "reminder at",
          "daily reminder",
          "nudge time",
          "turn nudges",
          "turn nudge",
          "turn off nudges",
          "turn off nudge",
          "turn off reminders",
          "turn off the nudge",
          "stop nudging",
          "stop nudging me",
          "stop nudges",
          "stop reminding me",
          "stop the nudge",
          "stop the nudges",
          "stop reminders",
          "no more nudges",
          "no nudges",
          "no more reminders",
          "mute",
          "mute nudges",
          "pause nudges",
          "pause reminders",
          "turn reminders",
          "daily nudge",
          "ping me at",
          "text me at",
          "nudging",
          ...[
            "quit reminding me",
            "quit reminding me",
            "quit nudging me",
            "quit the nudges",
            "quit with the nudges",
            "no reminders",
          ],
          ...["dont remind me", "dont nudge me", "stop pinging me", "stop texting me"],
          ...ASKED_FOR,
        ],
      },
      { say: ["snooze", "snooze nudges", "snooze nudge", "snooze for", "snooze it"] },
    ],
    slots: {},
    bears: ["wish"],
    absorbs: [
      "off",
      "on",
      "turn",
      "nudges",
      "nudge",
      "me",
      "every",
      "day",
      "daily",
      "stop",
      "want",
      "need",
      "set",
      "change",
      "changed",
      "please",
      "night",
      "morning",
      "not",
      "dont",
      "anymore",
      "reminders",
      "next",
      "send",
    ],
    dateless: true,
    judge: judgeNudge,
  },
});
