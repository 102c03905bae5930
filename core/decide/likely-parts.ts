import { gathered } from "../notes/gathered.ts";
import { readMessage } from "../notes/read.ts";
import type { Reading } from "../notes/reading.ts";
import { bears } from "../notes/verbs.ts";
import type { Desk } from "./decision.ts";
import { likelyOf } from "./likely.ts";
import type { Likely } from "./likely-of-pieces.ts";
import { mentionsOf } from "./mentioned.ts";
import { talkedOf } from "./talk.ts";
import { type Deciding, type Standing, standingOf } from "./whole.ts";

/* A message that nobody could read as one note may tell several: each of its parts by itself, on one button. */

/** Where one thing ends and another may begin. */
const JOINT = /[.;!]+\s+|,\s+(?:(?:and|then|also|so|but|plus)\s+)?|\s+(?:and|then|also|so|but|plus)\s+/i;

const PARTS_MAX = 5;
const LEAST = 4;
const WEIGHT = 6;

/** All that the parts of a text tell, where two of them tell something at least and none holds a number besides. */
export function inParts(
  text: string,
  line: number,
  desk: Omit<Desk, "confirmed">,
  deciding: Deciding,
): (Standing & Likely)[] {
  const parts = text.split(JOINT).filter((part) => part.trim() !== "");
  if (parts.length < 2 || parts.length > PARTS_MAX) return [];
  const told: Standing[] = [];
  let here = desk;
  for (const part of parts) {
    const one = tellsOne(part, line, here, deciding);
    if (one) {
      told.push(one);
      const numbers = mentionsOf(one.reading).flatMap(({ number }) => number ?? []);
      here = { ...desk, talk: { latest: numbers } };
    } else if (holdsNumber(part, desk)) return [];
  }
  const [first, ...others] = told;
  const kinds = new Set(told.map(({ reading }) => `${reading.kind} ${JSON.stringify(mentionsOf(reading))}`));
  if (!first || others.length === 0 || kinds.size < told.length) return [];
  return [
    {
      ...first,
      label: told.map(({ label }) => label).join("; "),
      more: others.map(({ reading }) => reading),
      weight: WEIGHT,
    },
  ];
}

function holdsNumber(part: string, { today }: Omit<Desk, "confirmed">): boolean {
  const { amounts, minutes, miles } = gathered(part, 0, today);
  return amounts.length + minutes.length + miles.length > 0;
}

/** The one whole note that a part is, with nothing to ask, or the likeliest that it may be. */
function tellsOne(
  part: string,
  line: number,
  desk: Omit<Desk, "confirmed">,
  deciding: Deciding,
): Standing | undefined {
  const [note, ...others] = readMessage(part, desk.today);
  const isNote = note !== undefined && others.length === 0 && note.kind !== "unclear" && !isAside(note);
  const plain = isNote ? standingOf([talkedOf(note, desk, deciding)], desk, deciding) : [];
  const likely = likelyOf(part, line, desk)
    .filter(({ weight, reading }) => weight >= LEAST && !isAside(reading))
    .flatMap(({ reading }) => standingOf([reading], desk, deciding));
  return [...plain, ...likely].find(({ asks }) => !asks);
}

const isAside = ({ kind }: Reading): boolean => kind === "ask" || kind === "undo" || bears(kind, "corrects");
