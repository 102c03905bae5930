import { type Day, daysBetween } from "../../calendar.ts";
import { percentOf } from "../../money.ts";
import { type Clause, claim, placeAfter, placeBefore, type Tok } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { centsOfExact, exactOf } from "../quantities/amounts.ts";
import { comingDay, pastDay } from "../quantities/days.ts";
import type { Mention } from "../reading.ts";
import { centsIn, centsOfToken, pieceCount } from "../slots/money.ts";
import { FEE_JOINTS } from "../words/links.ts";
import { PAID_NOW } from "../words/money.ts";
import { NOBODY_NAMED } from "../words/names.ts";
import type { Draft } from "./draft.ts";

/*
 * Parts of a price, said beside it: what is still owed of it, and a fee that is a share of it. Of what is held, its whole price.
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
  // "teo paid 100 and owes 50"
  const payer = tokens.find(({ unknown, kind }, place) => {
    const next = tokens[place + 1];
    return unknown && kind === "word" && next?.kind === "grain" && /^(?:paid|gave|put|had)\b/.test(next.text);
  });
  if (payer) {
    claim(payer);
    made.fields["buyer"] = payer.text;
    return;
  }
  const [before, ahead] = [tokens[at - 1], tokens[at - 2]];
  const [by, behind] = [tokens[at + 1], tokens[at + 2]];
  const isFirst = ahead !== undefined && (ahead.kind !== "word" || ahead.roles.filler === true);
  const name =
    before?.unknown && isFirst ? before : by?.text === "by" && behind?.unknown ? behind : undefined;
  if (!name || NOBODY_NAMED.has(name.text)) return;
  claim(name);
  if (name === behind) claim(by!);
  made.fields["buyer"] = name.text;
}

function owedBy(token: Tok, price: number | undefined): number | undefined {
  const found = token.amount ? centsOfToken(token) : null;
  if (found && "cents" in found && token.roles.rest)
    return price !== undefined && price > found.cents ? price - found.cents : undefined;
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
  const sold = token && daySoldBehind(token, clause.today);
  if (sold) made.fields["date"] ??= sold;
  // "gave me 100, still owes me 60": of both of them.
  const given = price === undefined && owed !== undefined ? clause.tokens.find(isGiven) : undefined;
  const part = given && sumIn(given);
  if (part) made.fields["price"] = part + owed!;
  const paid = clause.tokens.find(({ roles }) => roles.hedge === "part paid");
  const cents = paid?.amount && centsIn(paid);
  if (cents != null && price !== undefined && cents + (owed ?? 0) === price) claim(paid!);
}

/** "40 still owed on sep 5", where that has been: the day of the sale, and not when it is due. */
function daySoldBehind({ said, text }: Tok, today: Day): Day | null {
  const isDated = said?.form === "monthDay" || said?.form === "full" || said?.form === "ago";
  if (!isDated || /\b(?:till|until|til|by|due|next)\b/.test(text)) return null;
  const past = pastDay(said, today);
  const coming = comingDay(said, today);
  if (!("day" in past)) return null;
  return coming && daysBetween(today, coming) <= daysBetween(past.day, today) ? null : past.day;
}

const isGiven = ({ kind, text }: Tok): boolean =>
  kind === "grain" && /^(?:gave|give|paid|handed|got|put|had)\b/.test(text);

/** The one sum within words that a row has set aside, in cents. */
function sumIn({ text }: Tok): number | null {
  const exact = exactOf(/\d[\d,.]*$/.exec(text)?.[0] ?? "");
  const found = exact && centsOfExact(exact);
  return found && "cents" in found ? found.cents : null;
}

/** "sold desk 100 now 40 later": the price is the sum of both, or the first; "sum" where what is owed is called the rest. */
export function paidInParts(made: Draft, { tokens }: Clause): "either" | "sum" | null {
  const owed = tokens.find(({ roles }) => roles.owed === true);
  if (made.fields["price"] === undefined || !made.fields["owed"] || !owed) return null;
  for (const [at, token] of tokens.entries()) {
    if (token.kind !== "amount") continue;
    // "200 of the 260 in hand, 60 to come"
    const of = tokens[at + 1];
    const whole = of?.kind === "grain" && of.text.startsWith("of ") ? sumIn(of) : null;
    if (whole !== null && whole === (made.fields["price"] as number) + (made.fields["owed"] as number))
      return "sum";
    const behind = at + (tokens[at + 1]?.roles.method === undefined ? 1 : 2);
    const [before, next, ahead] = [tokens[at - 1], tokens[behind], tokens[behind + 1]];
    const isApart =
      before?.kind === "mark" || /\b(?:paid|gave|got|put|had)(?: me)?$/.test(before?.text ?? "");
    const isNow = next !== undefined && (PAID_NOW.has(next.text) || (isApart && next.text === "today"));
    if (isApart && (isNow || behind > at + 1) && OF_THE_REST.test(owed.text)) return "sum";
    if (isNow || (behind > at + 1 && (next ?? ahead)?.roles.owed === true)) return "either";
  }
  return null;
}

const OF_THE_REST = /\b(?:rest|remaining|remainder|balance|other|last)\b/;

/** "40 down, agreed on 150", "40 down, 110 at pickup": the whole price of what is held; what is wrong with it. */
export function fillAgreed(made: Draft, { tokens, today }: Clause): Trouble | null {
  const told = tokens.filter(({ roles }) => roles.agreed === true);
  const rest = tokens.filter(({ roles }) => roles.owed === true);
  const deposit = made.fields["deposit"] as number | undefined;
  claim(...told, ...rest);
  const prices = told.flatMap((token) => wholePrice(token, made) ?? []);
  if (rest.length > 0 && deposit === undefined) return { kind: "twoNumbers" };
  for (const token of rest) {
    const owed = owedBy(token, undefined);
    if (owed === undefined || couldCount(token)) return { kind: "twoNumbers" };
    prices.push(owed + deposit!);
  }
  const [agreed, ...others] = new Set(prices);
  if (agreed === undefined || others.length > 0 || agreed < (deposit ?? 0)) return { kind: "twoNumbers" };
  made.fields["agreed"] = agreed;
  // "he pays the other 110 friday": it is held so long.
  const said = rest.find(({ said: day }) => day)?.said;
  if (said && made.fields["until"] === undefined) made.fields["until"] = comingDay(said, today) ?? undefined;
  return null;
}

/** "3 left", "2 to go" may be others of the kind. */
export const couldCount = (token: Tok): boolean =>
  !token.amount?.money && (centsIn(token) ?? COUNT_MAX) <= COUNT_MAX;

const COUNT_MAX = 12_00;

/** The price of all the pieces, where it was said of each. */
function wholePrice(token: Tok, made: Draft): number | null {
  const cents = centsIn(token);
  const count = token.each ? pieceCount((made.fields["pieces"] as Mention[] | undefined) ?? []) : 1;
  return cents === null || count === null ? null : cents * count;
}

const FEE =
  /(?:^|\s)fees?$|^(?:commission|cut|shop|site|website|app|booth|mall|store|platform|consignment|consigner|auction|card)$/;

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
  // "for the booth" is nobody who bought it.
  if (made.fields["buyer"] === word.text) delete made.fields["buyer"];
  for (const token of tokens) if (/^(?:minus|less|after)$/.test(token.text)) claim(token);
  made.fields["fee"] = percentOf(tokens[at]!.percent!, price);
  return true;
}
