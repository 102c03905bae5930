import type { Choice } from "./choice.ts";
import { chosen } from "./choice.ts";
import type { Clause, Tok } from "./clause.ts";
import { claim, isMark } from "./clause.ts";
import type { Cut } from "./clauses.ts";
import type { Trouble } from "./grammar.ts";
import { pastDay } from "./quantities/days.ts";
import { questionOf } from "./questions.ts";
import type { Kind, Mention, Missing, Reading } from "./reading.ts";
import { HINTS } from "./signs.ts";
import { pieceCount } from "./slots/money.ts";
import { hasCue, slots } from "./slots/slots.ts";
import { hedgeTrouble, leftoverTrouble } from "./trust.ts";
import { insteadOf, unclear } from "./unclear.ts";
import type { AnyGrammar, Field } from "./verbs.ts";
import { CLASHING_SHORT_FORMS } from "./words/furniture.ts";

/** A clause on its way to a reading; fields may still be shared from its neighbours. */
export interface Draft {
  kind: Kind;
  fields: Record<string, unknown>;
  clause: Clause;
  /** Fields to ask for where they are not there. */
  needs: readonly string[];
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
  takesSeveral: boolean;
  follows: boolean;
  /** The field that holds the price of one of the pieces of the clause before. */
  eachOf: string | undefined;
  /** Why it is unclear, with the notes that would have worked. */
  trouble: Trouble | undefined;
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
  if (asked) return draft("ask", { ...asked }, clause);
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

export function unclearDraft(clause: Clause, trouble: Trouble): Draft {
  const made = draft("unclear", {}, clause);
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

function draft(
  kind: Kind,
  fields: Record<string, unknown>,
  clause: Clause,
  grammar: AnyGrammar | null = null,
): Draft {
  return {
    kind,
    fields,
    clause,
    needs: grammar?.needs ?? NOTHING_NEEDED,
    dated: grammar !== null && !grammar.dateless,
    leadsWithDay: dayLeads(clause),
    leadsWithPlace: placeLeads(clause),
    wantsPieces: grammar?.needs.includes("pieces") ?? false,
    takesBefore: false,
    takesSeveral: false,
    follows: false,
    eachOf: undefined,
    trouble: undefined,
  };
}

const NOTHING_NEEDED: readonly string[] = [];

function filledDraft(clause: Clause, choice: Choice): Draft {
  const { grammar, means } = choice.said;
  const { kind } = grammar;
  if (choice.head) {
    clause.head = choice.head;
    claim(choice.head);
    clause.signs.mask |= choice.mask;
  }
  claim(...choice.tail);
  if (grammar.absorbs.size > 0)
    for (const token of clause.tokens)
      if (token.kind === "word" && grammar.absorbs.has(token.text)) token.claimed = true;
  if (kind === "fix") claimDenied(clause);
  const made = draft(kind, { ...means }, clause, grammar);
  const trouble = fill(made, grammar, clause);
  if (trouble) return unclearDraft(clause, trouble);
  const ownTrouble = (grammar.judge?.(made.fields, clause as never) as Trouble | null | undefined) ?? null;
  const left =
    ownTrouble ??
    (COUNTS_NOTHING.has(kind) ? null : someOfThem(clause)) ??
    hedgeTrouble(clause, kind) ??
    leftoverTrouble(kind, clause) ??
    wholeTrouble(grammar, clause);
  return left ? unclearDraft(clause, left) : made;
}

/** Kinds that ask how many, or to which it makes no difference. */
const COUNTS_NOTHING: ReadonlySet<Kind> = new Set(["buy", "spend", "work", "drive", "start", "goal"]);

/** "sold half the chairs 60", "donated some lamps": which of them, and how many? */
function someOfThem({ tokens }: Clause): Trouble | null {
  const isSome = tokens.some((token, at) => {
    if (!token.mention?.plural) return false;
    let before = at - 1;
    while (/^(?:the|my|our|of|those|these)$/.test(tokens[before]?.text ?? "")) before -= 1;
    return /^(?:half|some|few|several|most|first|part|bunch|lot|lots)$/.test(tokens[before]?.text ?? "");
  });
  return isSome ? { kind: "eachOfUnknown" } : null;
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
  for (const field of grammar.fields) {
    if (!hasCue(field.cues, clause) || made.fields[field.name] !== undefined) continue;
    const trouble = fillField(made, field, clause);
    if (trouble) return trouble;
  }
  return null;
}

function fillField(made: Draft, { name, fill: take }: Field, clause: Clause): Trouble | null {
  const filled = take(clause);
  if (!filled) return null;
  if ("trouble" in filled) return filled.trouble;
  if (filled.uncounted && !made.needs.includes("count")) return { kind: "eachOfUnknown" };
  if (filled.several) made.takesSeveral = true;
  if (filled.follows) made.takesBefore = true;
  else made.fields[name] = filled.value;
  if (filled.each) made.fields["each"] = true;
  if (filled.pending) made.eachOf = name;
  return null;
}

/** The day of a fact: the one said, never one to come. "until friday" is a slot of its own, and claims first. */
function fillDay(made: Draft, grammar: AnyGrammar, clause: Clause): Trouble | null {
  if ((clause.signs.hints & (HINTS.day | HINTS.until)) === 0) return null;
  const waits = grammar.fields.find(({ slot }) => slot === "until");
  if (waits) {
    const filled = slots.until(clause);
    if (filled && "trouble" in filled) return filled.trouble;
    if (filled) made.fields[waits.name] = filled.value;
  } else claimPickup(clause);
  const [first, second] = clause.tokens.filter((token) => token.kind === "day" && !token.claimed);
  if (!first) return null;
  if (second || isDeadline(clause, first)) return { kind: "vagueTime" };
  if (!DATED_BY_THE_WAY.has(made.kind) && isDayToCome(clause, first)) return { kind: "vagueTime" };
  claim(first);
  const found = pastDay(first.said!, clause.today);
  if ("wrong" in found) return { kind: found.wrong === "future" ? "future" : "unrealDay" };
  made.fields["date"] = found.day;
  if (found.longAgo) made.fields["longAgo"] = true;
  return null;
}

/** "sold desk 90 by friday": the next one, and nothing that has happened then. */
function isDeadline({ tokens }: Clause, day: Tok): boolean {
  const isByWeekday =
    day.said?.form === "weekday" || day.said?.form === "dayOfMonth" || day.said?.form === "monthDay";
  return isByWeekday && /^(?:by|until|till|til|before)$/.test(tokens[tokens.indexOf(day) - 1]?.text ?? "");
}

/** Words between what was noted and a weekday that make it the day of something else, mostly still to come. */
const ANOTHER_TIME =
  /^(?:pays?|paying|deliver|delivery|delivering|gets?|get it|gets it|getting|getting it|money|closes|closing|ends?|starts?|starting|started|goes|going|leaves|leaving|moves|rest|half|balance|remainder|fetching|ships?|shipping|for|to|need|needs|listed|bought)$/;
const DATED_BY_THE_WAY: ReadonlySet<Kind> = new Set(["drive", "work", "spend", "income", "ask"]);

/** "sold desk 90 she pays friday": the friday of the payment, and not of the sale. */
function isDayToCome({ tokens, head }: Clause, day: Tok): boolean {
  if (day.said?.form !== "weekday" || day.said.which === "last") return false;
  for (let at = tokens.indexOf(day) - 1; at >= 0; at -= 1) {
    const token = tokens[at]!;
    if (token === head || token.kind === "mark" || token.kind === "amount" || token.kind === "piece")
      return false;
    if (ANOTHER_TIME.test(token.text)) return !(isPreposition(token) && isSomebody(tokens[at + 1]));
  }
  return false;
}

const isPreposition = ({ text }: Tok): boolean => text === "to" || text === "for";

/** "to a teacher fri" is no plan of friday's. */
const isSomebody = (token: Tok | undefined): boolean =>
  token?.roles.person === true || /^(?:a|an|the|my|some|our)$/.test(token?.text ?? "");

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
  const pieces = made.fields["pieces"] as { plural?: true; count?: number }[] | undefined;
  let missing: Missing[] | undefined;
  for (const field of made.needs as readonly Missing[]) {
    // A cut stands in for the new price.
    if (field === "price" && made.fields["cut"] !== undefined) continue;
    const isThere =
      field === "count" ? !pieces?.some((mention) => mention.plural) : made.fields[field] !== undefined;
    if (!isThere) missing = [...(missing ?? []), field];
  }
  if (missing?.includes("count")) for (const mention of pieces ?? []) delete mention.plural;
  const reading: Record<string, unknown> = { kind: made.kind, ...made.fields };
  if (missing) reading["missing"] = missing;
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
