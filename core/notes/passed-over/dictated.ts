import { type Tok, textOf } from "../clause.ts";
import { BEFORE_ORDER, NOTE_DOWN, OPENS_ORDER, ORDERS, TELLS_ITSELF } from "../words/dictated.ts";

/** No order to note something has more tokens. */
const ORDER_MAX = 9;

/** "go ahead and put down that i sold the desk": what is to be noted, without the order to note it. */
export function withoutOrder(tokens: Tok[]): Tok[] {
  let from = 0;
  while (from < tokens.length && BEFORE_ORDER.has(tokens[from]!.text)) from += 1;
  if (!OPENS_ORDER.has(firstOf(tokens[from]))) return tokens;
  for (let end = Math.min(from + ORDER_MAX, tokens.length - 1); end > from; end -= 1) {
    const order = textOf(tokens.slice(from, end));
    if (NOTE_DOWN.test(order) && isTold(order, tokens[end]!)) return tokens.slice(end);
  }
  const asked = POLITE.test(textOf(tokens.slice(from, from + 1))) ? from + 1 : from + 2;
  const isPolite = POLITE.test(textOf(tokens.slice(from, asked))) && ORDERS.has(tokens[asked]?.text ?? "");
  return isPolite ? tokens.slice(asked + 1) : tokens;
}

const POLITE = /^(?:can|could|would|will) (?:you|u)$/;

const firstOf = (token: Tok | undefined): string => {
  const text = token?.text ?? "";
  const blank = text.indexOf(" ");
  return blank < 0 ? text : text.slice(0, blank);
};

/** Behind the order stands what is to be noted: who did it, how much of it, or a piece. */
function isTold(order: string, { kind, text, roles }: Tok): boolean {
  if (order.endsWith(" that") || TELLS_ITSELF.has(text)) return kind !== "mark";
  if (kind === "miles" || kind === "duration" || order.startsWith("go ahead")) return true;
  if (roles.supply !== undefined && order !== "add") return true;
  // "put down 40 on the desk" may be what somebody left, "add 5 to that" changes what was told.
  return kind === "amount" && order.includes(" ") && !order.includes("down");
}
