import type { Cents } from "../../money.ts";
import { lexed } from "../../notes/lexed.ts";
import { centsIn } from "../../notes/slots/money.ts";

/** The sums of money in a text, in cents and in order; numbers that can be none are left out. */
export const sumsSaid = (text: string): Cents[] =>
  lexed(text).flatMap((token) => (token.kind === "amount" ? (centsIn(token) ?? []) : []));
