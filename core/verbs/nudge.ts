import { judgeNudge } from "../notes/judging/nudging.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    nudge: { at?: string; off?: true; days?: number };
  }
}

/** "remind me every evening at", "ping me daily at" */
const ASKED_FOR = phrases("remind_me nudge_me ping_me text_me message_me buzz_me").flatMap((ask) =>
  phrases("every_day every_night every_evening every_morning each_day each_night each_evening each_morning")
    .concat(phrases("daily nightly in_the_evening in_the_morning at_night mornings evenings nights"))
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
          ...phrases(
            "nudge nudges nudge_me remind_me_at remind_me_daily_at reminder reminders reminder_at daily_reminder nudge_time turn_nudges turn_nudge turn_off_nudges turn_off_nudge turn_off_reminders turn_off_the_nudge stop_nudging stop_nudging_me stop_nudges stop_reminding_me stop_the_nudge stop_the_nudges stop_reminders no_more_nudges no_nudges no_more_reminders mute mute_nudges pause_nudges pause_reminders turn_reminders daily_nudge ping_me_at text_me_at nudging quit_reminding_me quit_reminding_me quit_nudging_me stop_the_reminders stop_the_reminder turn_off_the_reminders turn_off_the_nudges cancel_nudges cancel_the_nudge cancel_the_nudges cancel_reminders cancel_the_reminders quit_the_nudges quit_with_the_nudges no_reminders dont_remind_me dont_nudge_me stop_pinging_me stop_texting_me",
          ),
          ...ASKED_FOR,
        ],
      },
      { say: phrases("snooze snooze_nudges snooze_nudge snooze_for snooze_it") },
    ],
    slots: {},
    bears: ["wish"],
    absorbs: phrases(
      "off on turn nudges nudge me every day daily stop want need set change changed please night morning not dont anymore reminders next send",
    ),
    dateless: true,
    judge: judgeNudge,
  },
});
