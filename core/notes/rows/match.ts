import type { Tok } from "../clause.ts";
import { CLAUSE_MARKS, GAP_MARKS, INTERJECTIONS, JOINTS } from "../words/links.ts";
import { SAYS_TODAY } from "../words/replies.ts";
import { meet } from "./bits.ts";
import { isVerb } from "./classes.ts";
import type { Element, Pattern } from "./pattern.ts";
import type { Units } from "./units.ts";
import type { RowWord, Unit } from "./words.ts";

export interface Match {
  from: number;
  to: number;
}

const GAP_MAX = 8;
/** How far a reason runs, and how far "nowhere in the rest" looks: a sentence, so that time stays linear. */
const REST_MAX = 30;

/** How many units the words of a literal take from `at` on, 0 where they do not stand there. */
function literalAt(units: readonly Unit[], at: number, words: readonly RowWord[]): number {
  for (let place = 0; place < words.length; place += 1)
    if (units[at + place]?.word !== words[place]) return 0;
  return words.length;
}

function takes({ units }: Units, at: number, element: Element): number {
  const unit = units[at];
  if (!unit) return 0;
  let most = 0;
  const { firsts, words } = element;
  if ((unit.word.sieve & element.sieve) !== 0)
    for (let place = 0; place < firsts.length; place += 1)
      if (firsts[place] === unit.word)
        most = Math.max(most, words.length === 0 ? 1 : literalAt(units, at, words[place]!));
  return most > 0 ? most : meet(unit.bits, element.bits) ? unit.span : 0;
}

const endsSentence = (token: Tok | undefined): boolean =>
  !token ||
  (token.kind === "mark" && CLAUSE_MARKS.has(token.text)) ||
  (token.kind === "word" && JOINTS.has(token.text));

/** "last friday dad sanded the desk" begins with dad, as does "happy to report that dad sanded it". */
const isPassedOver = ({ kind, text, roles }: Tok): boolean =>
  kind === "day" ||
  (kind === "word" &&
    !roles.heads &&
    (INTERJECTIONS.has(text) || (isPhraseOfChat(roles) && text.includes(" "))));

const isPhraseOfChat = ({ plain, filler }: Tok["roles"]): boolean => plain === true && filler === true;

function isStart({ tokens, units, places }: Units, at: number): boolean {
  if (units[at]?.span === 0) return false;
  let before = (places[at] ?? tokens.length) - 1;
  while (before >= 0 && isPassedOver(tokens[before]!)) before -= 1;
  return before < 0 || endsSentence(tokens[before]);
}

/** "on my way home this morning" ends with home. */
function isEnd({ tokens, units, places }: Units, at: number): boolean {
  if (at < units.length && units[at]!.span === 0) return false;
  let behind = places[at] ?? tokens.length;
  while (behind < tokens.length && tellsOnlyWhen(tokens[behind]!)) behind += 1;
  return endsSentence(tokens[behind]);
}

const tellsOnlyWhen = ({ kind, text }: Tok): boolean => kind === "word" && SAYS_TODAY.has(text);

interface Run {
  line: Units;
  pattern: Pattern;
  /** Where each bracket was reached. */
  from: number;
  to: number;
}

function follow(run: Run, element: number, at: number): boolean {
  const { line, pattern } = run;
  if (element === pattern.from) run.from = at;
  if (element === pattern.to) run.to = at;
  const next = pattern.elements[element];
  if (!next) return true;
  switch (next.what) {
    case "start":
      return isStart(line, at) && follow(run, element + 1, at);
    case "end":
      return isEnd(line, at) && follow(run, element + 1, at);
    case "not":
      return takes(line, at, next) === 0 && follow(run, element + 1, at);
    case "absent":
      return isAbsent(line, at, next) && follow(run, element + 1, at);
    case "gap":
      return followGap(run, element, at);
    case "rest":
      return follow(run, element + 1, restFrom(line, at));
    case "one":
      return followOne(run, element, at);
  }
}

function isAbsent(line: Units, from: number, element: Element): boolean {
  const end = Math.min(line.units.length, from + REST_MAX);
  for (let at = from; at < end; at += 1) if (takes(line, at, element) > 0) return false;
  return true;
}

/** Takes an element as often as it may, and once less where what follows does not fit. */
function followOne(run: Run, element: number, at: number, times = 0): boolean {
  const next = run.pattern.elements[element]!;
  const taken = times < next.most ? takes(run.line, at, next) : 0;
  if (taken > 0 && followOne(run, element, at + taken, times + 1)) return true;
  return times >= next.least && follow(run, element + 1, at);
}

function followGap(run: Run, element: number, at: number): boolean {
  const { tokens, places } = run.line;
  for (let skipped = 0; skipped <= GAP_MAX; skipped += 1) {
    if (follow(run, element + 1, at + skipped)) return true;
    if (at + skipped >= places.length) return false;
    const token = tokens[places[at + skipped]!]!;
    if (token.kind === "mark" && !GAP_MARKS.has(token.text)) return false;
  }
  return false;
}

/** Where a reason ends: at the end of its sentence, or before what is no reason (a number, a verb, a turn). */
function restFrom({ tokens, units, places }: Units, at: number): number {
  let end = at;
  while (end < units.length && end - at < REST_MAX) {
    const token = tokens[places[end]!]!;
    if (token.kind === "mark" && CLAUSE_MARKS.has(token.text)) break;
    const isPlain =
      (token.kind === "word" && (!token.roles.hedge || token.roles.hedge === "offer") && !isVerb(token)) ||
      token.kind === "piece";
    if (!isPlain) return at;
    end += Math.max(1, units[end]!.span);
  }
  return end;
}

/** Where a pattern's part in brackets stands if the pattern begins at unit `at`; null where it does not. Bounded steps. */
export function matchAt(pattern: Pattern, line: Units, at: number): Match | null {
  const run: Run = { line, pattern, from: at, to: at };
  if (!follow(run, 0, at) || run.to <= run.from) return null;
  return { from: line.places[run.from]!, to: line.places[run.to - 1]! + 1 };
}
