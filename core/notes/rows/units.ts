import type { Tok } from "../clause.ts";
import { NO_ROLES } from "../tokens/token.ts";
import { addBits, type Bits, meet, noBits } from "./bits.ts";
import { bitsOfToken } from "./classes.ts";
import type { Standing } from "./standing.ts";
import { makeNextTable, NO_WORD, type Unit, wordInRows } from "./words.ts";

/** The words of a line's tokens, made once for all the rows of a table. */
export interface Units {
  tokens: readonly Tok[];
  units: readonly Unit[];
  /** The place of each unit's token. */
  places: readonly number[];
  /** The classes that any of its tokens is in. */
  bits: Bits;
  /** The bits of its words, and the second bits. */
  sieve: number;
  second: number;
  /** The rows that may stand in it, once a table has asked. */
  standing: Standing | undefined;
}

function unitsOfToken(token: Tok): readonly Unit[] {
  const { kind, text } = token;
  const bits = bitsOfToken(token);
  if (kind === "piece") return [{ word: NO_WORD, bits, span: 1 }];
  if (kind !== "word" || !text.includes(" ")) return [{ word: wordInRows(text), bits, span: 1 }];
  return text
    .split(" ")
    .map((word, place, { length }) => ({ word: wordInRows(word), bits, span: place === 0 ? length : 0 }));
}

/** A phrase of the lexicon is looked at once, whatever stands around it, and any other token each time. */
function seen(token: Tok): readonly Unit[] {
  if (token.kind !== "word") return unitsOfToken(token);
  const { own } = token.roles;
  if (own && !token.unknown) {
    own.units ??= unitsOfToken(token);
    return own.units;
  }
  return token.unknown && token.roles === NO_ROLES ? unitsOfUnknown(token) : unitsOfToken(token);
}

/** A word that nobody listed is the same to every row each time; people use few of them, again and again. */
function unitsOfUnknown(token: Tok): readonly Unit[] {
  const known = UNKNOWN.get(token.text);
  if (known) return known;
  const units = unitsOfToken(token);
  if (UNKNOWN.size === UNKNOWN_MAX) UNKNOWN.clear();
  UNKNOWN.set(token.text, units);
  return units;
}

const UNKNOWN = new Map<string, readonly Unit[]>();
const UNKNOWN_MAX = 1000;

export function unitsOf(tokens: readonly Tok[]): Units {
  while (makeNextTable());
  const bits = noBits();
  const units: Unit[] = [];
  const places: number[] = [];
  const line: Units = { tokens, units, places, bits, sieve: 0, second: 0, standing: undefined };
  for (let at = 0; at < tokens.length; at += 1) {
    const own = seen(tokens[at]!);
    addBits(bits, own[0]!.bits);
    for (let place = 0; place < own.length; place += 1) {
      const unit = own[place]!;
      line.sieve |= unit.word.sieve;
      line.second |= unit.word.second;
      units.push(unit);
      places.push(at);
    }
  }
  return line;
}

/** Whether two tokens of a line are in any of some classes. */
export function hasTwo(bits: Bits, { units }: Units): boolean {
  let found = 0;
  for (let at = 0; at < units.length; at += 1)
    if (units[at]!.span > 0 && meet(units[at]!.bits, bits)) found += 1;
  return found > 1;
}
