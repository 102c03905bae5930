import type { Mark } from "./marks.ts";
import type { Flag, Senses } from "./phrases.ts";
import { type Cue, cues } from "./words/cues.ts";

/*
 * What may be asked of the words around a word, for the table of `meant-beside.ts`.
 */

/** A word and those around it. */
export interface Beside {
  marks: readonly Mark[];
  at: number;
  mark: Mark;
  before: Mark | undefined;
  next: Mark | undefined;
  /** The first word of the question that says something. */
  first: string;
}

/** One word turned: which, beside what, and into what; `unknown` is a word that nobody knows there. */
export interface Turn {
  of: RegExp;
  when(beside: Beside): boolean;
  as: Partial<Omit<Senses, "flags">> & { flags?: readonly Flag[]; text?: string; unknown?: true };
}

/** What may be counted of pieces. */
export const OF_COUNTS: readonly Cue[] = ["bought", "sold", "finished", "listed", "unsold"];

/** What is done to pieces. */
export const OF_DEEDS: readonly Cue[] = cues(
  "sold finished listed started returned kept given scrapped traded",
);

const OPENERS: ReadonlySet<string> = new Set(
  "hey hi hello yo ok okay so and well um uh hm hmm oh please pls also but then bot now remind tell me let know lemme".split(
    " ",
  ),
);

/** The first word of some marks that says something. */
export function firstOf(marks: readonly Mark[]): string {
  for (const { text } of marks) for (const word of text.split(" ")) if (!OPENERS.has(word)) return word;
  return "";
}

/** Whether a word has one of these cues. */
export const has = (mark: Mark | undefined, ...cues: readonly Cue[]): boolean =>
  mark?.senses.cues.some((cue) => cues.includes(cue)) ?? false;
/** Whether the ledger knows a word as one of a dimension. */
export const owns = (mark: Mark | undefined, dimension: string): boolean =>
  mark?.senses.own.some((own) => own.dimension === dimension) ?? false;
/** Whether a word speaks of loans. */
export const isOfLoans = (mark: Mark): boolean => has(mark, "loan") || /\bloans?\b/.test(mark.text);
/** Whether a word is a thing that is bought for the work. */
export const isBought = (mark: Mark): boolean =>
  mark.senses.thing?.supply !== undefined || owns(mark, "what");
/** Whether a word is a stream of other income. */
export const isStream = (mark: Mark | undefined): boolean =>
  mark?.senses.thing?.stream !== undefined || owns(mark, "stream");
/** Whether a word is other income, or a stream of it. */
export const isIncome = (mark: Mark | undefined): boolean => isStream(mark) || has(mark, "income");
/** Whether a word is somebody who may pay. */
export const isSomebody = (mark: Mark): boolean =>
  /\b(?:i|we|who|how|people|buyers?)\b/.test(mark.text) || owns(mark, "buyer") || owns(mark, "person");
/** Whether the word before is one of these. */
export const follows = (beside: Beside, words: RegExp): boolean => words.test(beside.before?.text ?? "");
/** Whether what is made is asked for. */
export const isMade = ({ marks }: Beside): boolean =>
  marks.some((mark) => has(mark, "earn", "net", "everything") || /\ball (?:told|in)\b/.test(mark.text)) ||
  isMonthAlone(marks);

/** "How much in october counting tips": nothing is asked but how much of a stretch of time. */
function isMonthAlone(marks: readonly Mark[]): boolean {
  return (
    marks.some(({ period }) => period !== undefined) &&
    marks.some((mark) => has(mark, "money")) &&
    marks.every((mark) => {
      const { flags, link, cues } = mark.senses;
      return (
        mark.period !== undefined ||
        has(mark, "money") ||
        isIncome(mark) ||
        TAKING.test(mark.text) ||
        (cues.length === 0 && (flags.size > 0 || link !== undefined))
      );
    })
  );
}
/** Whether a word joins two things or holds them against each other. */
export const isJoining = ({ senses: { flags } }: Mark): boolean =>
  flags.has("or") || flags.has("and") || flags.has("compare") || flags.has("than");

/** Says that something is taken in. */
export const TAKING = /^(?:including|counting|include|adding in|plus|with)$/;
/** "Tips too", "workshops thrown in": what stands behind takes it in as well. */
export function isTakenIn({ marks, at }: Beside): boolean {
  return /^(?:too|as well|included|thrown in|added in|counted in|factored in|figured in|and all|also)$/.test(
    [marks[at + 1]?.text, marks[at + 2]?.text].slice(0, marks[at + 1]?.text === "and" ? 2 : 1).join(" "),
  );
}

/** Says that a thing follows. */
export const ARTICLE = /(?:^| )(?:the|an?|my|our)$/;

/** "Paint and hinges and all": whether so many things bought lead up to "and all" at the end. */
export function isAndAll({ marks, at }: Beside): boolean {
  const end = marks.length - 2;
  if (marks[end]?.text !== "and" || marks[end + 1]?.text !== "all") return false;
  return marks.slice(at, end).every((mark) => isBought(mark) || mark.senses.flags.has("and"));
}

/** Only a stretch of time and small words follow. */
export function endsHere({ marks, at }: Beside): boolean {
  return marks
    .slice(at + 1)
    .every(
      ({ period, senses }) =>
        period !== undefined ||
        senses.link !== undefined ||
        (senses.flags.has("generic") && senses.cues.length === 0),
    );
}

/** "Which lamp made more": nothing stands beside what is asked of. */
export function isOfOne(beside: Beside): boolean {
  // "Which loan have i paid more interest on"
  const isFigure = (beside.next?.senses.cues.length ?? 0) > 0;
  const isEnd = endsHere(beside) || (isFigure && endsHere({ ...beside, at: beside.at + 1 }));
  return /^(?:which|who)$/.test(beside.first) && isEnd && !beside.marks.some(isJoining);
}
