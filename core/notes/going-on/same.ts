import type { Day } from "../../calendar.ts";
import type { Tok } from "../clause.ts";
import { headsOf } from "../heads.ts";
import { isSkipped, side, takeTo } from "../mends/mended.ts";
import { countOf } from "../mentions/counts.ts";
import type { Again, Kind, Mention } from "../reading.ts";
import {
  ANOTHER_ONE,
  BESIDE_SAME,
  CAME_BACK,
  COMPARES,
  GIVEN_US,
  LEFT,
  ONES,
  SAME,
  SAME_WHO,
  SUMS_IT_UP,
} from "../words/again.ts";
import { LIST_WORDS, PIECES, PLACES } from "../words/pieces.ts";
import { CONTAINERS } from "../words/supplies.ts";

const TOKENS_MAX = 14;

export const saysSame = ({ kind, text }: Tok): boolean => kind === "word" && SAME.has(text);

/**
 * "got another lamp, same price", "the other went for the same", "and the last one, 15", "same man again, the rest, 85": the
 * newest note of such a verb or thing once more, of what is named here. Null where a word of it says anything else, or where
 * it neither is the same nor goes on to what is left of those spoken of.
 */
export function sameAsBefore(all: readonly Tok[], today: Day): Again | null {
  const tokens = withoutSum(all);
  const isSame = tokens.some(saysSame);
  if (tokens.length > TOKENS_MAX || !(isSame || tokens.some(({ text }) => LEFT.has(text) || text in PLACES)))
    return null;
  const said = side();
  const values: Tok[] = [];
  const pieces: Mention[] = [];
  let kinds: readonly Kind[] | undefined;
  let what: string | undefined;
  let isLeft = false;
  let isByThem = false;
  let isAsMuch = false;
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    const { kind, text, roles, mention } = token;
    const heads = headsOf(token).map((head) => head.kind);
    if (kind === "mark" && text !== "?") continue;
    // "same price as the hutch" tells of two.
    if (COMPARES.has(text)) return null;
    const left = kind === "word" ? leftAt(tokens, at) : null;
    if (left) {
      pieces.push(left.mention);
      // "and the other 20": no more than a price.
      if (tokens[left.to]?.kind === "amount") kinds = MORE_PRICED;
      isLeft = true;
      at = left.to - 1;
    } else if (SAME.has(text) && SAME_WHO.has(tokens[at + 1]?.text ?? "")) {
      isByThem = true;
      at += 1;
    } else if (isByThem && CAME_BACK.has(text)) continue;
    else if (kind === "piece" && !isIt(mention!)) pieces.push(placed(mention!));
    else if (kind !== "word" || roles.method !== undefined) values.push(token);
    else if (roles.supply !== undefined) what = text;
    else if (text.split(" ").every(isBeside) || CONTAINERS.has(text)) isAsMuch ||= SAME.has(text);
    // "same again to drop it off" is to come.
    else if (heads.length > 0 && tokens[at - 1]?.text === "to") return null;
    else if (heads.length > 0) kinds = kinds ? kinds.filter((each) => heads.includes(each)) : heads;
    else if (!isSkipped(token)) return null;
  }
  // "same lady took the lamp, 20" is no purchase; "same lady sold me a lamp, 20" is one.
  if (isByThem && kinds && !tokens.some(({ text }) => GIVEN_US.test(text)))
    kinds = kinds.includes("hold") ? ["sell", "hold"] : ["sell"];
  // "same here" says nothing of what.
  const isNamed = pieces.length > 0 || (kinds ?? what) !== undefined;
  if (!isNamed || pieces.length > 1 || kinds?.length === 0 || !takeTo(values, said, today)) return null;
  const isMeasured = [said.to.amount, said.to.minutes, said.to.miles].some((each) => each !== undefined);
  if (!isSame && !(isLeft && isMeasured)) return null;
  return {
    how: isSame && (isAsMuch || !isByThem) ? "again" : "more",
    to: { ...said.to, ...(pieces.length > 0 ? { pieces } : {}) },
    ...(kinds || isByThem ? { kinds: kinds ?? BY_SOMEBODY } : {}),
    ...(what === undefined ? {} : { what }),
    ...(isByThem ? { byThem: true } : {}),
    ...(tokens.length === all.length && values.some(({ each }) => each) ? { each: true } : {}),
  };
}

/** "second chair": which of the chairs. */
function placed({ traits = [], ...mention }: Mention): Mention {
  const [first = "", ...others] = traits;
  const place = PLACES[first];
  if (traits.length === 0) return mention;
  if (place === undefined) return { ...mention, traits };
  return { ...mention, place, ...(others.length > 0 ? { traits: others } : {}) };
}

/** What is told of one piece after the other by its price alone. */
const MORE_PRICED: readonly Kind[] = ["sell", "list"];

/** What "the same lady" did before. */
const BY_SOMEBODY: readonly Kind[] = ["sell", "hold", "collect"];

const isIt = ({ it, place, other }: Mention): boolean => it === true && place === undefined && other !== true;

/** "85, so thats every chair gone": the sum of it is no more than said. */
function withoutSum(tokens: readonly Tok[]): readonly Tok[] {
  const at = tokens.findIndex(({ text }, place) => place > 0 && SUMS_IT_UP.has(text));
  const isSum = at > 0 && tokens[at - 1]!.kind === "mark" && tokens.slice(at).every(({ amount }) => !amount);
  return isSum ? tokens.slice(0, at) : tokens;
}

/** "the other one", "the rest", "the last two", "the fourth": what is left of those spoken of, with no noun. */
function leftAt(tokens: readonly Tok[], at: number): { mention: Mention; to: number } | null {
  const from = LIST_WORDS.has(tokens[at]!.text) || tokens[at]!.text === "the" ? at + 1 : at;
  const { text = "" } = tokens[from] ?? {};
  const next = tokens[from + 1];
  const isOne = ONES.has(next?.text ?? "");
  const place = PLACES[text];
  // "the other two"
  const count = isOne || PIECES.has(next?.text ?? "") ? null : countOf(next);
  if (place !== undefined) return { mention: { it: true, count: 1, place }, to: isOne ? from + 2 : from + 1 };
  if (!LEFT.has(text)) return null;
  const last = text === "last" ? { last: true as const } : {};
  if (text === "rest" || text === "others") return { mention: { other: true, plural: true }, to: from + 1 };
  const isCounted = count !== null && /^[a-z]/.test(next!.text);
  if (isCounted) return { mention: { other: true, count, ...last }, to: from + 2 };
  return { mention: { other: true, count: 1, ...last }, to: isOne ? from + 2 : from + 1 };
}

const isBeside = (word: string): boolean => SAME.has(word) || ANOTHER_ONE.has(word) || BESIDE_SAME.has(word);
