import { isAmount, isPiece, placeBefore, type Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { rolesOf } from "../tokens/roles.ts";
import { wordToken } from "../tokens/token.ts";
import { ARTICLES_WIDE, SPENT_ON } from "../words/links.ts";
import {
  FOR_PIECES,
  FOR_SHOP,
  IN_HALVES,
  KEPT_IN_STOCK,
  NEEDED_BY,
  NOT_BUT,
  NOT_FOR,
  OF_SHOP_TOKEN,
  SHOP_WITHIN,
} from "../words/whom.ts";

/*
 * "sandpaper 21.35, general shop stuff", "knobs 12, those are for the dresser", "primer 12 for the desk, i mean the dresser":
 * a clause behind a cost that tells for what it was, and nothing else. It stands with the cost, before any word of it is taken
 * for a verb, or for a correction of an earlier note.
 */

/** A line's tokens, for whom each cost was standing with it; the same ones where nothing tells it behind one. */
export function withForWhom<Some extends readonly Tok[]>(tokens: Some): Some | Tok[] {
  const thing = tokens.findIndex(isSupply);
  if (thing < 0) return tokens;
  let told: Some | Tok[] = tokens;
  for (let at = thing + 1; at < told.length; at += 1) {
    const end = endOf(told, at);
    if (end === at) continue;
    const whom: Whom | null = opensHere(told, at) ? whomIn(told, at, end) : null;
    const cost: { from: number; said: Tok[] } | null = whom && costBefore(told, at, whom);
    if (whom && cost) {
      told = [...told.slice(0, cost.from), ...cost.said, ...whom.said, ...told.slice(whom.to)];
      at = cost.from + cost.said.length + whom.said.length - 1;
    }
  }
  return told;
}

/** What money is spent on. */
export const isSupply = ({ kind, roles }: Tok): boolean => kind === "word" && roles.supply !== undefined;

const isBreak = ({ kind, text }: Tok): boolean =>
  kind === "mark" && text !== "&" && text !== "+" && text !== "#";

/** Where the clause ends that begins at a place; the place itself where it is longer than any that tells no more. */
function endOf(tokens: readonly Tok[], from: number): number {
  let at = from;
  while (at < tokens.length && at - from <= CLAUSE_MAX && !isBreak(tokens[at]!)) at += 1;
  return at - from > CLAUSE_MAX ? from : at;
}
const CLAUSE_MAX = 24;
/** So far back stands a cost at the most. */
const COST_MAX = 40;

/** Behind a mark, behind a number, or behind the supply itself. */
const opensHere = (tokens: readonly Tok[], at: number): boolean => {
  const before = tokens[at - 1]!;
  return isBreak(before) || before.kind === "amount" || isPiece(before) || isSupply(before);
};

interface Whom {
  /** What stands for it beside the cost. */
  said: Tok[];
  to: number;
  /** It puts right what was said first. */
  isPutRight: boolean;
  /** It says no word but the pieces. */
  isBare: boolean;
  /** It stands before what the thing came to. */
  isWithin: boolean;
}

/** What a clause tells of whom it was for; null where it tells anything else. */
function whomIn(tokens: readonly Tok[], from: number, end: number): Whom | null {
  if (isSupply(tokens[from - 1]!)) return shopWithin(tokens, from, end);
  const said = tokens.slice(from, end);
  const text = said.map(shown).join(" ");
  const isMarked = isBreak(tokens[from - 1]!);
  const made = (whom: Tok[], isPutRight = false, isBare = false): Whom => ({
    said: whom,
    to: tokens[from - 1]!.text === "(" && tokens[end]?.text === ")" ? end + 1 : end,
    isPutRight,
    isBare,
    isWithin: false,
  });
  const shop = FOR_SHOP.exec(text);
  if (shop) return made([ofShop(said)], shop[1] !== "");
  if (isMarked && (NOT_FOR.test(text) || KEPT_IN_STOCK.test(text))) return made([ofShop(said)]);
  if (NOT_BUT.test(text)) return made(forPieces(said, said.filter(isPiece).slice(-1)));
  if (isMarked && (NEEDED_BY.test(text) || IN_HALVES.test(text)))
    return made(forPieces(said, said.filter(isPiece)));
  const pieces = FOR_PIECES.exec(text);
  if (!pieces) return null;
  const [, opens, leads, to] = pieces;
  // "for the dresser" stands well as it is.
  const isInBrackets = tokens[from - 1]!.text === "(";
  if (!opens && !leads && (to || !isMarked) && !isInBrackets) return null;
  return made(forPieces(said, said.filter(isPiece)), opens !== "", !opens && !leads && !isInBrackets);
}

/** "wood glue for the workshop, 6.80" */
function shopWithin(tokens: readonly Tok[], from: number, end: number): Whom | null {
  let to = from;
  while (to < end && tokens[to]!.kind === "word") to += 1;
  const said = tokens.slice(from, to);
  if (said.length === 0 || !SHOP_WITHIN.test(said.map(shown).join(" "))) return null;
  return { said: [ofShop(said)], to, isPutRight: false, isBare: false, isWithin: true };
}

function shown(token: Tok): string {
  if (isPiece(token) && token.mention!.it !== true) return "§";
  if (token.kind === "word" || token.text === "&") return token.text;
  return "#";
}

const FILLER = rolesOf<never>({ filler: true });

const wordFor = (text: string, said: readonly Tok[]): Tok =>
  wordToken("word", text, said[0]!.from, said.at(-1)!.to, FILLER);

const ofShop = (said: readonly Tok[]): Tok => wordFor(OF_SHOP_TOKEN, said);

function forPieces(said: readonly Tok[], pieces: readonly Tok[]): Tok[] {
  return [
    wordToken("word", "for", said[0]!.from, said[0]!.to, FILLER),
    ...pieces.flatMap((piece, at) => (at === 0 ? [piece] : [wordFor("and", [piece]), piece])),
  ];
}

/** The cost before a place, without whom it was said to be for first; null where there is none, or it may be something else. */
function costBefore(tokens: readonly Tok[], at: number, whom: Whom): { from: number; said: Tok[] } | null {
  let to = at;
  while (to > 0 && isBreak(tokens[to - 1]!)) to -= 1;
  let from = to;
  const has = (is: (token: Tok) => boolean): boolean => tokens.slice(from, to).some(is);
  while (from > 0 && to - from < COST_MAX && !(has(isSupply) && has(isAmount))) from -= 1;
  while (from > 0 && to - from < COST_MAX && !isBreak(tokens[from - 1]!)) from -= 1;
  const cost = tokens.slice(from, to);
  if (whom.isWithin) return cost.some(isSupply) && cost.every(isOfCost) ? { from: at, said: [] } : null;
  if (!cost.some(isSupply) || !cost.some(isAmount) || !cost.every(isOfCost)) return null;
  const first = cost.filter((token) => isPiece(token) || token.text === OF_SHOP_TOKEN);
  const isForShop = first.every(({ kind }) => kind === "word");
  if (first.length === 0 || isForShop) {
    if (whom.isPutRight && first.length === 0) return null;
    if (whom.isBare && (whom.to < tokens.length || headsIn(cost))) return null;
    return { from, said: cost.filter(({ text }) => text !== OF_SHOP_TOKEN) };
  }
  const rest = whom.isPutRight ? withoutFirst(cost) : null;
  return rest && { from, said: rest };
}

const headsIn = (tokens: readonly Tok[]): boolean => tokens.some((token) => headsOf(token).length > 0);

/** It tells of a purchase, of the way to it, or of nothing done. */
export function isOfCost(token: Tok): boolean {
  const heads = isSupply(token) ? [] : headsOf(token);
  return heads.every(({ light }) => light) || heads.some(({ kind }) => OF_COSTS.has(kind));
}

const OF_COSTS: ReadonlySet<string> = new Set(["spend", "buy", "drive"]);

/** "primer 12 for the desk": without the piece that it was not for; null where it is not told that plainly. */
function withoutFirst(cost: readonly Tok[]): Tok[] | null {
  const [piece, ...others] = cost.filter(isPiece);
  if (!piece || others.length > 0) return null;
  const at = cost.indexOf(piece);
  const link = placeBefore(cost, at - 1, ARTICLES_WIDE);
  if (link < 0 || !SPENT_ON.has(cost[link]!.text)) return null;
  return [...cost.slice(0, link), ...cost.slice(at + 1)];
}
