import type { Day } from "../calendar.ts";
import type { Clause, Tok } from "./clause.ts";
import type { Trace } from "./rows/trace.ts";
import { signsOf } from "./tokens/signs.ts";

/** A line, or a part of it, on its way to readings: what is told, where it stands, and the day it was told on. */
export interface Told {
  /** Its words as typed. */
  text: string;
  /** Which line of its message it is. */
  line: number;
  today: Day;
  /** The whole line as typed, and where each of its words stands in it. */
  typed: string;
  spans: readonly { start: number; end: number }[];
  /** Where the rows that fire are told, of a reading that somebody asked about. */
  trace?: Trace[] | undefined;
}

/** What is read by the way, or once more: no row of it is told to the trace. */
export const untraced = (told: Told): Told => (told.trace ? { ...told, trace: undefined } : told);

/** The words of some of a line's tokens, as typed. */
export function typedText(tokens: readonly Tok[], { typed, spans }: Told): string {
  return typed.slice(spans[tokens[0]!.from]!.start, spans[tokens.at(-1)!.to - 1]!.end);
}

/** Some of a line's tokens as a clause of their own. */
export function clauseOf(tokens: Tok[], told: Told): Clause {
  const { typed: line, spans, today } = told;
  return { tokens, text: typedText(tokens, told), line, spans, signs: signsOf(tokens), today };
}
