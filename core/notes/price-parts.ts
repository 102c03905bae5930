import { percentOf } from "../money.ts";
import { type Clause, claim, placeAfter, placeBefore, type Tok } from "./clause.ts";
import type { Draft } from "./draft.ts";
import { centsOfToken } from "./slots/money.ts";
import { FEE_JOINTS } from "./words/links.ts";
import { PAID_NOW } from "./words/money.ts";
import { NOBODY_NAMED } from "./words/names.ts";

/*
 * Parts of a price, said beside it: what is still owed of it, and a fee that is a share of it.
 */

const OWER = /^([a-z]+) (?:still )?owes?\b/;

/** "ann owes 40", "40 owed by ann": who bought it. */
export function fillOwer(made: Draft, { tokens }: Clause): void {
  const at = tokens.findIndex(({ roles }) => roles.owed === true);
  if (at < 0 || made.fields["buyer"] !== undefined) return;
  // The name may stand in the words of what is owed themselves.
  const [, own] = OWER.exec(tokens[at]!.text) ?? [];
  if (own && own !== "still" && !NOBODY_NAMED.has(own)) {
    made.fields["buyer"] = own;
    return;
  }
  const [before, ahead] = [tokens[at - 1], tokens[at - 2]];
  const [by, behind] = [tokens[at + 1], tokens[at + 2]];
  const isFirst = ahead !== undefined && (ahead.kind !== "word" || ahead.roles.filler === true);
  const name =
    before?.unknown && isFirst ? before : by?.text === "by" && behind?.unknown ? behind : undefined;
  if (!name) return;
  claim(name);
  if (name === behind) claim(by!);
  made.fields["buyer"] = name.text;
}

function owedBy(token: Tok, price: number | undefined): number | undefined {
  const found = token.amount ? centsOfToken(token) : null;
  if (found) return "cents" in found ? found.cents : undefined;
  return price === undefined ? undefined : percentOf(token.percent ?? "100", price);
}

/** "50 still owed", "she owes me all of it": what a sale has still to bring. */
export function fillOwed(made: Draft, clause: Clause): void {
  const token = clause.tokens.find(({ roles }) => roles.owed === true);
  const price = made.fields["price"] as number | undefined;
  const owed = token && owedBy(token, price);
  if (token) claim(token);
  if (owed !== undefined) made.fields["owed"] = owed;
  const paid = clause.tokens.find(({ roles }) => roles.hedge === "part paid");
  const part = paid?.amount && centsOfToken(paid);
  if (part && "cents" in part && price !== undefined && part.cents + (owed ?? 0) === price) claim(paid!);
}

/** "sold desk 100 now 40 later": the price is the sum of both, or the first. */
export function isPaidInParts(made: Draft, { tokens }: Clause): boolean {
  if (made.fields["price"] === undefined || !made.fields["owed"]) return false;
  return tokens.some(({ kind }, at) => {
    const [next, ahead] = [tokens[at + 1], tokens[at + 2]];
    if (kind !== "amount" || !next) return false;
    return PAID_NOW.has(next.text) || (next.roles.method !== undefined && ahead?.roles.owed === true);
  });
}

const FEE = /(?:^|\s)fees?$|^(?:commission|cut)$/;

/** "10% fee", "fee of 10%": a share of the price; whether there is one. */
export function fillFeeShare(made: Draft, { tokens }: Clause): boolean {
  const price = made.fields["price"] as number | undefined;
  const at = tokens.findIndex(({ kind, claimed }) => kind === "percent" && !claimed);
  if (price === undefined || at < 0 || made.fields["fee"] !== undefined) return false;
  const behind = placeAfter(tokens, at + 1, FEE_JOINTS);
  const before = placeBefore(tokens, at - 1, FEE_JOINTS);
  const word = [tokens[behind], tokens[before]].find((token) => FEE.test(token?.text ?? ""));
  if (!word) return false;
  claim(tokens[at]!, word);
  for (const token of tokens) if (/^(?:minus|less|after)$/.test(token.text)) claim(token);
  made.fields["fee"] = percentOf(tokens[at]!.percent!, price);
  return true;
}
