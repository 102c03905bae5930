import type { Fact } from "../books/facts.ts";

/** What correcting an earlier note may look at beside the books. */
export interface Past {
  /** Who is correcting (member id). */
  person: number;
  /** The message replied to (its root note), where it is a reply. */
  replied: number | null;
  /** The first line that is said of a fact. */
  echo(fact: Fact): string;
  nameOf(author: number): string;
}
