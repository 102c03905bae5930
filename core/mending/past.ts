import type { Fact } from "../books/facts.ts";

/** What correcting an earlier note may look at beside the books. */
export interface Past {
  /** Who is correcting (member id). */
  person: number;
  /** The message replied to (its root note), where it is a reply. */
  replied: number | null;
  /** The message that this person touched last, by a fact or by a question still open; the one replied to, if any. */
  touched(): number | null;
  /** This person's newest fact that fits, or that of the message replied to. */
  newest(fits?: (fact: Fact) => boolean): Fact | undefined;
  /** Whether a fact was noted today. */
  isToday(fact: Fact): boolean;
  /** What was noted last today, or by the message replied to. `isLast`: with nothing asked since. */
  before(isLast?: boolean): Fact | undefined;
  /** The first line that is said of a fact. */
  echo(fact: Fact): string;
  /** Everything that was said of a fact. */
  wordsOf(fact: Fact): string[];
  nameOf(author: number): string;
}
