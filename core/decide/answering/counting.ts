import { show } from "../../money.ts";
import { readBareCount, readBareMention, readBareMoney } from "../../notes/bare.ts";
import type { Mention, Reading } from "../../notes/reading.ts";
import { FOR_EACH, FOR_WHICH, SO_MANY_FOR } from "../../notes/words/replies.ts";
import { type Ask, type Choice, type Effect, NEVER_MIND } from "../decision.ts";
import { mentionLabel } from "../pieces/mention-words.ts";
import { mentionsOf } from "../pieces/mentioned.ts";

/** More pieces than this in answer to "How many?" are rather a price. */
const COUNT_SURE_MAX = 12;

/** Answers whose number may be another thing than what was asked for: asked once more, with both. */
export function doubtedAnswer(reading: Reading, ask: Ask, text: string): Effect | null {
  if (ask.wants === "what") return forPiece(reading, ask, text);
  if (ask.wants !== "count") return null;
  return (
    countAndPrice(reading, ask, text) ?? eachPrice(reading, ask, text) ?? countOrPrice(reading, ask, text)
  );
}

/** "3 for 24": both at once. */
function countAndPrice(reading: Reading, ask: Ask, text: string): Effect | null {
  const [, count, price] = SO_MANY_FOR.exec(text) ?? [];
  const counted = count && reading.missing?.includes("price") ? withCount(reading, count) : null;
  const cents = price ? readBareMoney(price) : null;
  if (!counted || cents === null || ask.first) return null;
  return { kind: "settle", change: { pieces: counted, price: cents, missing: [] } as Partial<Reading> };
}

/** "6 each": where the whole price is known it gives the count, else the count is still wanted. */
function eachPrice(reading: Reading, ask: Ask, text: string): Effect | null {
  if (!FOR_EACH.test(text) || ask.first) return null;
  const one = readBareMoney(text.replace(FOR_EACH, ""));
  const mentions = mentionsOf(reading);
  const [only] = mentions;
  if (one === null || one === 0 || !only || mentions.length > 1) return null;
  const whole = "price" in reading && !reading.each ? reading.price : undefined;
  if (whole === undefined) {
    const missing = reading.missing?.filter((field) => field !== "price") ?? [];
    return { kind: "settle", change: { price: one, each: true, missing } as Partial<Reading> };
  }
  const count = whole / one;
  const counts =
    Number.isInteger(count) && count > 1 ? [countChoice(reading, count, `at ${show(one)} each`)] : [];
  return {
    kind: "ask",
    ask: { ...ask, prompt: `${show(one)} each. How many is that?`, choices: [...counts, NEVER_MIND] },
  };
}

/** "24" to "How many stools?" that cost 24: the count, or the price said again? */
function countOrPrice(reading: Reading, ask: Ask, text: string): Effect | null {
  const count = readBareCount(text);
  const mentions = mentionsOf(reading);
  if (count === null || mentions.length !== 1 || ask.first || readBareMention(text)?.name) return null;
  const price = "price" in reading ? reading.price : undefined;
  const isPrice = price === count * 100;
  if (!isPrice && (price !== undefined || count <= COUNT_SURE_MAX)) return null;
  const paid: Choice[] = isPrice
    ? []
    : [
        {
          label: `${show(count * 100)} for all of them`,
          effect: {
            kind: "settle",
            change: {
              price: count * 100,
              missing: reading.missing?.filter((field) => field !== "price") ?? [],
            } as Partial<Reading>,
          },
        },
      ];
  const prompt = isPrice
    ? `${show(price)} is what they cost. How many were there?`
    : `Is ${count} the count?`;
  return {
    kind: "ask",
    ask: { ...ask, prompt, choices: [countChoice(reading, count), ...paid, NEVER_MIND] },
  };
}

function countChoice(reading: Reading, count: number, more = ""): Choice {
  const pieces = mentionsOf(reading).map((mention) =>
    mention.count === undefined ? { ...mention, count } : mention,
  );
  const missing = reading.missing?.filter((field) => field !== "count") ?? [];
  const label = [pieces.map(mentionLabel).join(" and "), more].filter((part) => part !== "").join(" ");
  return {
    label,
    words: [String(count)],
    effect: { kind: "settle", change: { pieces, missing } as Partial<Reading> },
  };
}

/** "the desk" to "What was it spent on?" is the piece; what it was is still to be said. */
function forPiece(reading: Reading, ask: Ask, text: string): Effect | null {
  const mention = readBareMention(text.replace(FOR_WHICH, ""));
  if (!mention?.name || ("pieces" in reading && reading.pieces)) return null;
  const pieces = [{ ...mention, count: mention.count ?? 1 }];
  const missing = reading.missing?.filter((field) => field !== "what") ?? [];
  const stuff = { what: "stuff", category: "materials", pieces, missing } as Partial<Reading>;
  const prompt = `For the ${mention.name}. What was it?`;
  const choices = [
    { label: `Stuff for the ${mention.name}`, effect: { kind: "settle" as const, change: stuff } },
    NEVER_MIND,
  ];
  return { kind: "ask", ask: { ...ask, prompt, choices }, change: { pieces } as Partial<Reading> };
}

/** The mentions whose number was not said, now with it; "2 lamps" is no number of stools. */
export function withCount(reading: Reading, text: string): Mention[] | null {
  const count = readBareCount(text);
  const named = readBareMention(text)?.name;
  const mentions = mentionsOf(reading);
  const isOther = named !== undefined && mentions.every(({ name }) => name !== named);
  if (count === null || count < 1 || isOther) return null;
  return mentions.map((mention) => (mention.count === undefined ? { ...mention, count } : mention));
}
