import type { Day } from "../calendar.ts";
import {
  readBareCount,
  readBareDay,
  readBareDuration,
  readBareMention,
  readBareMethod,
  readBareMiles,
  readBareMoney,
  readBarePercent,
  readYesNo,
} from "../notes/bare.ts";
import { readMessage } from "../notes/read.ts";
import type { Mention, Reading } from "../notes/reading.ts";
import type { Ask, Choice, Effect, Wanted } from "./decision.ts";

/**
 * What a bare answer ("35", "#4", "the tall one", "yes", "never mind") does to an open question; null where
 * the text does not answer it, and is a note of its own.
 */
export function answerBare(asked: { reading: Reading; ask: Ask }, text: string, today: Day): Effect | null {
  const { ask } = asked;
  const reading = ask.first?.[0] ?? asked.reading;
  const yesNo = readYesNo(text);
  if (yesNo === "never mind") return { kind: "drop" };
  const choice = choiceSaid(ask.choices, text, yesNo);
  if (choice) return choice.effect;
  const change = fill(ask.wants, text, today, reading, ask.choices);
  if (change && ask.first) return { kind: "instead", readings: patchFirst(ask.first, change) };
  return change ? { kind: "settle", change } : null;
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

function patchFirst(first: readonly Reading[], change: Partial<Reading>): Reading[] {
  const [head, ...rest] = first as [Reading, ...Reading[]];
  return [{ ...head, ...change } as Reading, ...rest];
}

/** The change that a bare value makes to the reading's wanted field. */
function fill(
  wants: Wanted,
  text: string,
  today: Day,
  reading: Reading,
  choices: readonly Choice[],
): Partial<Reading> | null {
  const still = reading.missing?.filter((field) => field !== wants) ?? [];
  const rest = { missing: still };
  switch (wants) {
    case "price":
    case "amount":
    case "balance":
    case "refunded": {
      const cents = readBareMoney(text);
      if (cents === null) return null;
      return { [wants]: cents, ...methodFor(reading, readBareMethod(text)), ...rest } as Partial<Reading>;
    }
    case "minutes": {
      const minutes = readBareDuration(text);
      return minutes === null ? null : ({ minutes, ...rest } as Partial<Reading>);
    }
    case "miles": {
      const miles = readBareMiles(text);
      return miles === null ? null : ({ miles, ...rest } as Partial<Reading>);
    }
    case "rate": {
      const rate = readBarePercent(text);
      return rate === null ? null : ({ rate, ...rest } as Partial<Reading>);
    }
    case "percent": {
      const percent = readBarePercent(text);
      return percent === null ? null : ({ percent, ...rest } as Partial<Reading>);
    }
    case "count": {
      const count = readBareCount(text);
      return count === null || count < 1
        ? null
        : ({ ...withCount(reading, count), ...rest } as Partial<Reading>);
    }
    case "day": {
      const date = readBareDay(text, today);
      return date === null ? null : ({ date, ...rest } as Partial<Reading>);
    }
    case "pieces":
      return fillPieces(text, reading, choices, rest);
    case "what":
    case "stream":
    case "loan":
      return fillWords(wants, text, today, rest);
    case "per":
    case "choice":
      return null;
  }
}

/** "60 cash" also says how it was paid, for the kinds that keep that. */
function methodFor(reading: Reading, method: string | null): { method?: string } {
  const kept: readonly Reading["kind"][] = ["buy", "spend", "hold", "sell", "income"];
  return method && kept.includes(reading.kind) ? { method } : {};
}

function withCount(reading: Reading, count: number): Partial<Reading> {
  const pieces = "pieces" in reading && Array.isArray(reading.pieces) ? reading.pieces : [];
  const counted = pieces.map((mention) => (mention.count === undefined ? { ...mention, count } : mention));
  return { pieces: counted } as Partial<Reading>;
}

/** "#4", "#4 and #5", "the tall one", "dresser": one of the candidates, or a mention to be matched anew. */
function fillPieces(
  text: string,
  reading: Reading,
  choices: readonly Choice[],
  rest: Partial<Reading>,
): Partial<Reading> | null {
  const numbers = text.match(/#\s?\d{1,6}/g);
  if (numbers && /^[\s#\d,&+]*(?:and[\s#\d,&+]*)*$/i.test(text) && numbers.length <= 50) {
    const pieces = numbers.map((number) => ({ number: Number(number.replace(/\D/g, "")), count: 1 }));
    return { pieces, ...rest } as Partial<Reading>;
  }
  const mention = readBareMention(text);
  if (!mention) return null;
  const picked = pickByWords(mention, choices);
  if (picked) return picked;
  if (mention.name === undefined && mention.number === undefined) return null;
  const old = "pieces" in reading && Array.isArray(reading.pieces) ? reading.pieces : [];
  // The answer names the one that was in doubt; where several were said, it must not swallow the others.
  return old.length > 1 ? null : ({ pieces: [mention], ...rest } as Partial<Reading>);
}

/** "the tall one" picks the only candidate whose label has all of its words. */
function pickByWords(mention: Mention, choices: readonly Choice[]): Partial<Reading> | null {
  const said = [...(mention.traits ?? []), ...(mention.name?.split(" ") ?? [])];
  if (mention.number !== undefined) said.push(`#${mention.number}`);
  if (said.length === 0) return null;
  const fitting = choices.filter((choice) => {
    const words = choice.label.toLowerCase().split(/[\s,]+/);
    return (
      choice.effect.kind === "settle" && choice.effect.change && said.every((word) => words.includes(word))
    );
  });
  const [only] = fitting;
  if (fitting.length !== 1 || only?.effect.kind !== "settle") return null;
  return only.effect.change ?? null;
}

/** Free words: taken as said unless they read as a note of their own. */
function fillWords(
  wants: "what" | "stream" | "loan",
  text: string,
  today: Day,
  rest: Partial<Reading>,
): Partial<Reading> | null {
  const words = text
    .trim()
    .toLowerCase()
    .replace(/^(?:a|an|the|my|for|on|from)\s+/, "");
  const readings = readMessage(text, today);
  const [only] = readings;
  const isNote =
    readings.length !== 1 || (only!.kind !== "unclear" && !(only!.kind === "spend" && only!.missing));
  if (words === "" || words.length > 40 || /\d/.test(words) || isNote) return null;
  return { [wants]: words, ...rest } as Partial<Reading>;
}
