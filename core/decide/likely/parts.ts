import { readPart } from "../../notes/read.ts";
import type { Reading } from "../../notes/reading.ts";
import { gathered } from "../../notes/second-look/gathered.ts";
import { bears } from "../../notes/verbs.ts";
import { BEFORE_THING, BETWEEN_TOLD } from "../../notes/words/telling.ts";
import type { Looking } from "../decision.ts";
import { byNumbers, mentionsOf } from "../pieces/mentioned.ts";
import { talkedOf } from "../talk/talk.ts";
import { type Deciding, type Standing, standingOf } from "../unclear/whole.ts";
import { likelyOf } from "./likely.ts";
import type { Likely } from "./of-pieces.ts";

/* A message that nobody could read as one note may tell several: each of its parts by itself, on one button. */

const PARTS_MAX = 5;
const LEAST = 4;
const WEIGHT = 6;

/** All that the parts of a text tell, where two of them tell something at least and none holds a number besides. */
export function inParts(
  text: string,
  line: number,
  desk: Looking,
  deciding: Deciding,
): (Standing & Likely)[] {
  const parts = text.split(BETWEEN_TOLD).filter((part) => part.trim() !== "");
  if (parts.length < 2 || parts.length > PARTS_MAX) return [];
  const told: Standing[] = [];
  let here = desk;
  for (const part of parts) {
    const one =
      tellsOne(part, line, here, deciding) ??
      (told.length > 0 ? costOf(part, line, here, deciding) : undefined);
    if (one) {
      told.push(one);
      const numbers = mentionsOf(one.reading).flatMap(({ number }) => number ?? []);
      here = { ...desk, talk: { latest: numbers } };
    } else if (holdsNumber(part, desk)) return [];
  }
  const [first, ...others] = told;
  const things = new Set(told.map(({ reading }) => thingOf(reading)));
  if (!first || others.length === 0 || things.size < told.length) return [];
  return [
    {
      ...first,
      label: told.map(({ label }) => label).join("; "),
      more: others.map(({ reading }) => reading),
      weight: WEIGHT,
    },
  ];
}

/** What a fact is of: one of the same is told once, but of costs and work. */
function thingOf(reading: Reading): string {
  const what = reading.kind === "spend" || reading.kind === "work" ? reading.what : "";
  return `${reading.kind} ${what} ${JSON.stringify(mentionsOf(reading))}`;
}

const WHAT_MAX = 3;

/** What is told of these is no thing that was bought. */
const OF_DEALS = [
  "owes",
  "rest",
  "back",
  "sold",
  "listed",
  "lowered",
  "down",
  "kept",
  "planned",
  "doubted",
] as const;

/** "7 for a new foot", "felt for the inside 8": behind what was told of a piece, things that nobody listed and their cost. */
function costOf(part: string, line: number, desk: Looking, deciding: Deciding): Standing | undefined {
  const { amounts, tokens, tells, mentions, minutes, miles } = gathered(part, line, desk.today);
  const [amount, ...others] = amounts;
  const words = tokens.filter(({ kind, roles }) => kind === "word" && !roles.filler && !roles.person);
  const isThing = words.every(({ roles }) => !roles.heads && !roles.hedge && !roles.method);
  const what = words.slice(0, WHAT_MAX).map(({ text }) => thingIn(text));
  const isOfDeal = OF_DEALS.some((each) => tells.has(each));
  const isOther = mentions.length + minutes.length + miles.length + others.length > 0;
  if (amount === undefined || isOther || isOfDeal || !isThing || what.join("") === "") return undefined;
  const latest = desk.talk?.latest ?? [];
  const of = latest.length > 0 ? { pieces: byNumbers(latest) } : {};
  const reading = {
    kind: "spend",
    what: what.filter((word) => word !== "").join(" "),
    category: "materials",
    amount,
    ...of,
  };
  return standingOf([{ ...reading, text: part, line } as Reading], desk, deciding).find(({ asks }) => !asks);
}

/** "for foot" is a foot. */
function thingIn(text: string): string {
  const [first = "", ...others] = text.split(" ");
  return BEFORE_THING.has(first) ? others.join(" ") : text;
}

function holdsNumber(part: string, { today }: Looking): boolean {
  const { amounts, minutes, miles } = gathered(part, 0, today);
  return amounts.length + minutes.length + miles.length > 0;
}

/** The one whole note that a part is, with nothing to ask, or the likeliest that it may be. */
function tellsOne(part: string, line: number, desk: Looking, deciding: Deciding): Standing | undefined {
  const [note, ...others] = readPart(part, desk.today);
  const isNote = note !== undefined && others.length === 0 && note.kind !== "unclear" && !isAside(note);
  const plain = isNote ? standingOf([talkedOf(note, desk, deciding)], desk, deciding) : [];
  const likely = likelyOf(part, line, desk)
    .filter(({ weight, reading }) => weight >= LEAST && !isAside(reading))
    .flatMap(({ reading }) => standingOf([reading], desk, deciding));
  return [...plain, ...likely].find(({ asks }) => !asks);
}

const isAside = ({ kind }: Reading): boolean => kind === "ask" || kind === "undo" || bears(kind, "corrects");
