import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";

/** What a slot gives: its value, a trouble that makes the clause unclear, or nothing. */
export type Filled =
  | { value: unknown; each?: true; follows?: true; several?: true; pending?: true; uncounted?: true }
  | { trouble: Trouble }
  | null;

export type Fill = (clause: Clause) => Filled;

export const trouble = (kind: Trouble["kind"]): { trouble: Trouble } => ({ trouble: { kind } });
