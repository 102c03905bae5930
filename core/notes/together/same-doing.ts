import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { Draft } from "../interpreting/draft.ts";
import { draft as madeDraft, unclearDraft } from "../interpreting/draft.ts";
import { centsIn } from "../slots/money.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { NOT_DONE } from "../unclear.ts";
import { language } from "../verbs.ts";
import { US } from "../words/chatter.ts";
import { ARTICLES } from "../words/filler.ts";
import { AND } from "../words/links.ts";
import { FOR_IT } from "../words/mending.ts";
import { HOUSEHOLD } from "../words/people.ts";

/*
 * Clauses that share one verb share who did it and whether it has happened: "mom sold the rocker 40 and the rack 15",
 * "tomorrow I will list the bench 75 and the lamp 20", "sold the desk 140 and the lamp 20, pending pickup".
 */

/** What is said before the verb holds for all that follows it. */
const AHEAD: ReadonlySet<Trouble["kind"]> = new Set([...NOT_DONE, "future" as const]);

/** What is said behind the last of several holds for those before it. */
const BEHIND: ReadonlySet<Trouble["kind"]> = new Set(["pending", "unpaid"]);

/** The clauses, each with what the verb that it shares says of it. */
export function withSameDoing(drafts: readonly Draft[]): readonly Draft[] {
  const isCostBeside = drafts.some(
    ({ kind }, at) => at > 0 && kind === "spend" && drafts[at - 1]!.kind === "sell",
  );
  if (!isCostBeside && drafts.every(saysOnlyThat)) return drafts;
  const told = [...drafts];
  let ahead: Trouble | undefined;
  for (let at = 1; at < told.length; at += 1) {
    const before = told[at - 1]!;
    if (opensToCome(before)) ahead = before.trouble;
    if (!goesOn(before, told[at]!)) ahead = undefined;
    told[at] = ahead ? notDone(told[at]!, ahead) : after(before, told[at]!);
  }
  let ofAll: Trouble | undefined;
  for (let at = told.length - 1; at > 0; at -= 1) {
    const { repeats, trouble, clause } = told[at]!;
    const before = told[at - 1]!;
    if (trouble && isOfAll(trouble, clause)) ofAll = trouble;
    if (!repeats || before.kind !== "sell") ofAll = undefined;
    if (ofAll) told[at - 1] = notDone(before, ofAll);
  }
  return told;
}

/** It happened, and nobody is named who did it: nothing of that is any other's. */
const saysOnlyThat = ({ trouble, fields }: Draft): boolean => !trouble && fields["by"] === undefined;

/** Behind a mark, or said of several: "…, pending pickup", "but they havent paid"; "lamp 20 pending" is of the lamp. */
function isOfAll({ kind }: Trouble, { tokens }: Clause): boolean {
  if (kind === "denial") return tokens.some(({ text }) => text === "they" || text === "both");
  return (
    BEHIND.has(kind) && tokens.some(({ roles, text }) => roles.hedge !== undefined && text.startsWith(","))
  );
}

/** "pulls for the hutch 18, the desk 12", "pulls 18 for the hutch and 12 for the desk": the same thing for another piece. */
function sameThing(before: Draft, draft: Draft): Draft | null {
  const { what, category, by, date } = before.fields;
  if (before.kind !== "spend" || before.trouble || what === undefined || draft.trouble?.kind !== "noVerb")
    return null;
  const [of, price] = ["piece", "amount"].map((kind) =>
    before.clause.tokens.findIndex((token) => token.kind === kind),
  );
  const told = draft.clause.tokens.filter(({ text }) => !AND.has(text));
  const [piece, ...pieces] = told.filter(({ kind }) => kind === "piece");
  const [amount, ...amounts] = told.filter(({ kind }) => kind === "amount");
  const cents = amount && !amount.each ? centsIn(amount) : null;
  if (!piece || cents === null || pieces.length + amounts.length > 0 || of! < 0) return null;
  const isInOrder = of! < price! && told.length === 3 && ARTICLES.has(told[0]!.text) && told[1] === piece;
  const isFor = told[0] === amount && FOR_IT.has(told[1]?.text ?? "") && told.at(-1) === piece;
  const isOnly = told.slice(2, -1).every(({ text }) => ARTICLES.has(text));
  if (!isInOrder && !(isFor && isOnly)) return null;
  const said = { what, category, ...(by ? { by } : {}), ...(date ? { date } : {}) };
  return { ...before, clause: draft.clause, fields: { ...said, pieces: [piece.mention!], amount: cents } };
}

function after(before: Draft, draft: Draft): Draft {
  const same = sameThing(before, draft);
  if (same) return same;
  const sold = soldOrSpent(before, draft);
  if (sold) return sold;
  const sharesVerb = draft.repeats || draft.trouble?.kind === "noVerb";
  const isTheirs = !sharesVerb && sharesSubject(before, draft);
  if (!sharesVerb && !isTheirs) return draft;
  const sale =
    before.trouble?.kind === "buyer" ? before.could.find(({ kind }) => kind === "sell") : undefined;
  if (sale) return toSameBuyer(sale, draft);
  const isOfAnother = isTheirs && draft.kind === "buy" && isOfOthers(before);
  if (isOfAnother) return boughtByThem(draft);
  if (!isTheirs && before.trouble && AHEAD.has(before.trouble.kind))
    return notDone(draft, before.trouble, before.could[0]);
  const by = before.fields["by"];
  if (by === undefined || !(draft.repeats || isTheirs)) return draft;
  for (const each of [draft, ...draft.could]) if (each.dated) each.fields["by"] ??= by;
  return draft;
}

/** "sold the lamp 20 and the shade 5": sold as well, or what it cost. */
function soldOrSpent(before: Draft, draft: Draft): Draft | null {
  const { kind, fields, clause, trouble } = draft;
  const isCost =
    kind === "spend" && !trouble && !clause.head && clause.tokens[0]!.text === "the" && !fields["pieces"];
  const isBehindSale =
    before.kind === "sell" && !before.trouble && JOINED.test(between(before.clause, clause));
  if (!isCost || !isBehindSale || fields["amount"] === undefined) return null;
  const sale = { pieces: [{ name: fields["what"], count: 1 }], price: fields["amount"] };
  const sold = madeDraft("sell", sale, clause, language().grammars.get("sell"));
  return unclearDraft(clause, { kind: "twoKinds" }, { could: [sold, draft] });
}

/** "dad sold the desk 80 and bought a chair 5": a verb joined on without anybody before it is of who did the one before. */
function sharesSubject(before: Draft, { clause, trouble }: Draft): boolean {
  const opening = before.clause.tokens.find(({ roles }) => !roles.filler || roles.person || roles.actor);
  if (!opening || !(opening.roles.person || opening.roles.actor || opening.unknown)) return false;
  const first = clause.tokens.find(
    ({ kind, text, roles }) => kind === "word" && (US.has(text) || !roles.filler),
  );
  return (
    !trouble && first !== undefined && first === clause.head && JOINED.test(between(before.clause, clause))
  );
}

/** "buyer was 20 minutes late but …", and none of ours: what they then got was ours. */
function isOfOthers({ trouble, clause: { tokens } }: Draft): boolean {
  if (!trouble) return false;
  const isOurs = tokens.some(({ text }) => US.has(text) || HOUSEHOLD.has(text) || text === "seller");
  return trouble.kind === "anotherPerson" || (!isOurs && tokens.some(({ roles }) => roles.person));
}

/** "bob sold me a chair for 8 and bought the lamp for 20" */
function boughtByThem(draft: Draft): Draft {
  const { source: _, ...fields } = draft.fields;
  const sale = madeDraft("sell", fields, draft.clause, language().grammars.get("sell"));
  return unclearDraft(draft.clause, { kind: "anotherPerson" }, { could: [sale, draft] });
}

/** "a lady bought the mirror for 40 and the lamp for 15": whoever bought the first of them. */
function toSameBuyer(sale: Draft, draft: Draft): Draft {
  const meant = draft.trouble ? draft.could.find(({ kind }) => kind === sale.kind) : draft;
  const { pieces, price, method, date } = meant?.fields ?? {};
  const isBought = meant && (meant === draft ? draft.kind === "buy" : true);
  if (!isBought || pieces === undefined || price === undefined) return draft;
  const fields: Draft["fields"] = { buyer: sale.fields["buyer"], pieces, price };
  if (method !== undefined) fields["method"] = method;
  if (date !== undefined) fields["date"] = date;
  const made = { ...sale, clause: draft.clause, fields };
  return { ...unclearDraft(draft.clause, { kind: "buyer" }, { could: [made] }), repeats: draft.repeats };
}

/** "tomorrow i finish the hutch …": what is still to come, by its first word. */
function opensToCome({ trouble, clause }: Draft): boolean {
  const first = clause.tokens.find(({ roles }) => !roles.filler);
  return trouble?.kind === "future" && first?.kind === "day";
}

/** "… and list it at 240": joined on in the same breath, and of no other day. */
function goesOn(before: Draft, { clause }: Draft): boolean {
  return (clause.signs.hints & HINTS.day) === 0 && !/[.;!?]/.test(between(before.clause, clause));
}

const JOINED = /^[\s,]*(?:and|n|&|then|and then|but|but then|plus|also)\s*$/i;

/** What stands between two clauses, as typed. */
const between = ({ spans, tokens, line }: Clause, next: Clause): string =>
  line.slice(spans[tokens.at(-1)!.to - 1]!.end, spans[next.tokens[0]!.from]!.start);

/** The clause as one that has not happened, with what it would be: the like of what the one before it would be. */
function notDone(draft: Draft, trouble: Trouble, like?: Draft): Draft {
  const meant = draft.trouble ? draft.could : [draft];
  const alike = like ? meant.filter(({ kind }) => kind === like.kind) : meant;
  const could =
    trouble.kind === "denial" || trouble.kind === "future"
      ? []
      : alike.length > 0
        ? alike
        : meant.slice(0, 1);
  return { ...unclearDraft(draft.clause, trouble, { could }), repeats: draft.repeats };
}
