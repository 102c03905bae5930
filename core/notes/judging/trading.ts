import type { Clause, Tok } from "../clause.ts";
import { claim } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { Mention, ReadingFields } from "../reading.ts";
import { centsOfToken } from "../slots/money.ts";

/** Words between what is given and what is got. */
const PARTING = new Set(["for", "to get", "into", "and got", "got", "in for", "toward", "towards"]);
/** Words beside cash that came to us, and beside cash that we gave. */
const RECEIVED = new Set([
  "got",
  "received",
  "back",
  "threw in",
  "gave me",
  "plus",
  "and",
  "+",
  "&",
  "kicked in",
  "added",
]);
const PAID = new Set([
  "paid",
  "gave",
  "plus",
  "and",
  "with",
  "+",
  "&",
  "threw in",
  "added",
  "i paid",
  "kicked in",
]);
const ON_TOP = new Set([
  "cash",
  "on top",
  "extra",
  "difference",
  "the difference",
  "boot",
  "more",
  "to boot",
  "bucks",
]);

/** What stands before the parting word was given, what stands behind it was got; cash goes with its side. */
export function judgeTrade(fields: ReadingFields["trade"], clause: Clause): Trouble | null {
  const { tokens } = clause;
  const places = tokens.flatMap(({ kind }, at) => (kind === "piece" ? [at] : []));
  const parting = partingOf(tokens, places);
  if (parting < 0) return { kind: "twoNouns" };
  const sides: { gave: Mention[]; got: Mention[] } = { gave: [], got: [] };
  for (const at of places) sides[at < parting ? "gave" : "got"].push(tokens[at]!.mention!);
  if (sides.gave.length === 0 || sides.got.length === 0) return { kind: "twoNouns" };
  claim(...places.map((at) => tokens[at]!), tokens[parting]!);
  Object.assign(fields, sides);
  return cashOf(fields, clause, parting);
}

/** The first parting word between two pieces. */
function partingOf(tokens: readonly Tok[], places: readonly number[]): number {
  const [first = -1] = places;
  const last = places.at(-1) ?? -1;
  return tokens.findIndex(({ text }, at) => at > first && at < last && PARTING.has(text));
}

function cashOf(fields: ReadingFields["trade"], { tokens }: Clause, parting: number): Trouble | null {
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.kind !== "amount" || token.claimed) continue;
    const found = centsOfToken(token);
    if ("trouble" in found) return found.trouble;
    claim(token);
    claimAround(tokens, at);
    if (tokens[at - 1]?.text === "worth" || tokens[at - 1]?.text === "value") {
      claim(tokens[at - 1]!);
      fields.worth = found.cents;
      continue;
    }
    const side = sideOf(tokens, at, parting);
    if (side === null || fields.paid !== undefined || fields.received !== undefined)
      return { kind: "twoNumbers" };
    fields[side] = found.cents;
  }
  return null;
}

/** "plus 20" before the parting word is paid; behind it, what came with what was got. */
function sideOf(tokens: readonly Tok[], at: number, parting: number): "paid" | "received" | null {
  const before = tokens.slice(Math.max(0, at - 4), at).reverse();
  const said = before.find(({ text }) => RECEIVED.has(text) || PAID.has(text))?.text;
  const owner = before.find(({ text }) => /^(?:they|he|she|i|we|me)$/.test(text))?.text;
  if (owner !== undefined && said !== undefined && said !== "and")
    return /^(?:i|we)$/.test(owner) ? "paid" : "received";
  if (said === "got" || said === "received" || said === "back" || said === "gave me") return "received";
  if (said === "paid" || said === "gave" || said === "i paid") return "paid";
  if (said === undefined && tokens[at + 1]?.text !== "cash" && !ON_TOP.has(tokens[at + 1]?.text ?? ""))
    return null;
  return at < parting ? "paid" : "received";
}

function claimAround(tokens: readonly Tok[], at: number): void {
  for (const place of [at - 3, at - 2, at - 1, at + 1, at + 2]) {
    const token = tokens[place];
    const isWord = token?.kind === "word" || token?.kind === "mark";
    if (token && isWord && (RECEIVED.has(token.text) || PAID.has(token.text) || ON_TOP.has(token.text)))
      claim(token);
  }
}
