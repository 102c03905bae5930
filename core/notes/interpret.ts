import type { Clause, Tok } from "./clause.ts";
import { claim, isMark } from "./clause.ts";
import type { Cut } from "./clauses.ts";
import { headsOf, isHead } from "./clauses.ts";
import type { Saying, Slot, Trouble } from "./grammar.ts";
import { pastDay } from "./quantities/days.ts";
import { questionOf } from "./questions.ts";
import type { Kind, Mention, Missing, Reading } from "./reading.ts";
import { HINTS, maskOf } from "./signs.ts";
import { pieceCount } from "./slots/money.ts";
import { knownPieces } from "./slots/pieces.ts";
import { hasHintOf, slots } from "./slots/slots.ts";
import { hedgeTrouble, leftoverTrouble } from "./trust.ts";
import { insteadOf, unclear } from "./unclear.ts";
import type { AnyGrammar } from "./verbs.ts";
import { language } from "./verbs.ts";
import { CLASHING_SHORT_FORMS } from "./words/furniture.ts";
import { HELPERS } from "./words/people.ts";

/** A clause on its way to a reading; fields may still be shared from its neighbours. */
export interface Draft {
  kind: Kind;
  fields: Record<string, unknown>;
  clause: Clause;
  /** It takes a date. */
  dated: boolean;
  leadsWithDay: boolean;
  /** "at estate sale bought desk 20": where, before what. */
  leadsWithPlace: boolean;
  /** It needs pieces. */
  wantsPieces: boolean;
  /** Its pieces are those of the clause before. */
  takesBefore: boolean;
  /** "them": where the clause before named one piece, those of its whole run are meant. */
  takesSeveral?: boolean;
  follows?: boolean;
  /** The field that holds the price of one of the pieces of the clause before. */
  eachOf?: string;
  /** Why it is unclear, with the notes that would have worked. */
  trouble?: Trouble;
}

interface Choice {
  kind: Kind;
  saying: Saying<Kind>;
  head?: Tok;
  tail: Tok[];
  score: number;
}

export function interpret(clause: Clause, { repeats, ambiguous }: Cut): Draft {
  const trouble: Trouble | null = ambiguous ? { kind: "priceOfBoth" } : earlyTrouble(clause);
  if (trouble) return unclearDraft(clause, trouble);
  const asked = repeats ? null : askedDraft(clause);
  if (asked) return asked;
  const choice = chosen(clause, repeats);
  if (!choice) return unclearDraft(clause, hedgeTrouble(clause) ?? noVerbTrouble(clause));
  return filledDraft(clause, choice);
}

/** Words that never say what they seem to. */
const TAKING_BACK = new Set(["no", "nope", "wait", "no wait", "actually"]);

function earlyTrouble(clause: Clause): Trouble | null {
  if (clause.tokens.some((token) => token.unknown && CLASHING_SHORT_FORMS.has(token.text)))
    return { kind: "clashingWord" };
  // "no 35 miles" takes something back, but only amounts can be corrected so.
  const [first] = clause.tokens;
  const takesBack = first !== undefined && TAKING_BACK.has(first.text);
  return takesBack && (clause.signs.has("miles") || clause.signs.has("duration"))
    ? { kind: "notMoney" }
    : null;
}

function askedDraft(clause: Clause): Draft | null {
  const asked = questionOf(clause.tokens, clause.today);
  if (asked) return draft("ask", { ...asked }, clause, false);
  const question = clause.tokens.some((token) => isMark(token, "?"));
  return question ? unclearDraft(clause, { kind: "question" }) : null;
}

/** A whole line that sounds like a question. */
export function questionReading(clause: Clause, line: number): Reading {
  const asked = questionOf(clause.tokens, clause.today);
  const place = { text: clause.text, line };
  return asked
    ? ({ kind: "ask", ...asked, ...place } as Reading)
    : unclear(hedgeTrouble(clause) ?? { kind: "question" }, place);
}

/** Multiplies a price of each by the count of the pieces that the clause before named; unclear where it named none. */
export function settleEach(made: Draft, pieces: readonly Mention[], clause: Clause): Draft {
  const count = pieceCount(pieces);
  if (!made.eachOf || count === null) return unclearDraft(clause, { kind: "eachOfUnknown" });
  made.fields[made.eachOf] = (made.fields[made.eachOf] as number) * count;
  return made;
}

function unclearDraft(clause: Clause, trouble: Trouble): Draft {
  const made = draft("unclear", {}, clause, false);
  const instead = trouble.instead ?? insteadOf(trouble, clause);
  made.trouble = { ...trouble, instead };
  return made;
}

function dayLeads({ tokens, signs }: Clause): boolean {
  if ((signs.hints & HINTS.day) === 0) return false;
  return tokens.find((token) => !(token.kind === "mark" || token.roles.filler))?.kind === "day";
}

function placeLeads({ tokens, signs }: Clause): boolean {
  if ((signs.hints & HINTS.place) === 0) return false;
  const place = tokens.findIndex((token) => token.roles.place !== undefined);
  return place >= 0 && tokens.findIndex((token) => token.kind === "piece") > place;
}

function draft(kind: Kind, fields: Record<string, unknown>, clause: Clause, dated: boolean): Draft {
  const made: Draft = {
    kind,
    fields,
    clause,
    dated,
    leadsWithDay: dayLeads(clause),
    leadsWithPlace: placeLeads(clause),
    wantsPieces: language().grammars.get(kind)?.needs.includes("pieces") ?? false,
    takesBefore: false,
  };
  return made;
}

/* Choosing the verb */

/** A clause with more verb words than this is no note, and comparing them all would take the square of their number. */
const HEADS_MAX = 12;

function chosen(clause: Clause, repeats: Tok | undefined): Choice | null {
  const { tokens } = clause;
  const heads = headPlaces(tokens);
  if (heads.length > HEADS_MAX) return null;
  let best: Choice | null = null;
  for (const at of heads)
    if (heads.length === 1 || !isAbsorbed(tokens, at, heads)) best = better(best, clause, tokens[at]!);
  if (best) return best;
  if (repeats && heads.length === 0) return better(null, clause, repeats);
  // A verb that was said and does not fit is not overruled by what the clause holds: "returned paint 20".
  if (heads.some((at) => saysMore(clause, tokens[at]!))) return null;
  return unsaidChoice(clause.signs.mask);
}

function headPlaces(tokens: readonly Tok[]): number[] {
  const places: number[] = [];
  for (let at = 0; at < tokens.length; at += 1) if (isHead(tokens, at)) places.push(at);
  return places;
}

/** The saying without words that names most of what the clause holds. */
function unsaidChoice(mask: number): Choice | null {
  const { grammars, unsaid } = language();
  let best: Choice | null = null;
  for (const { kind, saying } of unsaid) {
    const { says, fits } = grammars.get(kind)!;
    const fit = fits[saying]!;
    if ((mask & fit.needs) !== fit.needs || (mask & fit.rulesOut) !== 0) continue;
    const score = Math.floor(fit.weight);
    if (!best || score > best.score) best = { kind, saying: says[saying]!, tail: [], score };
  }
  return best;
}

function saysMore(clause: Clause, token: Tok): boolean {
  return headsOf(token).some((head) => !head.light && tailOf(clause, token, head.tail) !== null);
}

/** Words that only complete the verb of the clause ("refunded 30" after "backed out") do not compete with it. */
function isAbsorbed(tokens: readonly Tok[], at: number, heads: readonly number[]): boolean {
  const { facts } = language();
  return heads.some((place) => {
    if (place === at) return false;
    const other = tokens[place]!;
    const takes = headsOf(other).some((head) => !head.light && facts.absorbs(head.kind, tokens[at]!.text));
    if (!takes) return false;
    const taken = headsOf(tokens[at]!).some((head) => !head.light && facts.absorbs(head.kind, other.text));
    return !taken || place < at;
  });
}

/** The better of a choice and what one verb word says: a plain verb before a light one, then the fuller saying. */
function better(before: Choice | null, clause: Clause, token: Tok): Choice | null {
  const { grammars } = language();
  const mask = clause.signs.mask | maskAfter(clause, token);
  let best = before;
  for (const head of headsOf(token)) {
    const { says, fits } = grammars.get(head.kind)!;
    const fit = fits[head.saying]!;
    if ((mask & fit.needs) !== fit.needs || (mask & fit.rulesOut) !== 0) continue;
    const length = token.to - token.from + head.tail.length * 3;
    const score = (head.light ? 20 : 100) + length * 3 + fit.weight;
    if (best && best.score >= score) continue;
    const tail = tailOf(clause, token, head.tail);
    if (tail) best = { kind: head.kind, saying: says[head.saying]!, head: token, tail, score };
  }
  return best;
}

const SKIPPED_AFTER = new Set([
  "the",
  "a",
  "an",
  "my",
  "me",
  "back",
  "about",
  "out",
  "him",
  "only",
  "just",
  "like",
]);
const MONEY_FIRST = maskOf(["moneyFirst"]);
const HELPER = maskOf(["helper"]);

const SUPPLY_FIRST = maskOf(["supplyFirst"]);

/** Whether the verb is about a supply ("bought dresser knobs 12") and not a piece that has one ("desk, missing a drawer"). */
function supplyMask(tokens: readonly Tok[], from: number): number {
  for (let at = from; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    if (token.kind === "piece") {
      const next = tokens[at + 1];
      return next?.kind === "word" && next.roles.supply !== undefined ? SUPPLY_FIRST : 0;
    }
    if (token.kind === "word" && token.roles.supply !== undefined && !token.roles.heads) return SUPPLY_FIRST;
  }
  return from > 0 ? supplyMask(tokens, 0) : 0;
}

/** The signs that depend on what follows the verb. */
function maskAfter(clause: Clause, head: Tok): number {
  const place = clause.tokens.indexOf(head) + 1;
  return nextMask(clause, place) | (clause.signs.has("supply") ? supplyMask(clause.tokens, place) : 0);
}

function nextMask({ tokens }: Clause, place: number): number {
  let at = place;
  while (at < tokens.length && SKIPPED_AFTER.has(tokens[at]!.text)) at += 1;
  const next = tokens[at];
  if (next?.kind === "amount") return MONEY_FIRST;
  return next?.kind === "word" && (HELPERS.has(next.text) || next.roles.supply === "help") ? HELPER : 0;
}

const NO_TAIL: Tok[] = [];

/** The tokens that finish a verb's words further on; null where they are not all there. */
function tailOf(clause: Clause, head: Tok, tail: readonly string[]): Tok[] | null {
  if (tail.length === 0) return NO_TAIL;
  const wanted = tail.join(" ");
  for (let at = clause.tokens.indexOf(head) + 1; at < clause.tokens.length; at += 1) {
    let text = "";
    for (let to = at; to < clause.tokens.length && text.length < wanted.length; to += 1) {
      text = text ? `${text} ${clause.tokens[to]!.text}` : clause.tokens[to]!.text;
      if (text === wanted) return clause.tokens.slice(at, to + 1);
    }
  }
  return null;
}

/* Filling the slots */

function filledDraft(clause: Clause, choice: Choice): Draft {
  const grammar = language().grammars.get(choice.kind)!;
  if (choice.head) {
    clause.head = choice.head;
    claim(choice.head);
  }
  if (choice.head) clause.signs.mask |= maskAfter(clause, choice.head);
  claim(...choice.tail);
  for (const token of clause.tokens)
    if (token.kind === "word" && grammar.absorbs.has(token.text)) token.claimed = true;
  if (choice.kind === "fix") claimDenied(clause);
  const made = draft(choice.kind, { ...choice.saying.means }, clause, !grammar.dateless);
  const trouble = fill(made, grammar, clause);
  if (trouble) return unclearDraft(clause, trouble);
  const ownTrouble = (grammar.judge?.(made.fields, clause as never) as Trouble | null | undefined) ?? null;
  const left =
    ownTrouble ??
    hedgeTrouble(clause, choice.kind) ??
    leftoverTrouble(choice.kind, clause) ??
    wholeTrouble(grammar, clause);
  return left ? unclearDraft(clause, left) : made;
}

/** "meant 35 not 53": the amount that is denied is none to record. */
function claimDenied({ tokens }: Clause): void {
  tokens.forEach((token, at) => {
    const next = tokens[at + 1];
    if (token.text === "not" && next?.kind === "amount") claim(token, next);
  });
}

function fill(made: Draft, grammar: AnyGrammar, clause: Clause): Trouble | null {
  if (made.dated) {
    const trouble = fillDay(made, grammar, clause);
    if (trouble) return trouble;
  }
  for (const [field, slot] of grammar.slots) {
    if (made.fields[field] !== undefined || !hasHintOf(slot, clause)) continue;
    const trouble = fillField(made, grammar, field, slot, clause);
    if (trouble) return trouble;
  }
  return null;
}

function fillField(
  made: Draft,
  grammar: AnyGrammar,
  field: string,
  slot: Slot,
  clause: Clause,
): Trouble | null {
  const optional = slot === "pieces" && !grammar.needs.includes("pieces") && made.kind !== "hold";
  const filled = optional ? knownPieces(clause) : slots[slot](clause);
  if (!filled) return null;
  if ("trouble" in filled) return filled.trouble;
  if (filled.several) made.takesSeveral = true;
  if (filled.follows) made.takesBefore = true;
  else made.fields[field] = filled.value;
  if (filled.each) made.fields["each"] = true;
  if (filled.pending) made.eachOf = field;
  return null;
}

/** The day of a fact: the one said, never one to come. "until friday" is a slot of its own, and claims first. */
function fillDay(made: Draft, grammar: AnyGrammar, clause: Clause): Trouble | null {
  if ((clause.signs.hints & HINTS.day) === 0 && !hasHintOf("until", clause)) return null;
  const waits = grammar.slots.find(([, slot]) => slot === "until");
  if (waits) {
    const filled = slots.until(clause);
    if (filled && "trouble" in filled) return filled.trouble;
    if (filled) made.fields[waits[0]] = filled.value;
  } else claimPickup(clause);
  const [first, second] = clause.tokens.filter((token) => token.kind === "day" && !token.claimed);
  if (!first) return null;
  if (second) return { kind: "vagueTime" };
  claim(first);
  const found = pastDay(first.said!, clause.today);
  if ("wrong" in found) return { kind: found.wrong === "future" ? "future" : "unrealDay" };
  made.fields["date"] = found.day;
  if (found.longAgo) made.fields["longAgo"] = true;
  return null;
}

/** "sold desk 90 pickup friday": when it is fetched is not when it was sold. */
function claimPickup({ tokens }: Clause): void {
  tokens.forEach((token, at) => {
    const next = tokens[at + 1];
    if (
      next?.kind === "day" &&
      /^(?:pickup|pick up|picking up|picks up|picking it up|collecting)$/.test(token.text)
    )
      claim(next);
  });
}

/** Some notes are their words and nothing else: "undo the dresser" undoes nothing. */
function wholeTrouble(grammar: AnyGrammar, clause: Clause): Trouble | null {
  if (!grammar.whole) return null;
  const free = clause.tokens.some(
    (token) =>
      !token.claimed &&
      token.kind === "word" &&
      !token.roles.filler &&
      !token.roles.pronoun &&
      !token.roles.opinion,
  );
  return free ? { kind: "unknown" } : null;
}

export function readingOf(made: Draft, line: number): Reading {
  const { clause } = made;
  if (made.trouble) return unclear(made.trouble, { text: clause.text, line });
  const grammar = language().grammars.get(made.kind);
  const pieces = made.fields["pieces"] as { plural?: true; count?: number }[] | undefined;
  const missing: Missing[] = [];
  for (const field of (grammar?.needs ?? []) as Missing[]) {
    if (field === "count") {
      if (pieces?.some((mention) => mention.plural)) missing.push("count");
    } else if (made.fields[field] === undefined) missing.push(field);
  }
  if (missing.includes("count")) for (const mention of pieces ?? []) delete mention.plural;
  const reading: Record<string, unknown> = { kind: made.kind };
  for (const field in made.fields) reading[field] = made.fields[field];
  if (missing.length > 0) reading["missing"] = missing;
  if (made.follows || made.takesBefore) reading["follows"] = true;
  reading["text"] = clause.text;
  reading["line"] = line;
  return reading as unknown as Reading;
}

function noVerbTrouble(clause: Clause): Trouble {
  const { signs } = clause;
  const meaningful = clause.tokens.filter((token) => !(token.kind === "mark" || token.roles.filler));
  if (signs.has("loan") && signs.has("number")) return { kind: "loanAlone" };
  if (signs.has("piece") && signs.has("number")) return { kind: "noVerb" };
  if (meaningful.length === 1 && meaningful[0]!.kind === "amount") return { kind: "loneNumber" };
  return { kind: "unknown" };
}
