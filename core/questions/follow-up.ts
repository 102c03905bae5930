import { type Desk, type QuestionDesk, withIndex } from "./desk.ts";
import { type Mark, marksOf, WORDS_MAX } from "./marks.ts";
import type { Item, Parts } from "./parts.ts";
import { partsOf } from "./sorting.ts";
import { vocabularyFor } from "./vocabulary.ts";

/*
 * What is asked right behind a question, "and in june?", "what about chairs", "by month": the question before with
 * those words in the place of its own. It is put together as words, so that every sort of question can be followed up,
 * and is then read like any other.
 */

const LEADS =
  /^\s*(?:and|what about|how about|same|also|then|now|ok|but|just|in|for|during|since|only|with|without|not)\b/i;

/** "Is that more than last month", "better than june?", "how does that compare to chairs": the other side. */
const BESIDE_IT =
  /^\s*(?:and |so |ok |but )?(?:(?:is|was|are|were) (?:that|it|this|those|these) (?:any )?(?:more|less|better|worse|higher|lower|up|down)|more|less|better|worse|higher|lower) (?:than|from|on) (?:in |for |on )?(.+?)[?.!\s]*$|^\s*(?:and |so |ok |but )?(?:how does (?:that|it|this) compare (?:to|with)|compared (?:to|with)|vs\.?|versus|against) (?:in |for |on )?(.+?)[?.!\s]*$/i;

/** "More than june" may be a question of its own: it says of nothing that it is more. */
const OF_THAT = /\b(?:that|it|this|those|these|compared|vs|versus|against)\b/i;

/** The question before with what it is held against; "last month" behind another one is the month before that. */
function besideIt(before: string, text: string, desk: Desk): string | null {
  const [, than, against] = BESIDE_IT.exec(text) ?? [];
  const other = than ?? against;
  if (other === undefined) return null;
  const isNamed = read(before, desk).periods.some(({ period }) => !period.name.endsWith("so far"));
  const meant = isNamed ? other.replace(/^(?:the )?(?:last|previous) month$/i, "the month before") : other;
  return `${before.replace(/[?.!\s]+$/, "")} vs ${meant}`;
}

/**
 * Whether words open like something asked right behind a question; "worst?" behind an order asks for its other end.
 */
export function soundsFollowing(text: string, before: string, on: QuestionDesk): boolean {
  if (LEADS.test(text) || (BESIDE_IT.test(text) && OF_THAT.test(text))) return true;
  const desk = withIndex(on);
  const { orders, marks } = read(text, desk);
  return orders.length > 0 && marks.length === orders.length && read(before, desk).orders.length > 0;
}

/** Everything that the words may ask behind the question before, the likeliest first. */
export function followUps(before: string, text: string, on: QuestionDesk): string[] {
  const desk = withIndex(on);
  const beside = besideIt(before, text, desk);
  if (beside !== null) return [beside];
  const whole = followedBy(before, text, desk);
  const more = LEADS.test(text)
    ? text
        .trim()
        .replace(/^(?:and|also|but|ok|now|then|just)\b/i, "")
        .replace(/[?.!]+$/, "")
        .trim()
    : "";
  if (more === "") return whole === null ? [] : [whole];
  // "And gas?" behind what september made: another figure of the same days.
  const { marks, periods } = read(before, desk);
  const days = periods.map(({ at }) => marks[at]!.typed).join(" ");
  const others = [
    /^with|^without/.test(more) ? `${before.replace(/[?.!]+$/, "")} ${more}` : "",
    days && whole !== null ? `${more} ${days}` : "",
  ];
  return [...(whole === null ? [] : [whole]), ...others.filter((question) => question !== "")];
}

/** The words that mean nothing by themselves beside what is put in. */
const BESIDE: ReadonlySet<string> = new Set(
  "and what about how same also then now ok okay but just for in on with by with only thing question the a of to from per is it was so instead".split(
    " ",
  ),
);

/** The question before with what follows put in; null where the words are more than that. */
function followedBy(before: string, text: string, desk: Desk): string | null {
  const next = read(text, desk);
  const { items, periods, groups, orders } = next;
  if (items.length + periods.length + groups.length + orders.length === 0 || !isOnlyThese(next)) return null;
  const first = read(before, desk);
  const said = first.marks.map(({ typed }) => typed);
  for (const { at } of periods) put(said, first.periods[0]?.at, next.marks[at]!.typed);
  if (periods.length > 0) for (const { at } of first.periods.slice(1)) said[at] = "";
  for (const item of items) {
    // Of a share the part is another: "what percent was gas", "and storage?".
    const part = first.cues.has("share") ? first.items.at(-1) : undefined;
    const place = first.items.find((other) => isSameSort(other, item)) ?? part;
    put(said, place?.at, place ? typedOf(item, next) : `${item.link ?? "on"} ${typedOf(item, next)}`);
  }
  for (const { at } of groups) {
    const place = first.groups.find(({ parted }) => parted);
    put(said, place?.at, place ? next.marks[at]!.typed : `by ${next.marks[at]!.typed}`);
  }
  for (const { at } of orders) put(said, first.orders[0]?.at, next.marks[at]!.typed);
  const whole = said.filter((word) => word !== "").join(" ");
  return whole.split(" ").length > WORDS_MAX ? null : whole;
}

function read(text: string, desk: Desk): Parts {
  return partsOf(marksOf(text, vocabularyFor(desk), desk.today));
}

/** In the place of what stood there, or at the end. */
function put(said: string[], at: number | undefined, words: string): void {
  if (at === undefined) said.push(words);
  else said[at] = words;
}

function typedOf({ mark, not }: Item, { marks }: Parts): string {
  const typed = marks.find(({ at }) => at === mark.at)!.typed;
  return not ? `not ${typed}` : typed;
}

function isOnlyThese({ marks, items, periods, groups, orders, unknown, adrift, leads }: Parts): boolean {
  if (unknown.length > 0 || adrift) return false;
  const taken = new Set([...leads, ...[...items, ...periods, ...groups, ...orders].map(({ at }) => at)]);
  return marks.every(
    (mark, at) => taken.has(at) || mark.text.split(" ").every((word) => BESIDE.has(word)) || isNegation(mark),
  );
}

const isNegation = ({ senses }: Mark): boolean => senses.flags.has("negation");

/** Both are pieces, both things bought, both people …: one may stand where the other stood. */
function isSameSort(a: Item, b: Item): boolean {
  const sorts = sortsOf(b);
  return [...sortsOf(a)].some((sort) => sorts.has(sort));
}

function sortsOf({ mark: { number, senses } }: Item): Set<string> {
  const { thing, own } = senses;
  const sorts = own.map(({ dimension }): string => dimension);
  if (number !== undefined || thing?.noun !== undefined) sorts.push("kind");
  if (thing?.trait) sorts.push("trait");
  if (thing?.supply !== undefined) sorts.push("what");
  if (thing?.method !== undefined) sorts.push("method");
  if (thing?.stream !== undefined) sorts.push("stream");
  if (thing?.place !== undefined) sorts.push("source");
  if (thing?.person) sorts.push("person");
  return new Set(sorts.map((sort) => (sort === "category" ? "what" : sort)));
}
