import { readMessage } from "../../notes/read.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { couldOf, isFor, isWholeNote } from "../../notes/unclear.ts";
import { FROM_SOMEBODY, OUTING, SELLS_USED, STAYS_THERE } from "../../notes/words/places.ts";
import { TRAITS } from "../../notes/words/traits.ts";
import type { Looking } from "../decision.ts";
import { here } from "../pieces/fits.ts";
import { matchMention } from "../pieces/match.ts";
import { mentionsOf } from "../pieces/mentioned.ts";

/**
 * "walnut bench, church sale, 20", "stool 5 off a lady": what has no verb, and stands beside where one buys, was bought
 * where nothing like it is on the books, that could be listed or sold. It is read once more with its verb, and taken so where all of it
 * is a purchase then; null where it is not.
 */
export function boughtThere(
  text: string,
  readings: readonly Reading[],
  { books, today }: Looking,
): readonly Reading[] | null {
  if (!readings.some(isFromThere) || STAYS_THERE.test(text)) return null;
  const isNew = (mention: Mention): boolean =>
    (mention.traits ?? []).every((trait) => LISTED.has(trait)) &&
    /^(?:none|unfit)$/.test(
      matchMention({ name: mention.name ?? "", count: mention.count ?? 1 }, books, here, new Set()).kind,
    );
  const bought = readMessage(`bought ${text.replace(OUTING, "")}`, today);
  const isNewBuy = (one: Reading): boolean =>
    one.kind === "buy" && isWholeNote(one) && mentionsOf(one).every(isNew);
  return bought.length >= readings.length && bought.every(isNewBuy) ? bought : null;
}

const isFromThere = (reading: Reading): boolean =>
  isFor(reading, "noVerb")
    ? FROM_SOMEBODY.test(reading.text) ||
      couldOf(reading).some((one) => one.kind === "buy" && SELLS_USED.test(one.source ?? ""))
    : (isFor(reading, "anotherPerson") || isFor(reading, "cutOrPrice")) && FROM_SOMEBODY.test(reading.text);

/** "spotted armoire 120 estate sale": a word of no list may be a verb. */
const LISTED: ReadonlySet<string> = new Set(TRAITS);
