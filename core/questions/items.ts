import type { Mark } from "./marks.ts";
import type { Limited } from "./parts.ts";
import { type Cue, cues } from "./words/cues.ts";
import { COUNTABLE, UNIT_DAYS, UNIT_MINUTES } from "./words/plain.ts";

/** Whether an item stands here; a word that is a cue or a filler as well is one only where it is likelier. */
export function isItem(marks: readonly Mark[], at: number): boolean {
  const { senses, number } = marks[at]!;
  if (number !== undefined) return true;
  if (!senses.thing && senses.own.length === 0) return false;
  const { flags, cues, order } = senses;
  if (order && senses.thing?.trait)
    return marks.slice(at + 1, at + 3).some((next) => next.senses.thing?.noun);
  if (flags.has("generic")) return false;
  if (flags.has("filler")) {
    // "Can you check the profit" pays by no check.
    const isAsked = /\b(?:you|u|ya|to|please|pls|plz|lets|could|can)$/.test(marks[at - 1]?.text ?? "");
    return at > 0 && !isAsked && (Boolean(senses.thing?.method) || senses.own.length > 0);
  }
  if (senses.link || flags.has("negation")) return senses.own.length > 0;
  if (cues.length === 0 || cues.includes("loan")) return !cues.includes("loan");
  // "What did the help cost" asks for no help.
  const isHelp = cues.includes("help") && marks.some((other) => other.senses.cues.includes("cost"));
  return (
    (isSpending(marks) || isHelp) &&
    Boolean(
      senses.thing?.supply ??
        senses.own.some(({ dimension }) => dimension === "what" || dimension === "category"),
    )
  );
}

function isSpending(marks: readonly Mark[]): boolean {
  return marks.some(({ senses }) => senses.cues.includes("spent") || senses.cues.includes("paid"));
}

/** What the word behind an amount makes of it. */
export function unitOf({ text, senses }: Mark): { name: NonNullable<Limited["unit"]>; times: number } | null {
  const [word = ""] = text.split(" ");
  const minutes = senses.cues.includes("minutes") ? UNIT_MINUTES[word] : undefined;
  if (minutes) return { name: "minutes", times: minutes };
  if (senses.cues.includes("miles")) return { name: "miles", times: 1 };
  const days = UNIT_DAYS[word];
  if (days) return { name: "days", times: days };
  return senses.thing?.plural || COUNTABLE.has(text) ? { name: "count", times: 1 } : null;
}

/** Words behind which an amount is a price. */
const PRICES: readonly Cue[] = cues("soldFor sold gone got price bought paid asking listed");

/** Things are looked for, or something is asked of them. */
const ASKS_WHICH =
  /^(?:so |and |ok |hey )?(?:what|which|who|when|where|how|did|has|have|was|were|is|are|any|anything|show|list|profit|margin|roi|hours|cost|expenses|spending)\b|\b(?:one|ones|thing|things|piece|pieces|stuff|everything|anything|profit) (?:that|which|i|we|sold|went|bought)\b/;

/** What might be is no price that was. */
const SUPPOSES = /\b(?:if|would|could|should|will|can|offer(?:s|ed|ing)?|suppose|say|lets?|gonna|want)\b/;

/** "The one which sold for 240", "what did i buy for 60": just that price, where nothing is supposed or told. */
export function isPriceAt(marks: readonly Mark[], at: number): boolean {
  const said = marks.map(({ text }) => text).join(" ");
  if (!ASKS_WHICH.test(said) || SUPPOSES.test(said)) return false;
  const isPriced = (mark: Mark | undefined): boolean =>
    PRICES.some((cue) => mark?.senses.cues.includes(cue) === true);
  const before = marks[at - 1];
  // "What did i pay 13 for"
  if (marks[at + 1]?.text === "for" && /^(?:pa(?:y|id)|g[eo]t)\b/.test(before?.text ?? "")) return true;
  // "The 240 sale", "expenses of 18.25"
  if (marks[at + 1]?.text === "sale" && /(?:^| )(?:the|my|that)$/.test(before?.text ?? "")) return true;
  const sum = marks[at - 2]?.senses.cues ?? [];
  if (before?.text === "of" && sum.some((cue) => /^(?:spent|sale|income|loanPaid)$/.test(cue))) return true;
  if (/(?:^| )at$/.test(before?.text ?? "")) return isPriced(before) || isPriced(marks[at - 2]);
  return /(?:^| )for$/.test(before?.text ?? "") && marks.slice(0, at).some(isPriced);
}
