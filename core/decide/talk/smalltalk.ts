import type { Tok } from "../../notes/clause.ts";
import { lexed } from "../../notes/lexed.ts";
import type { Reading, ReadingOf } from "../../notes/reading.ts";
import { isFor, tellsNoFact } from "../../notes/unclear.ts";
import { UNITS } from "../../notes/words/numbers.ts";
import {
  ASKED_ABOUT,
  ASKED_OF,
  BESIDE_SMALL_TALK,
  COUNTED_IN_TALK,
  FELT,
  GREETINGS,
  LOOKED,
  LOOKERS,
  SMALL_TALK,
  THANKS,
} from "../../notes/words/smalltalk.ts";

/** What a person would say back to words that are no note, "" where nothing; null where it is no small talk. */
export function smallTalk(text: string): string | null {
  if (text.length > 60) return null;
  const words = text
    .toLowerCase()
    .replace(/['\u2019]/g, "")
    .match(/[\p{L}\p{N}]+/gu);
  // Emoji and marks alone.
  if (!words) return /[^\s?]/.test(text) ? "" : null;
  const isBeside = (word: string) => SMALL_TALK.has(word) || BESIDE_SMALL_TALK.has(word) || THANKS.has(word);
  // "ok good night"
  const at = words.findIndex(
    (word, place) => GREETINGS.has(`${word} ${words[place + 1]}`) || GREETINGS.has(word),
  );
  const greeting = GREETINGS.get(words.slice(at, at + 2).join(" ")) ?? GREETINGS.get(words[at] ?? "");
  if (greeting && words.every((word, place) => (place >= at && place < at + 2) || isBeside(word)))
    return greeting;
  // "three people messaged within the hour", "40 views already"
  const isCount = (word: string): boolean => /^\d+$/.test(word) || UNITS[word] !== undefined;
  const isOfLookers = (word: string): boolean => LOOKERS.has(word) || LOOKED.has(word) || isCount(word);
  const isMoneyToo = /[$€£]|\d[.,]\d/.test(text);
  if (words.length > 2 && !isMoneyToo && words.some((word) => LOOKERS.has(word)) && words.every(isOfLookers))
    return "";
  if (!words.every(isBeside)) return null;
  if (words.some((word) => THANKS.has(word))) return "Any time.";
  return words.some((word) => SMALL_TALK.has(word)) ? "" : null;
}

const REMARK_MAX = 7;

/** "that was quick" is passed over as a whole. */
const SAYING = /^\w+ \w+ \w+/;

/** "thats good right", "feels good man": an opinion that was read as nothing, and tells or asks of nothing else. */
export function isRemark(text: string, readings: readonly Reading[]): boolean {
  const isUnread = (reading: Reading): boolean => isNothing(reading) || isFor(reading, "question");
  // "last sale" asks for it.
  const tokens = readings.every(isUnread) && !/^(?:my |our |the )?last /i.test(text) ? lexed(text) : [];
  const isSaid = ({ kind, text: word, unknown, roles }: Tok): boolean =>
    kind === "mark" ||
    (kind === "word" &&
      !ASKED_OF.has(word) &&
      !(unknown || roles.heads || roles.hedge || roles.supply || roles.method) &&
      (!!(roles.opinion || roles.plain || roles.filler || roles.person) || SMALL_TALK.has(word)));
  const isFelt = ({ text: word, roles }: Tok): boolean =>
    roles.opinion === true || SMALL_TALK.has(word) || FELT.has(word) || SAYING.test(word);
  return tokens.length > 1 && tokens.length <= REMARK_MAX && tokens.every(isSaid) && tokens.some(isFelt);
}

/** A sentence about the weather or the day, or that "two people asked about it": no amount and nothing of the trade, so there is nothing to record. */
export function isNothing(reading: Reading): boolean {
  const isAskedOf = isFor(reading, "offer") && ASKED_ABOUT.test(reading.text);
  return (
    (isFor(reading, "unknown") || isAskedOf) && saysNothing(reading) && !lexed(reading.text).some(isMoney)
  );
}

/** It could be nothing, and no word of it is left over. */
const saysNothing = (reading: Reading): reading is ReadingOf<"unclear"> =>
  reading.kind === "unclear" && !reading.could && !reading.left;

/** What the number before one of these counts is no money: "95 degrees", "2 flights of stairs". */
const isMoney = ({ kind, text, amount }: Tok, at: number, tokens: readonly Tok[]): boolean =>
  kind === "amount" &&
  !(/^\w+$/.test(text) && !amount!.money && COUNTED_IN_TALK.has(tokens[at + 1]?.text ?? ""));

/** What a message says that it understood as no fact ("not selling it for that"); null where it may tell one. */
export function whyNoFact(readings: readonly Reading[]): string | null {
  const whys = readings.map((reading) => (saysNothing(reading) && tellsNoFact(reading) ? reading.why : null));
  const [first] = whys;
  return first && whys.every((why) => why === first) ? first : null;
}
