import type { Day } from "../../calendar.ts";
import { AMOUNT_CENTS_MAX, show } from "../../money.ts";
import {
  readBareCount,
  readBareDay,
  readBareDuration,
  readBareLoan,
  readBareMention,
  readBareMethod,
  readBareMiles,
  readBareMoney,
  readBarePercent,
  readYesNo,
} from "../../notes/bare.ts";
import { readMessage } from "../../notes/read.ts";
import type { Mention, Reading, ReadingOf } from "../../notes/reading.ts";
import { FOR_NOTHING } from "../../notes/words/money.ts";
import {
  BEFORE_CALLED,
  CAME_ALONG,
  COMPARED,
  SAYS_AMOUNT,
  TURNS_AMOUNT,
  UNKNOWN_TO_THEM,
  UNSURE_OF_IT,
  WAS_GIVEN,
} from "../../notes/words/replies.ts";
import { saysAny, wordsIn } from "../../notes/words/words.ts";
import type { Ask, Choice, Effect, Matter, Said } from "../decision.ts";
import { pricedFor } from "../pieces/each.ts";
import { mentionsOf } from "../pieces/mentioned.ts";
import { completeReading, dayOfAnswer, isPart } from "./completion.ts";
import { doubtedAnswer, withCount } from "./counting.ts";
import { isPaidByOthers, paidTold } from "./paid.ts";
import { pointedAt } from "./pointed-at.ts";
import { behindHaggling, choiceSpoken, halfOf, withoutOpening } from "./spoken.ts";

/** An open question and what it is about, as far as an answer needs them. */
export interface Asked {
  matter: Pick<Matter, "reading" | "said">;
  ask: Ask;
}

/**
 * What an answer ("35", "#4", "the tall one", "yes", "never mind", "sold it for 190") does to an open question;
 * null where the text does not answer it, and is a note of its own.
 */
export function takeAnswer(asked: Asked, said: Said): Effect | null {
  // "50 to the loan yesterday" is a payment, and not what was owed before another one.
  const isPayment = said.readings.some(({ kind, missing }) => kind === "pay" && !missing);
  if (asked.ask.wants === "balance" && isPayment) return null;
  // "she loved it, paid 75" is no price of ours.
  const isBought =
    asked.ask.wants === "price" && (asked.ask.first?.[0] ?? asked.matter.reading).kind === "buy";
  if (isBought && isPaidByOthers(said.text)) return null;
  const half = halfOf(asked.ask, said.text);
  if (half) return { kind: "settle", change: half };
  const bare = takeBare(asked, said) ?? choiceSpoken(asked.ask, said, asked.matter.reading)?.effect;
  if (bare) return bare;
  const of = asked.ask.first?.[0] ?? asked.matter.reading;
  const isOwnNote = said.readings.every((each) => isWhole(each) && !isPart(each, of));
  const { wants } = asked.ask;
  const opened = behindHaggling(said.text, wants) ?? withoutOpening(said.text, wants);
  // "like 40 minutes, mostly stripping": the opening alone makes another note of it.
  if (isOwnNote && !(opened && wants === "minutes")) return null;
  const rest = opened ? { ...said, text: opened, readings: readMessage(opened, said.today) } : null;
  const told = wants === "price" ? toldAnew(said, of.kind) : null;
  return (
    completeReading(asked, said) ??
    (rest && (takeBare(asked, rest) ?? completeReading(asked, rest))) ??
    (told && completeReading(asked, told))
  );
}

/** "it was 20 from the church sale", "gave the fella 20" of what a piece cost: got for that. Of a sale: sold for that. */
function toldAnew(said: Said, kind: Reading["kind"]): Said | null {
  const opening = OPENINGS[kind];
  const paid = opening && paidTold(said.text);
  if (!paid || (paid.side ?? opening.side) !== opening.side || saysAny(paid.rest, TURNS_AMOUNT)) return null;
  const text = `${opening.words} ${paid.rest}`;
  return { ...said, text, readings: readMessage(text, said.today) };
}

const OPENINGS: Partial<Record<Reading["kind"], { words: string; side: "in" | "out" }>> = {
  buy: { words: "got it for", side: "out" },
  sell: { words: "sold it for", side: "in" },
};

function isWhole({ kind, missing = [] }: Reading): boolean {
  return kind !== "unclear" && missing.length === 0;
}

/** What a bare value ("35", "45 today", "yes", the words of a button) does to an open question; null: it is none. */
export function takeBare({ matter, ask }: Asked, { text, today, readings }: Said): Effect | null {
  const reading = ask.first?.[0] ?? matter.reading;
  const yesNo = readYesNo(text);
  if (yesNo === "never mind") return { kind: "drop" };
  const choice = choiceSaid(ask.choices, text, yesNo) ?? choiceOfAmount(ask, text);
  if (choice) return choice.effect;
  if (isQuestion(readings)) return null;
  const doubted = doubtedAnswer(reading, ask, text);
  if (doubted) return doubted;
  const filled = fill(ask, text, today, reading);
  const change = filled
    ? { ...dayOfAnswer({ matter, ask }, text, today), ...filled }
    : onItsDay(ask, text, today, reading);
  if (!change) return null;
  if (ask.first) return { kind: "instead", readings: patchFirst(ask.first, change) };
  // A day that was doubted and is now given in its place is not doubted again.
  return { kind: "settle", change, ...(reading.longAgo && "date" in change ? { confirm: "long ago" } : {}) };
}

/** Longest run of words that can be a day, as in "a week ago friday". */
const DAY_WORDS_MAX = 4;

/** "45 yesterday", "sat, 45": the value and its day, counted from the day of the answer. */
function onItsDay(ask: Ask, text: string, today: Day, reading: Reading): Partial<Reading> | null {
  if (ask.wants === "day" || ask.wants === "choice") return null;
  const words = text.trim().split(/[\s,]+/);
  for (let count = 1; count <= DAY_WORDS_MAX && count < words.length; count += 1) {
    const parts = [
      [words.slice(0, -count), words.slice(-count)],
      [words.slice(count), words.slice(0, count)],
    ];
    for (const [rest, said] of parts as [string[], string[]][]) {
      const date = readBareDay(said.join(" ").replace(/^(?:on|at)\s/i, ""), today);
      const change = date && date <= today ? fill(ask, rest.join(" "), today, reading) : null;
      if (date && change) return { ...change, date } as Partial<Reading>;
    }
  }
  return null;
}

/** "show #4" names a piece and yet picks none: it wants to know of it. */
function isQuestion(readings: readonly Reading[]): boolean {
  return readings.length > 0 && readings.every(({ kind }) => kind === "ask");
}

/** Whether a text is just what one of the choices is picked by. */
export function isChoice({ choices }: Ask, text: string): boolean {
  const yesNo = readYesNo(text);
  return choiceSaid(choices, text, yesNo === "never mind" ? null : yesNo) !== undefined;
}

function choiceSaid(
  choices: readonly Choice[],
  text: string,
  yesNo: "yes" | "no" | null,
): Choice | undefined {
  const said = text
    .trim()
    .toLowerCase()
    .replace(/[.!]+$/, "");
  return choices.find(
    (choice) =>
      choice.label.toLowerCase() === said ||
      choice.words?.includes(said) ||
      (yesNo !== null && choice.words?.includes(yesNo)),
  );
}

/** "18.50" where one of the whole readings offered has that amount. */
function choiceOfAmount({ wants, choices }: Ask, text: string): Choice | undefined {
  const cents = wants === "choice" ? readBareMoney(text) : null;
  const said = cents === null ? "" : show(cents);
  const fitting = choices.filter(({ label }) => said !== "" && label.split(/[\s,]+/).includes(said));
  return fitting.length === 1 ? fitting[0] : undefined;
}

function patchFirst(first: readonly Reading[], change: Partial<Reading>): Reading[] {
  const [head, ...rest] = first as [Reading, ...Reading[]];
  return [{ ...head, ...change } as Reading, ...rest];
}

/** A bare number under this may be hours. */
const MINUTES_SURE = 10;

/** "45" to "how long?" can only be minutes; "2" may be hours. */
function minutesAlone(text: string): number | null {
  const count = readBareCount(text);
  return count !== null && count >= MINUTES_SURE ? count : null;
}

/** The change that a bare value makes to the reading's wanted field. */
function fill(ask: Ask, text: string, today: Day, reading: Reading): Partial<Reading> | null {
  const { wants } = ask;
  if (wants === "price" && reading.kind === "buy" && (CAME_ALONG.test(text) || saysFree(text))) text = "0";
  const rest = { missing: reading.missing?.filter((field) => field !== wants) ?? [] };
  const given = (value: object | string | number | null, field: string = wants) =>
    value === null ? null : ({ [field]: value, ...rest } as Partial<Reading>);
  switch (wants) {
    case "price":
    case "amount":
    case "balance":
    case "worth":
    case "refunded": {
      // "15 off" says what came off, not what was paid.
      if (saysAny(text, COMPARED)) return null;
      const owed = reading.kind === "loan" ? readBareLoan(text.replace(SAYS_AMOUNT, "")) : null;
      if (owed) return { ...owed, ...rest };
      const change = given(readBareMoney(text.replace(SAYS_AMOUNT, "")));
      return change && ({ ...change, ...methodFor(reading, readBareMethod(text)) } as Partial<Reading>);
    }
    case "minutes":
      return given(readBareDuration(text) ?? minutesAlone(text));
    case "miles":
      return given(readBareMiles(text));
    case "rate":
    case "percent":
      return given(readBarePercent(text));
    case "count":
      return counted(reading, text, rest);
    case "day":
      return given(readBareDay(text, today), "date");
    case "pieces":
      return fillPieces(text, reading, ask, rest);
    case "what":
    case "stream":
    case "loan":
      return fillWords(wants, text, reading, today, rest);
    case "per":
    case "choice":
      return null;
  }
}

/** "no charge", "they gave it to me", and little else. */
function saysFree(text: string): boolean {
  const isShort = wordsIn(text).length <= FREE_WORDS_MAX && !/\d/.test(text) && !saysAny(text, UNSURE_OF_IT);
  return isShort && (WAS_GIVEN.test(text) || saysAny(text, FOR_NOTHING));
}

const FREE_WORDS_MAX = 7;

/** "60 cash" also says how it was paid, for the kinds that keep that. */
function methodFor(reading: Reading, method: string | null): { method?: string } {
  const kept: readonly Reading["kind"][] = ["buy", "spend", "hold", "sell", "income"];
  return method && kept.includes(reading.kind) ? { method } : {};
}

/** The pieces counted; a price said of each is now that of all. */
function counted(reading: Reading, text: string, rest: Partial<Reading>): Partial<Reading> | null {
  const pieces = withCount(reading, text);
  if (!pieces) return null;
  if (!reading.each || !("price" in reading) || reading.price === undefined)
    return { pieces, ...rest } as Partial<Reading>;
  const price = reading.price * pieces.reduce((sum, { count = 1 }) => sum + count, 0);
  return price <= AMOUNT_CENTS_MAX ? ({ pieces, price, ...rest } as Partial<Reading>) : null;
}

/** "#4", "#4 and #5", "the tall one", "dresser": one of the candidates, or a mention to be matched anew. */
function fillPieces(
  text: string,
  reading: Reading,
  ask: Ask,
  rest: Partial<Reading>,
): Partial<Reading> | null {
  const mentions = numbersSaid(text) ?? [readBareMention(text)].filter((mention) => mention !== null);
  const [only] = mentions;
  const said = only ?? candidateSaid(text);
  const picked = said && mentions.length < 2 ? pickByWords(said, ask.choices) : null;
  if (picked) return picked;
  const pointed = only?.name === undefined ? pointedAt(text, ask.choices) : null;
  if (pointed) return pointed;
  if (!only || (only.name === undefined && only.number === undefined)) return null;
  const old = mentionsOf(reading);
  // The answer takes the place of what was in doubt; the other pieces of the note stay as they were said.
  const index = ask.mention ?? (old.length > 1 ? null : 0);
  if (index === null) return null;
  return {
    pieces: [...old.slice(0, index), ...mentions, ...old.slice(index + 1)],
    ...pricedFor(reading, mentions),
    ...rest,
  } as Partial<Reading>;
}

function numbersSaid(text: string): Mention[] | null {
  const numbers = text.match(/#\s?\d{1,6}/g);
  if (!numbers || numbers.length > 50 || !/^[\s#\d,&+]*(?:and[\s#\d,&+]*)*$/i.test(text)) return null;
  return numbers.map((number) => ({ number: Number(number.replace(/\D/g, "")), count: 1 }));
}

/** "4" is an amount anywhere else; where a candidate has that number, it can only be that piece. */
function candidateSaid(text: string): Mention | null {
  const said = /^\s*(\d{1,6})\s*[.!]?\s*$/.exec(text);
  return said ? { number: Number(said[1]), count: 1 } : null;
}

/** "the tall one" picks the only candidate whose label has all of its words. */
function pickByWords(mention: Mention, choices: readonly Choice[]): Partial<Reading> | null {
  const said = [...(mention.traits ?? []), ...(mention.name?.split(" ") ?? [])];
  if (mention.number !== undefined) said.push(`#${mention.number}`);
  if (said.length === 0) return null;
  const changes = choices.flatMap(({ label, effect }) => {
    const words = label.toLowerCase().split(/[\s,()]+/);
    const fits = effect.kind === "settle" && said.every((word) => words.includes(word));
    return fits && effect.change ? [effect.change] : [];
  });
  return changes.length === 1 ? changes[0]! : null;
}

/** Free words: taken as said unless they read as a note of their own. */
function fillWords(
  wants: "what" | "stream" | "loan",
  text: string,
  reading: Reading,
  today: Day,
  rest: Partial<Reading>,
): Partial<Reading> | null {
  const words = text.trim().toLowerCase().replace(BEFORE_CALLED, "");
  if (readYesNo(text) !== null || readBareDay(text, today) !== null || UNKNOWN_TO_THEM.test(words))
    return null;
  const readings = readMessage(text, today);
  const [only] = readings;
  const isNote =
    readings.length !== 1 || (only!.kind !== "unclear" && !(only!.kind === "spend" && only!.missing));
  if (words === "" || words.length > 40 || /\d/.test(words) || isNote) return null;
  return {
    [wants]: words,
    ...(wants === "what" ? spentOn(words, reading, today) : {}),
    ...rest,
  } as Partial<Reading>;
}

/** What was bought decides the category, and may name its piece: "glue for the desk". */
function spentOn(words: string, reading: Reading, today: Day): Partial<ReadingOf<"spend">> {
  const [spend, ...more] = readMessage(`${words} 1`, today);
  if (spend?.kind !== "spend" || more.length > 0 || spend.what === undefined) return {};
  const { what, category, pieces } = spend;
  const isNew = pieces && !("pieces" in reading && reading.pieces);
  return { what, ...(category ? { category } : {}), ...(isNew ? { pieces } : {}) };
}
