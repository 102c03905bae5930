import type { Fact } from "../../books/facts.ts";
import { amountText } from "../../money.ts";
import { SHARE_OF_THAT, SHARES } from "../../notes/words/money.ts";
import type { Looking } from "../decision.ts";

/** What came in, of which a part may go on. */
const CAME_IN: ReadonlySet<Fact["kind"]> = new Set(["income", "sell", "collect"]);

/**
 * "sent half of that to school" behind what came in: the message with the sum that this comes to; null where nothing came in
 * last, or no whole sum comes of it.
 */
export function shareSaid(text: string, { past }: Looking): string | null {
  const share = SHARE_OF_THAT.exec(text);
  // "and the other half to school" behind the first half.
  const fact = share?.[2] ? past?.newest(cameIn) : share ? past?.before() : undefined;
  if (!share || !fact?.amount || !cameIn(fact) || !past!.isToday(fact) || isOwed(fact)) return null;
  const [parts, of] = SHARES[(share[1] ?? share[2])!.toLowerCase().replace(/^(?:a|one)[ -]/, "")]!;
  const sum = (fact.amount * parts) / of;
  return Number.isInteger(sum) ? text.replace(share[0], amountText(sum)) : null;
}

const cameIn = ({ kind }: Fact): boolean => CAME_IN.has(kind);

const isOwed = (fact: Fact): boolean => fact.kind === "sell" && Boolean(fact.data.owed);
