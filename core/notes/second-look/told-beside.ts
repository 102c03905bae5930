import type { Tok } from "../clause.ts";
import type { Reading } from "../reading.ts";
import { unfinished } from "../rows/unfinished.ts";
import { unitsOf } from "../rows/units.ts";
import { DENIES, WORKS } from "../words/lived.ts";
import { PIECE_PARTS } from "../words/parts.ts";
import { besideIn, isBesideDeed, OURS, tellsWhy, turnsDeed } from "./of-ours.ts";
import { isEnd, isTold, type Stretch, stretchesOf } from "./told.ts";

/*
 * Where a line is not read as it stands, what it tells in passing is left out; that counts only where the rest is whole.
 */

/** The readings of a line without what it tells in passing, where those are whole and its own are not. */
export function withoutTold(
  readings: Reading[],
  lexed: () => Tok[],
  read: (tokens: Tok[]) => Reading[],
): Reading[] {
  if (readings.every((one) => one.kind !== "unclear" || one.byBooks)) return readings;
  const tokens = lexed();
  if (tokens.length > TOKENS_MAX) return readings;
  const strict = toldIn(tokens, isTold);
  const made = wholeWithout(tokens, strict, read);
  // "sold the desk 120, it won't fit through her door"
  const last = made?.at(-1)?.kind ?? "";
  const isDenied = DEALT.has(last) && strict.some((one) => deniesMore(tokens, one, last));
  if (made && !isDenied) return made;
  const told = toldIn(tokens, isBesideDeed);
  const deeds = wholeWithout(tokens, told, read);
  const beside = deeds ? [...told, ...besideIn(tokens)] : told;
  const isOurs = deeds?.every(
    ({ kind }) => OURS.has(kind) && !beside.some((one) => turnsDeed(kind, tokens, one)),
  );
  return isOurs ? deeds! : readings;
}

/** The readings of the tokens without some stretches, where each is whole; else null. */
function wholeWithout(
  tokens: readonly Tok[],
  told: readonly Stretch[],
  read: (tokens: Tok[]) => Reading[],
): Reading[] | null {
  if (told.length === 0) return null;
  const kept = tokens
    .filter((_, at) => !told.some(({ from, to }) => at >= from && at < to))
    .map((token) => ({ ...token }));
  while (kept.length > 0 && isEnd(kept.at(-1)!)) kept.pop();
  while (kept.length > 0 && isEnd(kept[0]!)) kept.shift();
  const made = kept.length > 0 ? read(kept) : [];
  return made.length > 0 && made.every(isWhole) ? made : null;
}

const isWhole = (reading: Reading): boolean =>
  reading.kind === "unclear" ? reading.byBooks === true : reading.kind !== "ask" && !reading.missing;

/** What is denied behind one of these may be the deal. */
const DEALT: ReadonlySet<string> = new Set(["sell", "hold", "buy", "trade"]);

/** Whether something is denied that is no part of a piece: "the lid doesn't close" tells how it is. */
function deniesMore(tokens: readonly Tok[], { said, to }: Stretch, kind: string): boolean {
  const words = tokens.slice(said, to);
  const at = words.findIndex(({ text }) => DENIES.has(text));
  // "bought a trunk 14, won't lock"
  const isOfIt = at === 0 && kind === "buy" && WORKS.has(words[1]?.text ?? "");
  return at >= 0 && !isOfIt && !PIECE_PARTS.has(words[at - 1]?.text ?? "");
}

/** Beyond, a line is a list of notes. */
const TOKENS_MAX = 60;

type Telling = (tokens: readonly Tok[], stretch: Stretch, isGoingOn: boolean) => boolean;

/** The stretches of a line that are told in passing. */
function toldIn(tokens: readonly Tok[], tells: Telling): Stretch[] {
  const told: Stretch[] = [];
  const turns = unfinished
    .fired(tokens, unitsOf([...tokens]))
    .filter(({ effect }) => effect !== "word" && effect !== "labor");
  for (const stretch of stretchesOf(tokens)) {
    // "done while waiting for the plumber": beside a deed of ours a reason turns nothing.
    const isWhy = tells !== isTold && tellsWhy(tokens, stretch);
    const isTurned = turns.some(
      ({ from, to }) => from < stretch.to && to > stretch.from && !(isWhy && from >= stretch.said),
    );
    const isGoingOn = told.at(-1)?.to === stretch.from;
    if (!isTurned && tells(tokens, stretch, isGoingOn)) told.push(stretch);
  }
  return told;
}
