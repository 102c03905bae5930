import { firstOf } from "./beside.ts";
import type { Mark } from "./marks.ts";

/*
 * "Profit on 21", "when did 13 sell", "who bought 3": a number that can be nothing but a piece's, said without its sign.
 */

const cues = (...lines: string[]): ReadonlySet<string> => new Set(lines.join(" ").split(" "));

/** What asks about an amount, or counts. */
const OF_AMOUNTS = cues(
  "suppose extra until payoff saves pace rate owe loan loanPaid advice askFor offered agreed goal tax average",
  "median share income howMany times notes last first did todo",
);

/** What a piece does, or has done to it. */
const DEEDS = cues(
  "sold gone bought got had listed finished started held returned kept given scrapped unsold have daysToSell takes took",
  "sat free",
);

/** What a piece comes to. */
const FIGURES = cues(
  "earn net loss revenue soldFor price cost spent paid fees asking firstAsked fared story whatStatus hourly margin roi tiedUp",
  "withoutBuying",
);

const MEASURED = cues("minutes miles money which");
const ASKED = cues("when who where howLong");
const CUTS = cues("priceCut");
const SALES = cues("sold listed sale");
const PRICES = cues("soldFor price paid asking bought cost");
const FOR = cues("paid price earn cost minutes");

/** Marks with such numbers as pieces' own. */
export function withPieceNumbers(marks: readonly Mark[]): readonly Mark[] {
  if (!marks.some(isPlain)) return marks;
  // "How many price cuts on 27"
  const ofCuts = marks.some((mark) => isOf(mark, CUTS));
  if (!ofCuts && marks.some(isOfAmounts)) return marks;
  const meant: Mark[] = [];
  marks.forEach((mark, at) => {
    const isOne = isPlain(mark) && (isLed(marks, at) || isJoined(meant)) && isFollowed(marks, at);
    meant.push(isOne ? numbered(mark) : mark);
  });
  return meant;
}

const isPlain = ({ typed, amount }: Mark): boolean =>
  amount !== undefined && !amount.money && /^[1-9]\d{0,4}$/.test(typed);

const isOf = ({ senses }: Mark, ...sets: ReadonlySet<string>[]): boolean =>
  senses.cues.some((cue) => sets.some((set) => set.has(cue)));

const isOfAmounts = (mark: Mark): boolean =>
  isOf(mark, OF_AMOUNTS) || mark.senses.order !== undefined || mark.senses.limit !== undefined;

function numbered({ amount: _, ...mark }: Mark): Mark {
  return { ...mark, number: Number(mark.typed), text: `#${mark.typed}` };
}

/** Whether what stands before leads to a piece. */
function isLed(marks: readonly Mark[], at: number): boolean {
  const before = marks[at - 1];
  const asks = firstOf(marks);
  const holds = (...sets: ReadonlySet<string>[]): boolean => marks.some((mark) => isOf(mark, ...sets));
  if (!before) return holds(FIGURES, MEASURED, ASKED);
  const lead = before.text.slice(before.text.lastIndexOf(" ") + 1);
  if (/^(?:on|in|into|of|about)$/.test(lead))
    return !holds(SALES) && (lead === "about" ? !holds(PRICES) : holds(FIGURES, MEASURED, CUTS));
  // "What did the one i bought for 7 sell for"
  const isBought = marks
    .slice(Math.max(0, at - 2), at)
    .some(({ text }) => /\b(?:bought|buy|found)\b/.test(text));
  if (lead === "for") return !isBought && !holds(SALES) && /^(?:what|how)/.test(asks) && holds(FOR);
  // "Did 13 sell in june" may ask for so many.
  if (lead === "did" && asks === "did" && marks.some(({ period }) => period)) return false;
  if (/^(?:did|does|is|was|has|isnt|wasnt|hasnt|didnt|whats|hows|wheres|whens)$/.test(lead)) return true;
  return /^(?:when|who|where|how)/.test(asks) && isOf(before, DEEDS);
}

const isIdle = ({ text, senses: { flags, cues, link, own, thing } }: Mark): boolean =>
  /^(?:together|altogether|combined|each)$/.test(text) ||
  (flags.has("filler") && cues.length === 0 && link === undefined && own.length === 0 && thing === undefined);

const isJoint = (mark: Mark | undefined): boolean =>
  (["and", "or", "compare"] as const).some((flag) => mark?.senses.flags.has(flag));

/** "21 and 22", "21 22 and 25": the one before is a piece. */
function isJoined(meant: readonly Mark[]): boolean {
  return meant.findLast((mark) => !isJoint(mark))?.number !== undefined;
}

/** Whether nothing behind takes the number for its own: a deed, a figure, days, another number, or nothing at all. */
function isFollowed(marks: readonly Mark[], at: number): boolean {
  const behind = marks.slice(at + 1).find((mark) => !isIdle(mark));
  if (!behind || behind.period) return true;
  const next = marks.indexOf(behind);
  if (isJoint(behind)) {
    const other = marks[next + 1];
    return (
      other !== undefined && (other.number !== undefined || (isPlain(other) && isFollowed(marks, next + 1)))
    );
  }
  if (isPlain(behind)) return next === at + 1 && isFollowed(marks, next);
  const { thing, own } = behind.senses;
  return !thing && own.length === 0 && isOf(behind, DEEDS, FIGURES, ASKED);
}
