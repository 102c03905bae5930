import { couldBe } from "../alternatives/could.ts";
import type { Clause, Tok } from "../clause.ts";
import { claim, isMark, MEASURES, placeAfter, textOf } from "../clause.ts";
import type { Cut } from "../cutting/cut.ts";
import type { Trouble } from "../grammar.ts";
import { headsOf, isHead } from "../heads.ts";
import { isKin, isSubject, kinAt } from "../mentions/kin.ts";
import { questionOf } from "../questions.ts";
import type { Kind, Mention, Reading } from "../reading.ts";
import { pieceCount } from "../slots/money.ts";
import { hasCue } from "../slots/slots.ts";
import { HINTS } from "../tokens/sign-bits.ts";
import { whyOf } from "../unclear.ts";
import type { AnyGrammar, Field } from "../verbs.ts";
import { bears, language } from "../verbs.ts";
import { AND, ARTICLES_WIDE } from "../words/links.ts";
import { TAKEN_BACK } from "../words/money.ts";
import { NAME_AROUND, NOBODY_NAMED } from "../words/names.ts";
import { NOBODY_IN_PARTICULAR } from "../words/people.ts";
import { WE } from "../words/tenses.ts";
import type { Choice } from "./choice.ts";
import { chosen } from "./choice.ts";
import { fillDay, isUnderway } from "./days.ts";
import { type Draft, draft, unclearDraft } from "./draft.ts";
import { fillAgreed, fillFeeShare, fillOwed, fillOwer, paidInParts } from "./price-parts.ts";
import { setSlippedAside } from "./slipped.ts";
import { hedgeTrouble, isUnreadNumber, leftoverTrouble, leftWords } from "./trust.ts";

export function interpret(clause: Clause, { repeats, behind, ambiguous }: Cut): Draft {
  const trouble: Trouble | null = ambiguous ? { kind: "priceOfBoth" } : earlyTrouble(clause);
  if (trouble) return troubled(clause, trouble);
  const asked = repeats ? null : askedDraft(clause);
  if (asked) return asked;
  const actor = actorOf(clause);
  const choice = chosen(clause, repeats, behind);
  if (actor?.is === "sold" && (!choice || !bears(choice.said.kind, "has a buyer")))
    return soldTo(clause, actor);
  if (!choice) return troubled(clause, hedgeTrouble(clause) ?? noVerbTrouble(clause));
  const made = filledDraft(clause, choice);
  return actor ? withActor(made, actor) : made;
}

/** Who did it, as a row found it: one of ours, or somebody it went to. */
interface Actor {
  is: "ours" | "sold";
  name?: string;
  /** It left us, or we fetched it: the books know. */
  orBought?: true;
}

const isActor = ({ roles }: Tok): boolean => roles.actor !== undefined;

function actorOf(clause: Clause): Actor | null {
  const token = (clause.signs.hints & HINTS.actor) === 0 ? undefined : clause.tokens.find(isActor);
  if (!token) return kinActing(clause);
  const isFetched = token.kind === "piece";
  if (!isFetched) claim(token);
  const { actor } = token.roles;
  // "the desk was bought for 40": by whom is not said.
  const isPassive = /^(?:was|were|has been)$/.test(token.text);
  if (actor === "nobody") return { is: "sold", ...(isFetched || isPassive ? { orBought: true } : {}) };
  const name = token.text.replace(NAME_AROUND, "").trim();
  return {
    is: actor === "ours" ? "ours" : "sold",
    ...(NOBODY_NAMED.has(name) || name === "" ? {} : { name }),
  };
}

const GIVES_US = / (?:me|us)$/;

/** "my son already listed the desk", where no row knows the words between: before the verb stands nobody but kin. */
function kinActing({ tokens, signs }: Clause): Actor | null {
  if (!signs.has("person")) return null;
  const verb = tokens.findIndex((_, at) => isHead(tokens, at));
  const at = tokens.findIndex(isKin);
  // "aunt gave me a table": from whom it came.
  if (at < 0 || at > verb || !isSubject(tokens, at) || GIVES_US.test(tokens[verb]!.text)) return null;
  const kin = kinAt(tokens, at);
  const isOther = ({ roles, text }: Tok): boolean =>
    roles.person === true && !NOBODY_IN_PARTICULAR.has(text) && kin.every((token) => token.text !== text);
  if (tokens.slice(0, verb).some(isOther)) return null;
  claim(...kin);
  // "my wife and i went to a sale and bought a bench"
  const next = tokens[at + kin.length];
  const isBoth = next && AND.has(next.text) && WE.has(tokens[at + kin.length + 1]?.text ?? "");
  return isBoth ? null : { is: "ours", name: textOf(kin) };
}

function withActor(made: Draft, { is, name }: Actor): Draft {
  if (name === undefined) return made;
  const field = is === "ours" ? "by" : "buyer";
  for (const each of [made, ...made.could])
    if (
      field === "by" ? each.dated || each.trouble : bears(each.kind, "has a buyer") && each.kind !== "refund"
    )
      if (is === "sold" || each.fields[field] === undefined) each.fields[field] = name;
  return made;
}

/** "bob bought the desk 120": a sale, if there is a desk. */
function soldTo(clause: Clause, actor: Actor): Draft {
  const head = clause.tokens.find(({ roles }) => roles.heads !== undefined);
  const made = filledDraft(clause, {
    said: { kind: "sell", means: {}, needs: 0, rulesOut: 0, weight: 0 },
    ...(head ? { head } : {}),
    tail: [],
    score: 0,
    mask: 0,
  });
  if (made.trouble) return withActor(made, actor);
  const isOurs = !clause.tokens.some(isUndefined);
  const sold = troubled(clause, { kind: isOurs ? "buyer" : "anotherPerson" }, withActor(made, actor));
  if (actor.orBought) {
    const { buyer: _, owed: __, fee: ___, ...fields } = made.fields;
    sold.could.push(draft("buy", fields, clause, language().grammars.get("buy")!));
  }
  return sold;
}

/** "my boss bought a desk": one of ours, or any. */
const isUndefined = ({ kind, mention }: Tok, at: number, tokens: readonly Tok[]): boolean =>
  kind === "piece" && mention?.number === undefined && /^an?$/.test(tokens[at - 1]?.text ?? "");

function troubled(clause: Clause, trouble: Trouble, made?: Draft, left: readonly string[] = []): Draft {
  return unclearDraft(clause, trouble, { could: couldBe(trouble, clause, made), left });
}

const isClashing = ({ unknown, hints }: Tok): boolean => unknown === true && (hints & HINTS.clashing) !== 0;

function earlyTrouble({ tokens, signs }: Clause): Trouble | null {
  const isAny = (signs.hints & HINTS.clashing) !== 0;
  return isAny && tokens.some(isClashing) ? { kind: "clashingWord" } : null;
}

const isQuestionMark = (token: Tok): boolean => isMark(token, "?");

function askedDraft(clause: Clause): Draft | null {
  const asked = questionOf(clause);
  if (asked) return draft("ask", { ...asked }, clause);
  const question = (clause.signs.hints & HINTS.questionMark) !== 0 && clause.tokens.some(isQuestionMark);
  return question ? unclearDraft(clause, { kind: "question" }) : null;
}

/** A whole line that sounds like a question. */
export function questionReading(clause: Clause, line: number): Reading {
  const asked = questionOf(clause);
  const place = { text: clause.text, line };
  return asked
    ? ({ kind: "ask", ...asked, ...place } as Reading)
    : ({ kind: "unclear", why: whyOf(hedgeTrouble(clause) ?? { kind: "question" }), ...place } as Reading);
}

/** Multiplies a price of each by the count of the pieces that the clause before named; unclear where it named none. */
export function settleEach(made: Draft, pieces: readonly Mention[], clause: Clause): Draft {
  const count = pieceCount(pieces);
  // "listed them 25 each" with nothing before it: counted once it is known what they are.
  if (count === null && made.takesBefore && made.takesSeveral && bears(made.kind, "counted later"))
    return made;
  // "listed 60 each" of nothing named
  if (count === null && made.wantsPieces && bears(made.kind, "counted later")) return made;
  if (made.kind === "fix" && count === null) return made;
  if (!made.eachOf || count === null) return unclearDraft(clause, { kind: "eachOfUnknown" });
  made.fields[made.eachOf] = (made.fields[made.eachOf] as number) * count;
  return made;
}

const isOwed = ({ roles }: Tok): boolean => roles.owed === true;

function filledDraft(clause: Clause, choice: Choice): Draft {
  const { kind, means } = choice.said;
  const grammar = language().grammars.get(kind)!;
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
  if (!setSlippedAside(clause, grammar.needs)) return unclearDraft(clause, { kind: "vagueAmount" });
  const made = draft(kind, { ...means }, clause, grammar);
  const isInDebt = (clause.signs.hints & HINTS.owed) !== 0;
  if (kind === "sell" && isInDebt) fillOwer(made, clause);
  const trouble = fill(made, grammar, clause);
  if (trouble) return troubled(clause, trouble, made);
  if (kind === "sell" && isInDebt) fillOwed(made, clause);
  const ofPrice = kind === "hold" && isInDebt ? fillAgreed(made, clause) : null;
  const inParts = kind === "sell" ? paidInParts(made, clause) : null;
  if (inParts === "sum")
    made.fields["price"] = (made.fields["price"] as number) + (made.fields["owed"] as number);
  const isFeeShare = kind === "sell" && fillFeeShare(made, clause);
  const isOwing = kind === "buy" && isInDebt && clause.tokens.some(isOwed);
  const judged = (grammar.judge?.(made.fields, clause as never) as Trouble | null | undefined) ?? null;
  const ownTrouble: Trouble | null = isOwing
    ? { kind: "unpaid" }
    : (judged ??
      ofPrice ??
      (isFeeShare ? { kind: "shareOfPrice" } : inParts === "either" ? { kind: "part paid" } : null));
  // "wants it for 30 if i drop it off, might": what somebody would pay is no price of ours.
  const hedged = ownTrouble?.kind === "cutOrPrice" ? hedgeTrouble(clause, kind) : null;
  const left =
    hedged ??
    ownTrouble ??
    someOfThem(clause, grammar) ??
    (isUnderway(clause) ? { kind: "intention" as const } : null) ??
    hedgeTrouble(clause, kind) ??
    leftoverTrouble(kind, clause) ??
    (choice.head ? ofAnotherThing(kind, clause) : verbPassedOver(clause)) ??
    wholeTrouble(grammar, clause);
  if (left) return troubled(clause, left, made, left.kind === "left" ? leftWords(kind, clause) : []);
  return made;
}

/** "hutch is now listed at 230 on the board": what is read from things alone takes no number beside a verb that has a price. */
function verbPassedOver({ tokens }: Clause): Trouble | null {
  const { facts } = language();
  const isOfPrice = ({ claimed }: Tok, at: number): boolean =>
    !claimed &&
    isHead(tokens, at) &&
    headsOf(tokens[at]!).some((head) => bears(head.kind, "of pieces") && facts.takes(head.kind, "price"));
  return tokens.some(({ kind: is }) => is === "piece") && tokens.some(isOfPrice)
    ? { kind: "unclaimed" }
    : null;
}

/** "finished lunch", "started the car": where no piece is told, what stands behind the verb is what was done. */
function ofAnotherThing(kind: Kind, { tokens, head }: Clause): Trouble | null {
  if (!bears(kind, "standing pieces") || !bears(kind, "at work") || !head) return null;
  if (tokens.some(({ kind: is, roles }) => is === "piece" || roles.pronoun)) return null;
  const from = tokens.indexOf(head) + 1;
  const at = placeAfter(tokens, from, ARTICLES_WIDE);
  const { roles, claimed, text } = tokens[at] ?? {};
  if (!roles || claimed || roles.filler || roles.labor || roles.vagueTime || roles.opinion || roles.hedge)
    return null;
  const isThing = roles.supply !== undefined || (at > from && roles.plain === true) || text === "work";
  return isThing && !roles.service ? { kind: "doubt" } : null;
}

/** "sold half the chairs 60", "donated some lamps": which of them, and how many? */
const someOfThem = ({ tokens }: Clause, { bears: borne }: AnyGrammar): Trouble | null =>
  tokens.some(isSomeOfThem) && !borne.has("any count") ? { kind: "eachOfUnknown" } : null;

function isSomeOfThem({ mention }: Tok, at: number, tokens: readonly Tok[]): boolean {
  if (!mention?.plural) return false;
  let before = at - 1;
  while (/^(?:the|my|our|of|those|these)$/.test(tokens[before]?.text ?? "")) before -= 1;
  return /^(?:half|some|few|several|most|first|part|bunch|lot|lots)$/.test(tokens[before]?.text ?? "");
}

/** "meant 35 not 53": the amount that is denied is none to record. */
function claimDenied({ tokens }: Clause): void {
  tokens.forEach((token, at) => {
    const next = tokens[at + 1];
    if (token.text === "not" && next && MEASURES.has(next.kind)) claim(token, next);
  });
}

function fill(made: Draft, grammar: AnyGrammar, clause: Clause): Trouble | null {
  // What is wrong with the day is told, but the rest is filled in: each day that it may be is offered with it.
  const ofDay = made.dated ? fillDay(made, grammar, clause) : null;
  for (const field of grammar.fields) {
    if (!hasCue(field.cues, clause) || made.fields[field.name] !== undefined) continue;
    const trouble = fillField(made, field, clause);
    if (trouble) return ofDay && ofDay.kind !== "whichDay" ? ofDay : trouble;
  }
  return ofDay;
}

function fillField(made: Draft, { name, fill: take }: Field, clause: Clause): Trouble | null {
  const filled = take(clause);
  if (!filled) return null;
  if ("trouble" in filled) return filled.trouble;
  if (filled.several) made.takesSeveral = true;
  if (filled.follows) made.takesBefore = true;
  else made.fields[name] = filled.value;
  if (filled.each) made.fields["each"] = true;
  if (filled.pending) made.eachOf = name;
  return null;
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

/** "31.7.5" */
const isSlippedNumber = ({ kind, text, unknown }: Tok): boolean =>
  kind === "word" && unknown === true && /^[\d.]+$/.test(text) && isUnreadNumber(text);

function noVerbTrouble(clause: Clause): Trouble {
  const { signs } = clause;
  const meaningful = clause.tokens.filter((token) => !(token.kind === "mark" || token.roles.filler));
  if (!signs.has("number") && clause.tokens.some(isSlippedNumber)) return { kind: "unreadNumber" };
  if (signs.has("loan") && signs.has("number")) return { kind: "loanAlone" };
  if (signs.has("supply") && clause.tokens.some(({ text }) => TAKEN_BACK.has(text)))
    return { kind: "moneyBack" };
  if (signs.has("piece") && signs.has("number"))
    return { kind: signs.has("labor") ? "timeOrCost" : "noVerb" };
  if (meaningful.length === 1 && meaningful[0]!.kind === "amount") return { kind: "loneNumber" };
  return { kind: "unknown" };
}
