import type { Clause, Tok } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import { type Draft, readingOf, unclearDraft } from "../interpreting/draft.ts";
import { settleEach } from "../interpreting/interpret.ts";
import { isMeasured } from "../passed-over/passing.ts";
import type { Mention, Reading } from "../reading.ts";
import { NOT_DONE } from "../unclear.ts";
import { bears } from "../verbs.ts";
import { CONDITIONS } from "../words/doubts.ts";
import { TO_DO } from "../words/pieces.ts";
import { sharedOver } from "./shared.ts";
import { piecesIn, TAKINGS } from "./takings.ts";

/**
 * The readings of a line's clauses, given what each takes from the others: shared days and sources, "it", pieces
 * left out, a price told later.
 */
export function togetherOf(all: readonly Draft[], index: number): Reading[] {
  // Nearly every line is one clause, and has nobody to take from.
  if (all.length === 1) return [readingOf(settledBy(all[0]!, undefined), index)];
  const drafts = TAKINGS.reduce<readonly Draft[]>((told, take) => take(told), all).map((draft, at, told) =>
    isTimeBeside(draft, told[at - 1])
      ? unclearDraft(draft.clause, { kind: "unclaimed" }, { could: [draft] })
      : draft,
  );
  sharedOver(drafts);
  let before: Mention[] | undefined;
  let run: Mention[] = [];
  let supposed = false;
  let isOfIt = false;
  const kept = drafts.filter((draft, at) => !isRepetition(draft, at > 0 ? drafts[at - 1] : undefined));
  const readings = kept.map((draft, at) => {
    const last = at > 0 ? kept[at - 1] : undefined;
    supposed &&= !isNewSentence(last!.clause, draft.clause);
    if (supposed) return readingOf(unclearDraft(draft.clause, { kind: "intention" }), index);
    if (isBalanceOfSale(draft, last))
      return readingOf(unclearDraft(draft.clause, { kind: "loanAlone" }), index);
    if (isOwnDeposit(draft, last))
      return readingOf(unclearDraft(draft.clause, { kind: "own deposit" }), index);
    supposed = isSupposition(draft);
    // "started on it and put in 45 min"
    draft.takesBefore ||= isOfIt && !before && isLeftOut(draft) && draft.kind !== "buy";
    isOfIt ||= draft.takesBefore;
    // "bought chair 20, delivery 15"
    draft.takesBefore ||= last?.kind === "buy" && isServiceAlone(draft);
    const several = draft.takesSeveral && before?.length === 1 && before[0]!.count === 1;
    const fetched = last?.kind === "drive" && draft.kind === "buy";
    // "bought 2 lamps 14, one is broken so i trashed it"
    const isOne = last !== undefined && draft.takesBefore && saysOne(last);
    const settled = settledBy(draft, several ? run : before, { fetched, isOne });
    // "other chair: 2h and 4 of glue": one chair, told once.
    if (before && isToldOnce(draft, before)) settled.follows = true;
    // Of the piece that has not gone yet: no clause that stands tells which it is.
    if (last && isStillOpen(last)) settled.follows = settled.takesBefore = false;
    const reading = readingOf(settled, index);
    const named = draft.trouble ? piecesIn(draft.clause) : (reading as { pieces?: Mention[] }).pieces;
    if (Array.isArray(named) && named.length > 0) {
      before = named;
      run = last?.kind === draft.kind ? [...run, ...named] : named;
    }
    return reading;
  });
  return readings.filter((_, at) => readings.length === 1 || !isStillOpen(kept[at]!));
}

/** "desk sold 130, 20 minutes after that", "bought it 30 after waiting 20 min": a time without a doing, and hardly one of work. */
function isTimeBeside({ kind, fields, clause, trouble }: Draft, before: Draft | undefined): boolean {
  if (kind !== "work" || trouble || !before || fields["pieces"] !== undefined || fields["what"] !== undefined)
    return false;
  const deed = before.trouble ? before.could[0]?.kind : before.kind;
  const isRunOn = isDealt(deed) && betweenOf(before.clause, clause).trim() === "";
  return (deed === "sell" || isRunOn) && !clause.tokens.some(({ roles }) => roles.heads?.some(isOfWork));
}

const isDealt = (kind: Draft["kind"] | undefined): boolean =>
  (kind !== undefined && bears(kind, "has a buyer")) ||
  kind === "buy" ||
  kind === "list" ||
  kind === "reprice";

const isOfWork = (head: { kind: Draft["kind"] }): boolean => head.kind === "work";

/** The very pieces of the clause before, which only the talk knows. */
function isToldOnce({ fields }: Draft, before: readonly Mention[]): boolean {
  const pieces = Array.isArray(fields["pieces"]) ? (fields["pieces"] as Mention[]) : [];
  const isRelative = pieces.some(({ besides, other, place }) => besides || other || place !== undefined);
  return isRelative && JSON.stringify(pieces) === JSON.stringify(before);
}

/** Of what is doubted ("and threw in the lamp") something may have happened. */
const OPEN: ReadonlySet<Trouble["kind"]> = new Set(
  [...NOT_DONE, "pending" as const, "noVerb" as const].filter((kind) => kind !== "doubt"),
);

/** "desk not yet" beside what has become of another piece: it tells which "it" is, and no fact. */
function isStillOpen({ trouble, clause }: Draft): boolean {
  return (
    trouble !== undefined &&
    (OPEN.has(trouble.kind) ||
      (trouble.kind === "unknown" && clause.tokens.some(({ text }) => TO_DO.test(text)))) &&
    clause.tokens.every(({ roles }) => roles.heads === undefined) &&
    piecesIn(clause).length > 0 &&
    !isMeasured(clause) &&
    clause.tokens.every(({ kind, unknown }) => kind !== "day" && !unknown)
  );
}

/** "wrapped up the highboy, all finished": the same again, and nothing new. */
function isRepetition(draft: Draft, before: Draft | undefined): boolean {
  if (before?.kind !== draft.kind || draft.trouble || before.trouble) return false;
  for (const field in draft.fields)
    if (field !== "how" || draft.fields[field] !== before.fields[field]) return false;
  return true;
}

/** "once desk is done list it 140": what follows a condition has not happened either. */
function isSupposition({ trouble, clause }: Draft): boolean {
  const first = clause.tokens.find((token) => token.kind !== "mark" && !isFiller(token));
  return trouble?.kind === "intention" && CONDITIONS.has(first?.text ?? "");
}

/** "took 40 deposit on dresser, balance 150 on pickup": a balance of no loan. */
function isBalanceOfSale({ kind, clause }: Draft, before: Draft | undefined): boolean {
  return (
    kind === "statement" && !clause.signs.has("loan") && (before?.kind === "hold" || before?.kind === "sell")
  );
}

/** "bought a dresser, put 40 down": the owner's own money. */
function isOwnDeposit({ kind, fields, clause }: Draft, before: Draft | undefined): boolean {
  const isOpen = before?.kind === "buy" && before.fields["price"] === undefined;
  return kind === "hold" && isOpen && fields["pieces"] === undefined && !clause.signs.has("person");
}

const isFiller = ({ roles }: Tok): boolean => roles.filler === true && roles.hedge === undefined;

const isNewSentence = (before: Clause, next: Clause): boolean => /[.;!]/.test(betweenOf(before, next));

const betweenOf = (before: Clause, next: Clause): string =>
  next.line.slice(before.spans[before.tokens.at(-1)!.to - 1]!.end, next.spans[next.tokens[0]!.from]!.start);

/** "bought 6 chairs 10 each, sold 2 of em 25 each": two of those chairs. */
function nameThose(fields: Draft["fields"], before: readonly Mention[]): void {
  // A goal's pieces are a number.
  const [one] = Array.isArray(fields["pieces"]) ? (fields["pieces"] as Mention[]) : [];
  const [told, ...others] = before;
  const { it, count, name } = one ?? {};
  if (!it || count === undefined || name !== undefined || !told || others.length > 0 || told.it) return;
  if (told.number !== undefined || (told.count ?? count) < count) return;
  const { plural: _, set: __, ...mention } = told;
  fields["pieces"] = [{ ...mention, count }];
}

/** "bought 4 chairs 20, threw one out": one of those before. */
function oneOf([told, ...others]: readonly Mention[], isOne: boolean): Mention[] | null {
  if (!isOne || !told || others.length > 0 || told.number !== undefined || (told.count ?? 1) < 2) return null;
  const { plural: _, set: __, ...mention } = told;
  return [{ ...mention, count: 1 }];
}

const saysOne = ({ clause }: Draft): boolean =>
  clause.tokens.some(({ kind, text }) => kind === "word" && text === "one");

const isLeftOut = ({ wantsPieces, fields }: Draft): boolean => wantsPieces && fields["pieces"] === undefined;

/** A service that names no piece: for the one just bought. */
const isServiceAlone = ({ kind, fields, clause }: Draft): boolean =>
  kind === "spend" &&
  fields["pieces"] === undefined &&
  (fields["category"] === "help" || clause.tokens.some(({ roles }) => roles.service === true));

function settledBy(
  draft: Draft,
  before: readonly Mention[] | undefined,
  { fetched = false, isOne = false } = {},
): Draft {
  for (const meant of draft.could)
    if (before && meant.takesBefore && isLeftOut(meant)) settledBy(meant, before);
  if (before) nameThose(draft.fields, before);
  // Nothing is bought that was already there: "bought it for 40" still asks what, but for a piece just fetched.
  if ((draft.takesBefore || isLeftOut(draft)) && before && (draft.kind !== "buy" || fetched)) {
    const one = oneOf(before, isOne || saysOne(draft));
    draft.fields["pieces"] = one ?? before.map((mention) => ({ ...mention }));
    draft.follows = one === null;
  }
  return draft.eachOf === undefined
    ? draft
    : settleEach(draft, draft.follows && before ? before : [], draft.clause);
}
