import { saysNotListed } from "./counted.ts";
import type { Desk } from "./desk.ts";
import { joiningItems, leftOver } from "./left-over.ts";
import { mineOnly, narrowed, type Refusal, refusal } from "./narrowing.ts";
import { asksFigure, isOrderToList, type Parts } from "./parts.ts";
import { type Counted, type Filter, piecesCounted, type Query } from "./query.ts";
import { boughtIn, periodOf } from "./read-period.ts";
import type { Features } from "./rule.ts";
import { type Cue, cues } from "./words/cues.ts";

/*
 * Pieces as they stand, one by one: "what's on hold", "list dressers", "which are on the board".
 */

/** States whose pieces are listed, likeliest first, with the value that each row shows. */
type State = readonly [Cue, Counted];

const STATES: readonly State[] = [
  ["unlisted", "unlisted"],
  ["unfinished", "unfinished"],
  ["unstarted", "unstarted"],
  ["inProgress", "in progress"],
  ["owed", "owing"],
  ["held", "held"],
  ["unsold", "unsold"],
  ["listed", "on the market"],
  ["have", "unsold"],
];

/** Words that order something to be shown. */
export const LIST_WORDS: ReadonlySet<string> = new Set(
  "show list see view display print pull bring give gimme".split(" "),
);

/** The state whose pieces are wanted, and the word that says so; undefined where none is. */
export function stateAsked(parts: Parts, f: Features): State | undefined {
  const found =
    piecesShown(parts, f) ??
    STATES.find(
      ([cue]) =>
        f.has(cue) &&
        !(cue === "owed" && f.piece && /\bowed (?:on|for)\b/.test(parts.said)) &&
        // "What am i owed" asks for the sum.
        !(
          cue === "owed" &&
          /^whats? (?:is )?(?:still )?owed$|\b(?:am i|are we|im)(?: \w+)? owed\b|\b(?:money|tab)\b/.test(
            parts.said,
          )
        ),
    ) ??
    placed(parts, f) ??
    stands(parts, f);
  return found?.[1] === "unlisted" && saysNotListed(parts) ? [found[0], "not listed"] : found;
}

/** "list dressers", "dresser list": those that are here. */
function piecesShown(parts: Parts, f: Features): State | undefined {
  const { first, items, periods } = parts;
  const isShown = LIST_WORDS.has(first) || isCommandOnly(parts, "listed");
  const isOfPieces = items.length > 0 && f.piece && !f.number && f.bare && periods.length === 0;
  const isAre =
    /^(?:which|what)$/.test(first) && f.generic && parts.marks.at(-1)?.senses.thing?.trait === true;
  const isSeveral = items.some(({ mark }) => mark.senses.thing?.plural) || first !== "show";
  return (isShown || isAre) && isOfPieces && isSeveral ? ["list", "unsold"] : undefined;
}

/** "which ones are finished", "what is started": as they stand, and not what was done. */
function stands({ said, periods }: Parts, f: Features): State | undefined {
  const isNow = /\b(?:are|is|whats)\b/.test(said) && !/\b(?:did|have|was|were|been|i|we)\b/.test(said);
  if (!isNow || periods.length > 0 || f.has("money", "when", "who", "where", "last", "first"))
    return undefined;
  if (f.has("finished")) return ["finished", "done"];
  return f.has("started") ? ["started", "in progress"] : undefined;
}

/** "which pieces are on the noticeboard": what is listed there, where nothing else is asked. */
function placed({ items, cues, first }: Parts, f: Features): State | undefined {
  const isAtPlace = items.some(
    ({ mark, link }) =>
      (link === "on" || link === "at") && mark.senses.own.some(({ dimension }) => dimension === "place"),
  );
  const isBare = [...cues.keys()].every((cue) => cue === "which" || cue === "list" || cue === "have");
  return isAtPlace && isBare && (f.generic || f.piece || /^(?:whats?|which)$/.test(first))
    ? ["listed", "on the market"]
    : undefined;
}

/** "list" in "list expenses" and "gas list" is the order to do it and lists no listings. */
export function isCommandOnly(parts: Parts, cue: Cue): boolean {
  if (cue !== "listed") return false;
  const [at, more] = parts.cues.get("listed") ?? [];
  return at !== undefined && more === undefined && isOrderToList(parts, at);
}

/** What no piece may be where all of them are in a state: "is everything listed". */
const NOT_SO: Partial<Record<Counted, Counted>> = {
  "on the market": "not listed",
  done: "unfinished",
  "in progress": "unstarted",
};

/** "Is everything listed", "are all the pieces finished". */
const OF_ALL =
  /^(?:is|are) (?:everything|all (?:of )?(?:it|them|(?:(?:the|my|our) )?(?:pieces|stuff|things)))\b/;

/** Pieces in a state, a row each. */
export function stateList(parts: Parts, [cue, said]: State, desk: Desk): Query | Refusal | null {
  const notSo = OF_ALL.test(parts.said) ? NOT_SO[said] : undefined;
  const counted = notSo ?? said;
  const found = narrowed(parts, "count", desk);
  if ("kind" in found) return found;
  const fault = leftOver(
    parts,
    [
      cue,
      ...cues(
        "list which have cost held deposits unsold listed finished started who whose got sat gone asking owed sold total money free",
      ),
      ...(parts.periods.length > 0 ? (["bought", "purchases"] as const) : []),
    ],
    { passed: joiningItems(parts) },
  );
  if (fault) return fault;
  if (parts.amounts.length > 0) return refusal(parts.marks[parts.amounts[0]!.at]!);
  const period = periodOf(parts);
  if (period && "kind" in period) return period;
  const [dated] = parts.periods;
  // "Finished but not sold", "listed but not sold": both hold.
  const also = (["finished", "started", "listed", "free"] as const)
    .filter(
      (other) =>
        other !== cue && counted !== "unlisted" && parts.cues.has(other) && !isCommandOnly(parts, other),
    )
    .map((other): Filter => ({ dimension: "status", values: [other] }));
  const origin = dated && period ? boughtIn(parts, { period, at: dated.at }) : null;
  return {
    ...(notSo ? { against: { dimension: "most", values: ["0"] } } : {}),
    ...piecesCounted({
      counted,
      filters: [
        ...found.map(({ filter }) => filter),
        ...also,
        ...(origin ? [origin] : []),
        ...mineOnly(parts, desk),
      ],
      period: origin ? null : period,
      yesNo: parts.yesNo && !asksFigure(parts),
      list: true,
    }),
  };
}
