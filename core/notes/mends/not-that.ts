import type { Day } from "../../calendar.ts";
import type { Tok } from "../clause.ts";
import { wholeOf } from "../quantities/amounts.ts";
import { HANDED_OVER, SELLING } from "../words/mending.ts";
import { isSkipped, type Mend, type Of, type Side, side, takeOf, takeTo } from "./mended.ts";

/* The old value beside the new one: "24 not 20", "not cash, card". What it was names the note. */

/** "24 not 20", "4 chairs not 3", "on the 2nd not the 4th": what it was names the note. */
export function notThat(all: readonly Tok[], today: Day): Mend | null {
  // "paint 12, not 14"
  const tokens = all.filter(({ text }, place) => text !== "," || all[place + 1]?.text !== "not");
  const at = tokens.findIndex(({ text }) => text === "not");
  if (at < 0) return null;
  if (tokens[at + 1]?.text === "today") return dayNotToday(tokens, at, today);
  if (tokens.slice(0, at).every(isSkipped)) return notThisBut(tokens.slice(at + 1), today);
  const behind = tokens.findIndex((token, place) => place > at && !isSkipped(token));
  const then = tokens[behind];
  const nowAt = nowBefore(tokens, at, then);
  const now = tokens[nowAt];
  if (behind < 0 || !now || !then) return null;
  let said = side();
  const rest = [...tokens.slice(0, nowAt), ...tokens.slice(nowAt + 1, at), ...tokens.slice(behind + 1)];
  if (!takeOf(rest, said, today)) {
    if (!isHanded(rest)) return null;
    said = side();
  }
  const isCount = said.of.pieces === undefined && now.kind === "piece" && said.of.amount === undefined;
  if (isCount) said.to.pieces = [now.mention!];
  const of = isCount ? countOf(now, then) : oldValue(now, then, said, today);
  const whole = of && { ...said.of, ...of };
  // "paid 45 for the desk not 40": what was paid for a piece bought it.
  if (whole?.kind === "spend" && whole.pieces && whole.what === undefined) whole.kind = "buy";
  return whole && { of: whole, to: said.to };
}

/** "teo gave 25 not 20": who gave it, and nothing that names a note. */
const isHanded = (rest: readonly Tok[]): boolean =>
  rest.some(({ text }) => HANDED_OVER.has(text)) &&
  rest.every(
    (token) => HANDED_OVER.has(token.text) || token.unknown || token.roles.person || isSkipped(token),
  );

/** "sold the desk monday, not today", "monday, not today": noted as of today, and of another day. */
function dayNotToday(tokens: readonly Tok[], at: number, today: Day): Mend | null {
  const [day, ...others] = tokens.filter(({ kind }) => kind === "day");
  const said = side();
  if (!day || others.length > 0 || tokens.indexOf(day) > at || !takeTo([day], said, today)) return null;
  const rest = tokens.filter((token, place) => token !== day && place !== at && place !== at + 1);
  // "the desk went yesterday": it was sold.
  const isSold = rest.some(({ text }) => SELLING.has(text));
  if (
    !takeOf(
      rest.filter(({ text }) => !SELLING.has(text)),
      said,
      today,
    )
  )
    return null;
  const of = { ...said.of, ...(isSold ? { kind: "sell" as const } : {}) };
  return { of: Object.keys(of).length === 0 ? { back: 1 } : { ...of, date: today }, to: said.to };
}

/** "not 35, 25", "not cash, card": the old one first. */
function notThisBut(rest: readonly Tok[], today: Day): Mend | null {
  const [then, now, ...others] = rest.filter((token) => !isSkipped(token) && token.text !== "but");
  const said = side();
  if (!then || !now || others.length > 0 || then.kind !== now.kind) return null;
  const of = oldValue(now, then, said, today);
  return of && { of: Object.keys(of).length === 0 ? { back: 1 } : of, to: said.to };
}

/** Where the new value stands: right before "not", or the one amount of "paid 45 for the desk not 40". */
function nowBefore(tokens: readonly Tok[], at: number, then: Tok | undefined): number {
  if (then?.kind !== "amount" || tokens[at - 1]?.kind === "amount") return at - 1;
  const amounts = tokens.flatMap(({ kind }, place) => (kind === "amount" && place < at ? [place] : []));
  return amounts.length === 1 && tokens[at - 1]?.kind === "piece" ? amounts[0]! : at - 1;
}

/** The old count of "4 chairs not 3", with the new one put in what becomes of it. */
function countOf(now: Tok, then: Tok): Of | null {
  const count = then.kind === "amount" ? wholeOf(then.amount!.exact) : then.mention?.count;
  const mention = now.mention!;
  if (count == null || mention.count === undefined || mention.count === count) return null;
  return { pieces: [{ ...mention, count }] };
}

const HOURS = /h/i;

function oldValue(now: Tok, then: Tok, said: Side, today: Day): Of | null {
  const old = side();
  if (now.roles.method !== undefined && then.roles.method !== undefined) {
    said.to.method = now.roles.method;
    // "sold desk 140 cash not card" is a sale, and says how it was paid.
    if (said.isTold && said.of.amount !== undefined) return null;
    return Object.keys(said.of).length === 0 ? { back: 1 } : {};
  }
  if (now.kind === "duration" || now.kind === "miles") {
    if (!takeTo([now], said, today)) return null;
    if (then.kind === now.kind) return takeOf([then], said, today) ? {} : null;
    // "3h not 2": hours again.
    const was = then.kind === "amount" && then.amount!.exact;
    if (!was) return null;
    const value = was.digits / 10 ** was.scale;
    if (now.kind === "miles") return { kind: "drive", miles: String(value) };
    return { kind: "work", minutes: Math.round(value * (HOURS.test(now.text) ? 60 : 1)) };
  }
  if (now.kind !== then.kind || (now.kind !== "amount" && now.kind !== "day")) return null;
  if (!takeTo([now], said, today) || !takeOf([then], old, today)) return null;
  return said.isFee ? {} : old.of;
}
