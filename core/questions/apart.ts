import type { Desk } from "./desk.ts";
import { askedApart } from "./lexicon.ts";
import { type Mark, marksOf } from "./marks.ts";
import type { Parts } from "./parts.ts";
import { partsOf } from "./sorting.ts";
import { opensWithAsking } from "./sounds.ts";
import { vocabularyFor } from "./vocabulary.ts";
import { type Cue, cues } from "./words/cues.ts";

/*
 * Several questions in one message: "what did i make in june and how many did i sell". Each is given what it shares
 * with the other: its days, and the thing that its "it" means.
 */

/** The questions of a message, each whole by itself; null where it is one question. */
export function questionsApart(text: string, desk: Desk): readonly string[] | null {
  const said = askedApart(text);
  if (!said?.every(opensWithAsking)) return null;
  const read = (part: string): Parts => partsOf(marksOf(part, vocabularyFor(desk), desk.today));
  const parts = said.map(read);
  // "How many chairs and how many tables did i sell": the first has no verb of its own.
  if (parts.some(isHalf)) return null;
  const [first] = parts as [Parts, ...Parts[]];
  const isOrdered = first.orders.length > 0;
  const whole: string[] = [];
  for (const [at, part] of parts.entries()) {
    const named = at === 0 ? said[0]! : withThing(said[at]!, part, first);
    if (named === null) return null;
    const days = part.periods.length > 0 ? "" : daysFor(part, parts);
    // "Which month was best and what did i make": in that one, which nothing says.
    if (at > 0 && isOrdered && part.items.length + part.periods.length === 0) return null;
    whole.push(`${named.replace(/[\s?.!,]+$/, "")}${days}`);
  }
  return whole;
}

/** So many of a thing, and nothing done to them. */
function isHalf({ cues, items, periods, said }: Parts): boolean {
  const isAmount = [...cues.keys()].every((cue) => cue === "howMany");
  return (
    isAmount && cues.size > 0 && items.length > 0 && periods.length === 0 && !/\b(?:are|is)\b/.test(said)
  );
}

const DONE = /\b(?:did|was|were|made|spent|gone|sold|bought|earned|drove|worked|paid|came|went|brought|on)\b/;

/** The days that another of the questions names, where this one tells of what was done as well. */
function daysFor({ said, first }: Parts, all: readonly Parts[]): string {
  if (!DONE.test(said) || /^(?:when|where|who)/.test(first)) return "";
  const dated = all.filter(({ periods }) => periods.length > 0);
  const [only, more] = dated;
  if (!only || more || only.periods.length > 1) return "";
  const { at, period } = only.periods[0]!;
  // "As of june" tells how it stood.
  if (period.moment) return "";
  const lead = only.marks[at - 1];
  const isLed = lead?.senses.link !== undefined && lead.text.split(" ").length === 1;
  return ` ${isLed ? `${lead.text} ` : ""}${only.marks[at]!.text}`;
}

const IT = /\b(?:it|them|those|they|these)\b/i;

const THEY = /\b(?:they|those|these)\b/i;

/**
 * With the first question's one thing for its "it", or for what it leaves out: "how many benches did i buy and how many
 * did i sell"; null where there is none, it may be somebody, or the second may be asked of all there are.
 */
function withThing(question: string, own: Parts, { items, first, cues }: Parts): string | null {
  const [only, more] = items;
  // "How many sold since may and what did they bring in": those sold.
  if (!only && cues.has("howMany") && cues.has("sold") && !own.cues.has("price") && THEY.test(question))
    return question.replace(THEY, "the pieces sold");
  const isOfPieces = items.some(({ mark }) => mark.number !== undefined || mark.senses.thing?.noun);
  const isGeneric = own.marks.some(({ senses }) => senses.flags.has("generic"));
  if (!IT.test(question)) {
    // "How much of the car payments was interest and how much principal"
    const loan = only?.mark.senses.own.find(({ dimension }) => dimension === "loan");
    if (loan && !more && own.items.length === 0 && (own.cues.has("principal") || own.cues.has("interest")))
      return `${question} on the ${loan.value}`;
    if (!isOfPieces || isGeneric || own.items.length > 0) return question;
    const isMany = /^how many (?:did|have|sold|were|are|got|of|do)\b/i.test(question);
    return isMany && !more && only!.mark.senses.thing?.plural
      ? question.replace(/^how many(?: of)?/i, `how many ${only!.mark.text}`)
      : null;
  }
  if (!only || more || /^who/.test(first)) return null;
  const { thing } = only.mark.senses;
  if (only.mark.number !== undefined) return question.replace(IT, only.mark.text);
  const isNamed = thing?.noun !== undefined || thing?.supply !== undefined;
  return isNamed ? question.replace(IT, `${thing?.plural ? "" : "the "}${only.mark.text}`) : null;
}

/** What a figure is asked by. */
const FIGURES: readonly Cue[] = cues(
  "minutes miles fees cost earn net revenue sale spent price asking hourly margin roi interest principal",
);

/** What is done to pieces, each counted by itself: "how many did i buy and sell". */
const DEEDS: readonly Cue[] = ["sold", "bought", "listed", "finished", "started"];

/** "What did i buy and sell in june": each listed by itself. */
const LISTED =
  /^(?:so |and )?(?:(?:what|whatd|whatve|show me what|list what|everything)(?: all)? (?:did|have|all|got|was|were|i|we|ive|weve)\b|(?:bought|sold|finished|listed|started) and \w+)/;

/** "Hours and profit on the bench": each figure asked of all the rest, and the last as typed; null where it is one. */
export function figuresApart(
  { marks, cues }: Parts,
  text: string,
): { questions: readonly string[]; last: string } | null {
  const isCounted = cues.has("howMany") && !/\b(?:are|is|still|now)\b/.test(text);
  const isOfDeeds = (isCounted || LISTED.test(text.toLowerCase())) && !FIGURES.some((cue) => cues.has(cue));
  const asked = isOfDeeds ? DEEDS : FIGURES;
  const figureOf = ({ senses, text: said }: Mark, place: number): Cue | undefined => {
    // "Finish and list" are deeds, where a finish may be bought.
    const isThing = senses.thing !== undefined && (asked !== DEEDS || senses.thing.noun !== undefined);
    if (isThing || senses.own.length > 0 || senses.order) return undefined;
    if (said === "list" && place > 0 && asked === DEEDS) return "listed";
    return asked.find((cue) => senses.cues.includes(cue));
  };
  const figures = marks.map(figureOf);
  const at = marks.findIndex(
    ({ senses }, place) =>
      senses.flags.has("and") &&
      figures[place - 1] !== undefined &&
      figures[place + 1] !== undefined &&
      figures[place - 1] !== figures[place + 1],
  );
  if (at < 0) return null;
  // "Sales, profit and fees"
  let from = at - 1;
  while (text.includes(",") && from > 0 && figures[from - 1] !== undefined) from -= 1;
  const run = marks.slice(from, at + 2).filter((_, place) => from + place !== at);
  const others = (kept: Mark): readonly Mark[] =>
    marks.filter((mark, place) => mark === kept || place < from || place > at + 1);
  return {
    questions: run.map((kept) =>
      others(kept)
        .map((mark) => mark.text)
        .join(" "),
    ),
    last: run.at(-1)!.typed,
  };
}
