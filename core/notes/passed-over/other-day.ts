import { MEASURES, type Tok } from "../clause.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { AGAIN, BESIDE_AGAIN } from "../words/again.ts";
import { AND } from "../words/links.ts";
import { SAYS_TODAY } from "../words/replies.ts";

/*
 * Days that are told by another one. "an hour on the bench wednesday and another one today", "gas 12 monday, same again today": what was told of one day was
 * done again on another. It is told with the words of the first, before any word of it is passed over.
 */

/** A line's tokens, with what was done again told in full; the same ones where nothing was. */
export function toldOfOtherDay(tokens: Tok[]): Tok[] {
  const last = tokens.findLastIndex(({ kind }) => kind !== "mark");
  if (last < 0 || !isDay(tokens[last]!)) return tokens;
  const joint = tokens.findLastIndex((token, at) => at < last && isJoint(token));
  if (joint < 1) return tokens;
  const first = tokens.findLastIndex((token, at) => at < joint && token.kind === "mark") + 1;
  const before = tokens.slice(first, joint);
  const again = tokens.slice(joint + 1, last);
  const numbers = again.filter(isNumber);
  const [old, ...others] = before.filter(isNumber);
  const isSaid = again.every(
    (token) => isNumber(token) || AGAIN.has(token.text) || BESIDE_AGAIN.has(token.text),
  );
  const isAgain = again.some(({ text }) => AGAIN.has(text)) || (old?.kind !== "amount" && numbers.length > 0);
  if (!old || others.length > 0 || !before.some(isDay) || !isSaid || !isAgain || numbers.length > 1)
    return tokens;
  const number = numbers[0] ? inUnitOf(old, numbers[0]) : old;
  if (!number) return tokens;
  const { from, to } = tokens[joint + 1]!;
  const told = before.flatMap((token) =>
    isDay(token) || (token.roles.heads && old.kind === "miles")
      ? []
      : [{ ...(token === old ? number : token), from, to }],
  );
  return [...tokens.slice(0, joint + 1), ...told, ...tokens.slice(last)];
}

/** "can't come till thursday so I'm holding it until then": the one day told before. */
export function withDayThen(tokens: Tok[]): Tok[] {
  const then = tokens.findIndex(
    ({ text }, at) => text === "then" && at > 1 && (tokens[at - 1]!.hints & HINTS.until) !== 0,
  );
  const [day, ...others] = then < 0 ? [] : tokens.slice(0, then).filter(({ kind }) => kind === "day");
  if (!day || others.length > 0) return tokens;
  const { from, to } = tokens[then]!;
  return tokens.map((token, at) => (at === then ? { ...day, from, to } : token));
}

const isJoint = ({ kind, text }: Tok): boolean => (kind === "mark" && text !== "-") || AND.has(text);

const isDay = ({ kind, text }: Tok): boolean => kind === "day" || SAYS_TODAY.has(text);

const isNumber = ({ kind }: Tok): boolean => MEASURES.has(kind);

/** The number said again, in the unit of the first: the 3 of "2h on the desk yesterday and 3 today"; null where it has another. */
export function inUnitOf(old: Tok, said: Tok): Tok | null {
  if (said.kind === old.kind) return said;
  const whole = said.kind === "amount" && !said.amount!.money ? wholeOf(said.amount!.exact) : null;
  if (whole === null || said.each) return null;
  if (old.kind === "miles") return { ...old, text: `${whole} miles`, miles: String(whole) };
  const isHours = /\d ?h|hour|hr/i.test(old.text);
  return { ...old, text: `${whole} ${isHours ? "h" : "min"}`, minutes: isHours ? whole * 60 : whole };
}
