import type { Clause, Tok } from "../clause.ts";
import { asMeant, claim, says, textOf } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { AND, ARTICLES_WIDE } from "../words/links.ts";
import { NOBODY_NAMED, WITH } from "../words/names.ts";
import { HOUSEHOLD } from "../words/people.ts";
import { PUT_DOWN } from "../words/verbs.ts";

/** A number in a hold is a deposit only where "deposit", "down" or until when is said: it could be the price. */
export function judgeHold(fields: ReadingFields["hold"], clause: Clause): Trouble | null {
  nameBesideAgreed(fields, clause);
  if (
    fields.deposit !== undefined &&
    fields.agreed === undefined &&
    (fields.until === undefined || isAtSum(clause)) &&
    !says(
      clause,
      /(?:^|\b)(?:deposits?|deposited|depost|down|money down|to (?:hold|reserve|secure|lock|claim|guarantee|save)|non ?refundable|earnest money|(?:first|part|partial) payment|half now|up front on|up front for|towards?)(?:\b|$)/,
    ) &&
    (!isPutDown(clause) || PUT_DOWN.has(clause.head?.text ?? ""))
  ) {
    // "nell left 50 on the dresser": the books tell whether that was all of it.
    if (fields.buyer === undefined) nameFirst(fields, clause);
    return { kind: "deposit" };
  }
  if (isCut(clause)) return { kind: "cutOrPrice" };
  if (fields.deposit !== undefined && isOfPiece(clause)) return { kind: "twoNumbers" };
  if (says(clause, /^(?:returned|refunded|gave back|kept)$/) || isGivenBack(clause))
    return { kind: "unknown" };
  const isAgreed = fields.buyer !== undefined && clause.tokens.some(({ roles }) => roles.agreed === true);
  if (fields.deposit !== undefined && isOwnDeposit(clause) && !isAgreed && !isTheirs(fields, clause))
    return { kind: "anotherPerson" };
  // "set aside for sanding", "up front for painting a desk"
  // "put 400 down on a car": a thing of our own.
  if (!fields.pieces && fields.buyer === undefined && clause.tokens.some(isOnOther))
    return { kind: "anotherPerson" };
  const isForWork = ({ text, roles }: Tok): boolean =>
    text === fields.buyer && (roles.labor || roles.supply) !== undefined;
  if (clause.tokens.some(isForWork)) return { kind: "doubt" };
  const isForSomebody =
    fields.buyer !== undefined || fields.until !== undefined || fields.deposit !== undefined;
  // "setting the bench aside for now": for whom? "hold on": of nothing at all.
  if (!isForSomebody && (!fields.pieces || says(clause, /^aside$/))) return { kind: "doubt" };
  // "hold desk friday": since friday, or until?
  const weekday = clause.tokens.some((token) => token.kind === "day" && token.said?.form === "weekday");
  if (weekday && fields.until === undefined && /^hold(?:ing)?\b/.test(clause.head?.text ?? ""))
    return { kind: "vagueTime" };
  // "mirror for Ana": who is meant is no fact of money, but who put money down may be said first.
  if (fields.buyer !== undefined && /^(?:him|her|them)$/.test(fields.buyer)) delete fields.buyer;
  if (fields.buyer === undefined) nameFirst(fields, clause);
  return null;
}

/** "tom agreed on 110", "agreed on 110 for the desk with the lady down the street": who agreed to it. */
function nameBesideAgreed(fields: ReadingFields["hold"], clause: Clause): void {
  const { tokens } = clause;
  const at = tokens.findIndex(({ roles }) => roles.agreed === true);
  if (at < 0) return;
  const before = tokens.slice(0, at);
  const withWhom = tokens.findIndex(({ text }, place) => place > at && WITH.has(text)) + 1;
  const end = tokens.findIndex(
    ({ kind, text }, place) => place > withWhom && (kind !== "word" || AND.has(text)),
  );
  const behind = withWhom > 0 ? tokens.slice(withWhom, end < 0 ? tokens.length : end) : [];
  for (const said of [before, behind]) {
    const who = said.slice(said.findIndex(({ text, roles }) => !ARTICLES_WIDE.has(text) && !roles.filler));
    // "the woman from church and i agreed": whence she is names nobody.
    const isNamed = fields.buyer !== undefined && !textOf(who).endsWith(` ${fields.buyer}`);
    if (isNamed || who.length > WHO_MAX || !who.every((token) => isOfWho(token, fields.buyer !== undefined)))
      continue;
    if (!isWho(who[0])) continue;
    claim(...who);
    if (!NOBODY_NAMED.has(who[0]!.text)) fields.buyer = asMeant(clause, who);
    return;
  }
}

const WHO_MAX = 5;
const isOfWho = ({ kind, claimed, roles }: Tok, isNamed = false): boolean =>
  kind === "word" && (isNamed || !claimed) && !roles.hedge;
const isWho = (token: Tok | undefined): boolean =>
  token !== undefined &&
  (token.unknown === true || token.roles.person === true) &&
  !HOUSEHOLD.has(token.text);

/** "hold desk at 150 till friday": what was put down, or what it goes for. */
export const isAtSum = ({ tokens }: Clause): boolean =>
  tokens.some(({ kind }, at) => kind === "amount" && tokens[at - 1]?.text === "at");

/** "desk down 20": what it is down by, or to; "desk 20 down" is money that was put down. */
const isCut = ({ tokens, head }: Clause): boolean =>
  head?.text === "down" && tokens[tokens.indexOf(head) - 1]?.kind !== "amount";

/** "gave him the deposit back"; but "he is coming back saturday" is when it will be fetched. */
const isGivenBack = ({ tokens }: Clause): boolean =>
  tokens.some(({ text }, at) => text === "back" && !/^com(?:es?|ing)$/.test(tokens[at - 1]?.text ?? ""));

/** "chest is on hold, marge left 25": money that somebody left for it. */
const isPutDown = ({ tokens }: Clause): boolean =>
  tokens.some(
    ({ kind }, at) =>
      kind === "amount" &&
      /^(?:left|put|gave|sent|wired|transferred|left me|gave me|sent me|wired me|dropped off)$/.test(
        tokens[at - 1]?.text ?? "",
      ),
  ) ||
  isReceived(tokens) ||
  isFirstPart(tokens);

/** "…, 30 received", "…, 25 in hand", "…, got 20 from him" */
const isReceived = (tokens: readonly Tok[]): boolean =>
  tokens.some(({ kind }, at) => {
    const [before, next, last] = [tokens[at - 1], tokens[at + 1], tokens[at + 2]];
    const isIn = /^(?:received|recd|collected|in hand)$/.test(next?.text ?? "");
    const isInHand = next?.text === "in" && last?.text === "hand";
    const isFrom = next?.text === "from" && /^(?:got|took|received|have)$/.test(before?.text ?? "");
    return kind === "amount" && (isIn || isInHand || isFrom);
  });

/** "on layaway, 30 today and 30 a week" */
const isFirstPart = (tokens: readonly Tok[]): boolean =>
  tokens.some(({ text }) => /layaway/.test(text)) &&
  tokens.some(
    ({ kind }, at) => kind === "amount" && /^(?:today|now|first|to start)$/.test(tokens[at + 1]?.text ?? ""),
  );

/** "deposit on the 150 couch": what the couch is to cost. */
function isOfPiece({ tokens }: Clause): boolean {
  return tokens.some(
    ({ kind }, at) =>
      kind === "amount" &&
      tokens[at + 1]?.kind === "piece" &&
      /^(?:the|that|this|my)$/.test(tokens[at - 1]?.text ?? ""),
  );
}

const isBuyer = ({ text, roles }: Tok): boolean =>
  roles.actor === "buyer" && !text.split(" ").some((word) => HOUSEHOLD.has(word));

/** "bench reserved for dana at 85, paid 20 deposit": for whom it is held agreed on a price, and paid. */
const isTheirs = ({ buyer, agreed }: ReadingFields["hold"], { head }: Clause): boolean =>
  buyer !== undefined &&
  agreed !== undefined &&
  /^(?:on hold|hold|held|reserved|spoken)\b/.test(head?.text ?? "");

/** "paid 25 deposit on a hutch at the estate sale": the owner's own money, on a piece not bought yet. */
function isOwnDeposit(clause: Clause): boolean {
  if (clause.signs.has("person") || clause.tokens.some(isBuyer)) return false;
  const isShop = clause.tokens.some((token) => token.roles.place !== undefined && !token.roles.person);
  return isShop || clause.tokens.some((token) => token.text === "paid" || token.text === "i");
}

/** "down on a car", "a deposit on our apartment": no piece and nobody who is known. */
const isOnOther = ({ text }: Tok, at: number, tokens: readonly Tok[]): boolean => {
  const next = tokens[at + 1];
  return (
    ARTICLES_WIDE.has(text) &&
    /(?:^| )(?:on|for)$/.test(tokens[at - 1]?.text ?? "") &&
    next?.kind === "word" &&
    (next.roles.plain === true || next.unknown === true) &&
    !next.roles.person &&
    !next.roles.filler
  );
};

/** Verbs of somebody who wants a piece held. */
const WANTS =
  /^(?:holds|holding|reserves|reserved|has|wants|wanted|loves|loved|likes|liked|asked|put|left|gave|sent|paid|dropped|texted|called|picking up|picks up|transferred|wired|mailed|handed|brought|will|coming|comes|is|said|needs|gets|getting)(?: |$)/;

/** "50 down on vanity, marie, till tues": a word by itself between two marks. */
const isApart = ({ tokens }: Clause, at: number): boolean => {
  const [before, next] = [tokens[at - 1], tokens[at + 1]];
  return at > 0 && /^[,.;:-]$/.test(before?.text ?? "") && (next === undefined || next.text === ",");
};

/** "lady put 40 down on the hutch": whoever stands before the verb. */
function nameFirst(fields: ReadingFields["hold"], clause: Clause): void {
  const end = clause.head ? clause.tokens.indexOf(clause.head) : 0;
  const first = clause.tokens
    .slice(0, end)
    .find((token) => token.kind === "word" && token.roles.person && !NOBODY_NAMED.has(token.text));
  if (first && /^(?:put|left|put down)$/.test(clause.head?.text ?? "")) {
    const who = clause.tokens.slice(clause.tokens.indexOf(first), end);
    fields.buyer =
      who.length <= WHO_MAX && who.every((token) => isOfWho(token)) ? asMeant(clause, who) : first.text;
  }
  if (fields.buyer !== undefined) return;
  const name = clause.tokens.find(
    (token, at) =>
      (token.unknown === true || (token.roles.person && !NOBODY_NAMED.has(token.text))) &&
      !token.claimed &&
      token.kind === "word" &&
      (WANTS.test(clause.tokens[at + 1]?.text ?? "") || (token.unknown === true && isApart(clause, at))),
  );
  if (!name) return;
  claim(name);
  fields.buyer = name.text;
}
