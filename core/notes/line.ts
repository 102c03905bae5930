import type { Day } from "../calendar.ts";
import { withAsides } from "./asides.ts";
import type { Clause, Tok } from "./clause.ts";
import type { Cut } from "./clauses.ts";
import { cutsOf } from "./clauses.ts";
import type { Sign } from "./grammar.ts";
import type { Draft } from "./interpret.ts";
import { interpret, questionReading, readingOf, settleEach, unclearDraft } from "./interpret.ts";
import { withMentions } from "./mentions.ts";
import { withNames } from "./names.ts";
import { isQuestion } from "./questions.ts";
import type { Mention, Reading } from "./reading.ts";
import { sharedOver } from "./shared.ts";
import { HINTS, signsOf } from "./signs.ts";
import type { Word } from "./text.ts";
import { wordsOf } from "./text.ts";
import { meantBy, tokensOf } from "./tokens.ts";
import { isBotWord, unclear } from "./unclear.ts";
import { language } from "./verbs.ts";

/** Where a clause's tokens stand in the line as typed. */
interface Typed {
  line: string;
  spans: readonly { start: number; end: number }[];
}

function clauseOf(tokens: Tok[], { line, spans }: Typed, today: Day): Clause {
  const first = tokens[0]!;
  const last = tokens.at(-1)!;
  const text = line.slice(spans[first.from]!.start, spans[last.to - 1]!.end);
  return { tokens, text, line, spans, signs: signsOf(tokens), today };
}

/** "1. sold desk 90": the number of a list's item is no amount. */
function withoutBullet(words: Word[], line: string): Word[] {
  if (words[0]?.kind !== "digits" || words[1]?.kind !== "mark") return words;
  return /^\s{0,20}\d{1,3}[.)]\s{1,20}\p{L}/u.test(line) ? words.slice(2) : words;
}

/** The readings of one line; none for a blank one. */
export function readLine(line: string, today: Day, index: number): Reading[] {
  const text = line.trim();
  if (text === "") return [];
  const { lexer, facts } = language();
  const typedWords = withoutBullet(wordsOf(line), line);
  const place = { text, line: index };
  if (!typedWords.some((word) => word.kind !== "mark")) return [unclear({ kind: "unknown" }, place)];
  const { words, norms } = meantBy(line, typedWords, lexer);
  if (isBotWord(norms)) return [unclear({ kind: "botWord", instead: ["help"] }, place)];
  const tokens = withNames(withMentions(withWorkClocks(tokensOf(words, norms, lexer))));
  if (takesItselfBack(tokens)) return [unclear({ kind: "range" }, place)];
  const typed: Typed = { line, spans: words };
  if (startsAsQuestion(tokens)) return [questionReading(clauseOf(tokens, typed, today), index)];
  const cuts = cutsOf(withAsides(tokens), facts);
  if (cuts.length > 1 && tokens.some(({ text: said }) => JOKES.has(said)))
    return [unclear({ kind: "denial" }, place)];
  const drafts: Draft[] = [];
  for (const cut of cuts) drafts.push(draftOf(cut, typed, today, drafts.at(-1)));
  return drafts.length > 0 ? finish(drafts, index) : [unclear({ kind: "unknown" }, place)];
}

/** "1:45 sanding the desk" is an hour and three quarters, no time of day. */
function withWorkClocks(tokens: Tok[]): Tok[] {
  if (!tokens.some(({ kind }) => kind === "clock")) return tokens;
  const works = tokens.some(
    (token) => token.roles.labor || token.roles.heads?.some((head) => head.kind === "work"),
  );
  if (!works) return tokens;
  return tokens.map((token) => {
    const clock = token.kind === "clock" ? /^(\d{1,2}):(\d{2})$/.exec(token.text) : null;
    return clock ? { ...token, kind: "duration", minutes: Number(clock[1]) * 60 + Number(clock[2]) } : token;
  });
}

/** Words by which a note takes back what it has just said: nobody can say how much of it. */
const TAKEN_BACK =
  /^(?:(?:no )?i mean|i meant|scratch that|strike that|wait no|no wait|make that|correction)\b/;
const OPENS_TAKEN_BACK = /^(?:no|i|scratch|strike|wait|make|correction)\b/;
/** "bought lamp 12 actually it mightve been 15" */
const DOUBTED =
  /^(?:mightve|mightve been|might have been|may have been|couldve been|could have been|or was it)$/;

/** "bought desk 40 scratch that 45", "2h no 3h on the desk", "sold the hutch i mean the bench 90". */
function takesItselfBack(tokens: readonly Tok[]): boolean {
  let isNoted = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const isValue = token.kind !== "word" && token.kind !== "mark";
    if (isNoted && DOUBTED.test(token.text) && tokens[at + 1]?.kind === "amount") return true;
    if (isNoted && token.kind === "word" && OPENS_TAKEN_BACK.test(token.text)) {
      const ahead = tokens
        .slice(at, at + 3)
        .map(({ text }) => text)
        .join(" ");
      if (TAKEN_BACK.test(ahead)) return true;
      const [before, next] = [tokens[at - 1], tokens[at + 1]];
      const isCount = before?.kind === "amount" && next?.mention?.count !== undefined;
      const isAnother = before?.kind === next?.kind && before?.kind !== "word";
      if (token.text === "no" && (isCount || isAnother)) return true;
    }
    isNoted ||= isValue;
  }
  return false;
}

/** A question runs on to its end, "and" and all, unless a sentence ends within it. */
function startsAsQuestion(tokens: readonly Tok[]): boolean {
  let ended = false;
  for (const token of tokens) {
    if (token.kind === "mark") ended ||= token.text === "." || token.text === "?" || token.text === "!";
    else if (ended && !token.roles.filler) return false;
  }
  return isQuestion(tokens);
}

function draftOf(cut: Cut, typed: Typed, today: Day, before: Draft | undefined): Draft {
  const clause = clauseOf(cut.tokens, typed, today);
  if (!before || !isPaidOnIt(clause, before)) return interpret(clause, cut);
  clause.signs.add("loan");
  const made = interpret(clause, cut);
  const name = before.fields["loan"];
  if (made.kind === "pay" && made.fields["loan"] === undefined && name !== undefined)
    made.fields["loan"] = name;
  return made;
}

const LOAN_KINDS: ReadonlySet<string> = new Set(["statement", "pay", "loan", "terms"]);

/** "statement says 6251.08 on the van loan, paid 200 on it": the loan again. */
function isPaidOnIt({ tokens, signs }: Clause, before: Draft): boolean {
  const isPaid = tokens.some(({ text }) => /^(?:paid|pd|payed|sent|put)$/.test(text));
  return (
    isPaid &&
    LOAN_KINDS.has(before.kind) &&
    signs.has("pronoun") &&
    signs.has("number") &&
    !signs.has("named")
  );
}

/** Settles what clauses take from each other: shared days and sources, "it", and pieces left out. */
function finish(all: readonly Draft[], index: number): Reading[] {
  // Nearly every line is one clause, and has nobody to take from.
  if (all.length === 1) return [readingOf(settledBy(all[0]!, undefined), index)];
  const drafts = withPriceLater(withTopic(withoutChatter(all)));
  sharedOver(drafts);
  let before: Mention[] | undefined;
  let run: Mention[] = [];
  let supposed = false;
  return drafts.flatMap((draft, at) => {
    if (isRepetition(draft, drafts[at - 1])) return [];
    supposed &&= !isNewSentence(drafts[at - 1]!.clause, draft.clause);
    if (supposed) return readingOf(unclearDraft(draft.clause, { kind: "intention" }), index);
    if (isBalanceOfSale(draft, drafts[at - 1]))
      return readingOf(unclearDraft(draft.clause, { kind: "loanAlone" }), index);
    supposed = isSupposition(draft);
    const several = draft.takesSeveral && before?.length === 1 && before[0]!.count === 1;
    const fetched = drafts[at - 1]?.kind === "drive" && draft.kind === "buy";
    const settled = settledBy(draft, several ? run : before, fetched);
    const reading = readingOf(settled, index);
    const named = draft.trouble ? piecesIn(draft.clause) : (reading as { pieces?: Mention[] }).pieces;
    if (Array.isArray(named) && named.length > 0) {
      before = named;
      run = drafts[at - 1]?.kind === draft.kind ? [...run, ...named] : named;
    }
    return reading;
  });
}

/** Words by which a note takes everything back. */
const JOKES = new Set(["jk", "j/k", "kidding", "just kidding", "joking", "just joking", "psych"]);

/** What a clause may hold that is worth a question; without any of it, it is said in passing. */
const MEASURES: readonly Sign[] = [
  ...(["piece", "number", "supply", "loan", "stream", "duration", "miles", "percent", "tax"] as const),
  ...(["clock", "span", "labor"] as const),
];
const NAMES: readonly Sign[] = ["named", "pronoun"];

/** "… and it was raining all day": small talk behind a fact says nothing, and asks for nothing. */
function withoutChatter(drafts: readonly Draft[]): readonly Draft[] {
  const isFact = (draft: Draft): boolean => draft.trouble === undefined;
  if (!drafts.some(isFact)) return drafts;
  return drafts.filter((draft) => isFact(draft) || !isChatter(draft));
}

function isChatter({ trouble, clause }: Draft): boolean {
  if (trouble?.kind !== "unknown" || (clause.signs.hints & HINTS.day) !== 0) return false;
  const isMeasured = MEASURES.some((sign) => clause.signs.has(sign));
  // "it was raining all day"
  if (!isMeasured && /^(?:it|they|that) (?:was|is|were|are)\b|^its /.test(textOf(clause))) return true;
  const isSaid = clause.tokens.some(({ roles }) => roles.hedge || roles.heads?.some((head) => !head.light));
  return !isSaid && !isMeasured && !NAMES.some((sign) => clause.signs.has(sign));
}

const textOf = ({ tokens }: Clause): string =>
  tokens
    .filter((token) => token.kind !== "mark" && !/^(?:and|so|but|then)$/.test(token.text))
    .map(({ text }) => text)
    .join(" ");

/** "hutch: sanding 1h, paint 12": every clause behind the colon is about the hutch. */
function withTopic(drafts: readonly Draft[]): readonly Draft[] {
  const [first, ...others] = drafts;
  const named = first?.clause.tokens.filter((token) => token.kind !== "mark" && !isFiller(token)) ?? [];
  const last = first?.clause.tokens.at(-1);
  if (!first?.trouble || !last || !named.every(({ kind }) => kind === "piece")) return drafts;
  const { line, spans } = first.clause;
  if (!/^\s*:/.test(line.slice(spans[last.to - 1]!.end))) return drafts;
  for (const draft of others) {
    if (draft.trouble || !ABOUT_PIECES.has(draft.kind) || draft.fields["pieces"] !== undefined) continue;
    draft.fields["pieces"] = named.map(({ mention }) => ({ ...mention! }));
    draft.takesBefore = false;
  }
  return others;
}

const ABOUT_PIECES: ReadonlySet<string> = new Set([
  ..."spend work start finish list reprice hold fallthrough sell refund retire drive".split(" "),
]);

/** "found a bench at the thrift store and bought it for 6": one purchase, told in two clauses. */
function withPriceLater(drafts: readonly Draft[]): Draft[] {
  const kept: Draft[] = [];
  for (const draft of drafts) {
    const before = kept.at(-1);
    const isPrice = isOpenPurchase(draft, "pieces", "price") && draft.clause.signs.has("pronoun");
    if (before && isPrice && isOpenPurchase(before, "price", "pieces"))
      before.fields = { ...draft.fields, ...before.fields };
    else kept.push(draft);
  }
  return kept;
}

/** A purchase in which one field is said and another is not. */
function isOpenPurchase({ kind, trouble, eachOf, fields }: Draft, open: string, said: string): boolean {
  return (
    kind === "buy" &&
    trouble === undefined &&
    eachOf === undefined &&
    fields[open] === undefined &&
    fields[said] !== undefined
  );
}

/** "wrapped up the highboy, all finished": the same again, and nothing new. */
function isRepetition(draft: Draft, before: Draft | undefined): boolean {
  if (before?.kind !== draft.kind || draft.trouble || before.trouble) return false;
  return Object.entries(draft.fields).every(
    ([field, value]) => field === "how" && value === before.fields[field],
  );
}

/** "desk not sold yet, lowered it to 110": what did not happen names its piece all the same. */
function piecesIn({ tokens }: Clause): Mention[] {
  return tokens.flatMap(({ mention }) => (mention ? [mention] : []));
}

/** "once desk is done list it 140": what follows a condition has not happened either. */
function isSupposition({ trouble, clause }: Draft): boolean {
  const first = clause.tokens.find((token) => token.kind !== "mark" && !isFiller(token));
  return trouble?.kind === "intention" && CONDITIONS.has(first?.text ?? "");
}

const CONDITIONS: ReadonlySet<string> = new Set(["once", "if", "unless", "as soon as", "in case"]);

/** "took 40 deposit on dresser, balance 150 on pickup": a balance of no loan. */
function isBalanceOfSale({ kind, clause }: Draft, before: Draft | undefined): boolean {
  return (
    kind === "statement" && !clause.signs.has("loan") && (before?.kind === "hold" || before?.kind === "sell")
  );
}

const isFiller = ({ roles }: Tok): boolean => roles.filler === true && roles.hedge === undefined;

function isNewSentence(before: Clause, next: Clause): boolean {
  const end = before.spans[before.tokens.at(-1)!.to - 1]!.end;
  return /[.;!]/.test(next.line.slice(end, next.spans[next.tokens[0]!.from]!.start));
}

function settledBy(draft: Draft, before: readonly Mention[] | undefined, fetched = false): Draft {
  // Nothing is bought that was already there: "bought it for 40" still asks what, but for a piece just fetched.
  const leftOut = draft.wantsPieces && draft.fields["pieces"] === undefined;
  if ((draft.takesBefore || leftOut) && before && (draft.kind !== "buy" || fetched)) {
    draft.fields["pieces"] = before.map((mention) => ({ ...mention }));
    draft.follows = true;
  }
  return draft.eachOf === undefined
    ? draft
    : settleEach(draft, draft.follows && before ? before : [], draft.clause);
}
