import { isAmount, isMark, type Tok } from "../clause.ts";
import { joined, saidBy } from "../rows/joined.ts";
import { centsIn } from "../slots/money.ts";
import { turnedRoles } from "../tokens/roles.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { BARGAINS, BETWEEN_MOVES, MOVES, type Move, OF_MOVES, OPENS_MOVE, PAYS } from "../words/bargained.ts";
import { NOBODY } from "../words/deals.ts";
import { HOUSEHOLD } from "../words/people.ts";

/*
 * "guy wanted 80 for the sideboard, talked him down, paid 55": a price that was bargained over, told move by move up to
 * the deed. The note is read as if only the deed were told: the piece, and the last price that stood.
 */

/** A line's tokens with the deed in the place of a tale of bargaining; the same ones where none is told to its end. */
export function withBargained(tokens: Tok[], line: string): Tok[] {
  const sums = tokens.reduce((count, token) => (isAmount(token) ? count + 1 : count), 0);
  if (sums === 0 || tokens.length > TALE_MAX || (sums === 1 && !BARGAINS.test(line))) return tokens;
  const shape = shapeOf(tokens);
  for (let start = 0; start < tokens.length; start += 1) {
    if (!isOpen(tokens[start - 1])) continue;
    const made = closed(tokens, movesFrom(shape, start));
    const deed = deedOf(tokens, made);
    if (deed) return [...tokens.slice(0, start), ...deed, ...tokens.slice(made.at(-1)!.to)];
  }
  return tokens;
}

/** Where a clause may begin, or end: what stands there belongs to nothing that is told. */
const isOpen = (token: Tok | undefined): boolean =>
  token === undefined || token.kind === "mark" || token.kind === "day" || OPENS_MOVE.has(token.text);

/** The moves up to the last that is told to the end of its clause. */
function closed(tokens: readonly Tok[], made: Made[]): Made[] {
  const last = made.findLastIndex(
    ({ move, to }) => isOpen(tokens[to]) && (move !== "named" || !tokens[to] || isMark(tokens[to], ")")),
  );
  return made.slice(0, last + 1);
}

/** Nobody bargains in more words. */
const TALE_MAX = 80;

/** The line in the letters of `MOVES`, and where in it each token begins. */
interface Shape {
  text: string;
  starts: readonly number[];
}

function shapeOf(tokens: readonly Tok[]): Shape {
  const starts: number[] = [];
  let text = "";
  for (const token of tokens) {
    starts.push(text.length);
    text += `${letterOf(token)} `;
  }
  return { text, starts: [...starts, text.length] };
}

function letterOf({ kind, text, roles, mention, unknown }: Tok): string {
  if (kind === "mark") return ",";
  if (kind === "day") return "D";
  if (kind === "amount") return "$";
  if (kind === "piece") return mention!.it ? text : "P";
  if (kind !== "word") return "?";
  if (roles.method !== undefined) return "M";
  if (HOUSEHOLD.has(text)) return "K";
  return (roles.person || roles.place !== undefined || unknown) && !OF_MOVES.has(text) ? "W" : text;
}

/** A move found: which, and the tokens that tell it. */
interface Made {
  move: Move;
  from: number;
  to: number;
}

const SORTS = Object.keys(MOVES) as Move[];
const WAYS = SORTS.map((move) => new RegExp(`(?:${MOVES[move].join("|")}) `, "y"));
const BETWEEN = new RegExp(BETWEEN_MOVES, "y");

/** The moves that follow each other from a token on. */
function movesFrom({ text, starts }: Shape, start: number): Made[] {
  const made: Made[] = [];
  let from = start;
  for (;;) {
    const move = longestAt(text, starts, from);
    if (!move) return made;
    made.push(move);
    BETWEEN.lastIndex = starts[move.to]!;
    const end = BETWEEN.exec(text)?.[0].length ?? 0;
    from = starts.indexOf(starts[move.to]! + end);
  }
}

function longestAt(text: string, starts: readonly number[], from: number): Made | null {
  let found: Made | null = null;
  for (const [sort, way] of WAYS.entries()) {
    way.lastIndex = starts[from]!;
    const said = way.exec(text);
    const to = said ? starts.indexOf(starts[from]! + said[0].length) : -1;
    if (to > (found?.to ?? from)) found = { move: SORTS[sort]!, from, to };
  }
  return found;
}

type Moves = ReadonlySet<Move>;

const THEY_WOULD_GIVE: Moves = new Set(["theirBid", "had"]);
const OF_BUYING: Moves = new Set(["bought", "theirsDown", "floor", "theirs"]);
const OF_SELLING: Moves = new Set([...THEY_WOULD_GIVE, "sold", "oursDown", "theirsUp"]);
const SAID_BY_THEM: Moves = new Set(["theySaid"]);
/** Behind the deed these may change it. */
const AHEAD: Moves = new Set(["off", "had"]);
/** The deed, and those that are done by whoever was spoken of. */
const DONE: Moves = new Set(["bought", "sold", "paid"]);
/** Moves that name no price which stood, however late they come. */
const OFFERED: Moves = new Set([...THEY_WOULD_GIVE, ...SAID_BY_THEM, "bid"]);
const NAMED: Moves = new Set([...OFFERED, "theirs", "asked"]);
const DOWN: Moves = new Set(["theirsDown", "oursDown", "theirsUp"]);
/** Without one of these nothing was bargained over. */
const HAGGLES: Moves = new Set([...NAMED, ...DOWN, "floor", "off", "met", "haggled"]);
const MET: Moves = new Set(["met"]);
const FLOOR: Moves = new Set(["floor"]);
/** With one of these a price stands that was only named. */
const AGREES: Moves = new Set(["taken", "took", "bought", "sold"]);

/** The deed that a tale comes to; null where it is none, or one that two could read differently. */
function deedOf(tokens: readonly Tok[], made: readonly Made[]): Tok[] | null {
  const has = (moves: Moves): boolean => made.some(({ move }) => moves.has(move));
  const isTaken = has(MET) && has(OF_SELLING);
  const done = made.filter(({ move }) => DONE.has(move) || (move === "took" && isTaken));
  const [first] = done;
  const isUndone = !first && has(OF_BUYING) && has(NAMED) && (has(DOWN) || has(MET));
  const deed = isUndone ? made.at(-1)! : first;
  if (!deed || !has(HAGGLES) || (has(OF_BUYING) && has(OF_SELLING))) return null;
  // "sold mirror 35 but knocked 5 off", "sold the lamp 90 but she only had 60 on her"
  if (made.some(({ move }, at) => AHEAD.has(move) && made.slice(0, at).some((other) => DONE.has(other.move))))
    return null;
  const sold = new Set(done.flatMap((move) => sumsOf(tokens, move)).map(centsIn));
  const price = sold.size > 1 ? null : priceOf(tokens, made);
  const told = tokens.slice(made[0]!.from, made.at(-1)!.to);
  const pieces = told.filter(({ kind, mention }) => kind === "piece" && !mention!.it);
  const isOne = new Set(pieces.map(({ mention }) => mention!.name ?? mention!.number)).size <= 1;
  const named = made.filter(({ move }) => NAMED.has(move)).flatMap((move) => sumsOf(tokens, move));
  const it = pieces[0] ?? told.find(({ mention }) => mention?.it);
  const days = told.filter(({ kind }) => kind === "day");
  if (!price || !it || !isOne || days.length > 1 || centsIn(price) === null) return null;
  const isDearer = named.length > 0 && named.every((sum) => (centsIn(sum) ?? 0) < centsIn(price)!);
  if (!has(OF_SELLING) && isDearer) return null;
  const method = told.filter(({ roles }) => roles.method !== undefined).slice(0, 1);
  const member = told.filter(({ text }) => HOUSEHOLD.has(text)).slice(0, 1);
  const isUnsaid = !has(OF_SELLING) && !has(OF_BUYING) && !has(SAID_BY_THEM);
  const paid = told.find(({ text }) => PAYS.has(text));
  // "wardrobe, asking 100, paid 70": by whom, the books tell.
  if (isUnsaid && paid) return [...member, paid, price, linkTo("for", it), it, ...method, ...days];
  const isSold = isUnsaid || has(OF_SELLING);
  const who = told.filter((token) => isNamed(token));
  const buyer = isSold && who.length === 1 ? [linkTo("to", who[0]!), who[0]!] : [];
  const verb = saidBy(isSold ? "sold" : "bought", tokens, deed);
  const undone = isUndone ? [joined(tokens, deed, turnedRoles({ hedge: "intention" }))] : [];
  return [...member, verb, it, price, ...method, ...days, ...buyer, ...undone];
}

const isNamed = ({ text, roles, unknown, kind }: Tok): boolean =>
  kind === "word" && (roles.person === true || unknown === true) && !OF_MOVES.has(text) && !NOBODY.has(text);

const linkTo = (text: "to" | "for", { from, to }: Tok): Tok => wordToken("word", text, from, to, NO_ROLES);

/** The last sum of the last move that says what it went for. */
function priceOf(tokens: readonly Tok[], made: readonly Made[]): Tok | null {
  const last = (moves: Moves): Tok | undefined =>
    made
      .filter(({ move }) => moves.has(move))
      .flatMap((move) => (DOWN.has(move.move) ? downTo(tokens, move) : sumsOf(tokens, move)))
      .at(-1);
  const isTaken = made.some(({ move }) => AGREES.has(move));
  return (
    last(DONE) ?? last(MET) ?? last(DOWN) ?? last(FLOOR) ?? (isTaken ? last(OFFERED) : undefined) ?? null
  );
}

const sumsOf = (tokens: readonly Tok[], { from, to }: Made): Tok[] => tokens.slice(from, to).filter(isAmount);

/** "down from 80 to 55" */
const downTo = (tokens: readonly Tok[], { from, to }: Made): Tok[] =>
  tokens
    .slice(from, to)
    .filter((token, at) => isAmount(token) && /(?:^| )to$/.test(tokens[from + at - 1]?.text ?? ""));
