import { tableOf } from "./table.ts";

/**
 * What words tell together of a message that nobody could read as a whole, only ever for what is offered: it went "at
 * asking", it is sold "on condition", it came back ("returned"), a note is "right" as it is, the bot is told what to make
 * of one ("ordered").
 */
export type TurnTold = "at asking" | "on condition" | "returned" | "right" | "ordered";

export const telling = tableOf<TurnTold>([
  ["[went|sold|gone|go|got for|at the? asking|full]", "at asking", "desk went for asking"],
  [
    "[long_as|assuming|provided|pending|if_he|if_she|if_they|once_he|once_she|once_they]",
    "on condition",
    "desk sold as long as wade shows up with the money",
  ],
  [
    "[came|come|brought|sent|dropped|take|taken|took it|them|him|her? back]",
    "returned",
    "she brought the hutch, then took it back",
  ],
  ["[returned]", "returned", "the hutch got returned by nell"],
  ["[is|was|its|are|were right|correct|fine|good|ok|okay]", "right", "the 40 is right, dont remove it"],
  ["^ [no|wait|actually|,|.|!* make|change|should]", "ordered", "make it 35, my partner says"],
]);
