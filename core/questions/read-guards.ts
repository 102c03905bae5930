import { isTime } from "./groupings.ts";
import type { Mark } from "./marks.ts";
import type { Parts } from "./parts.ts";
import type { Features } from "./rule.ts";
import type { Cue } from "./words/cues.ts";

/** Words that ask for what no measure is: each names the word that stands in the way. */
type Guard = (parts: Parts, f: Features) => Mark | null;

/** What is to come stands in no book. */
function toCome({ marks }: Parts): Mark | null {
  return marks.find(({ text }) => /\b(?:will|gonna)\b/.test(text)) ?? null;
}

/** "Did i sell the best 3": so many are no yes or no. */
function countedOrder({ marks, orders, yesNo }: Parts): Mark | null {
  const counted = orders.find(({ top, skip }) => top !== null || skip !== undefined);
  return yesNo && counted ? marks[counted.at]! : null;
}

/** "What day did i sell the best desk", "the month of the biggest sale": one thing is put in order there, not the days. */
function orderOfOne({ marks, orders, groups }: Parts): Mark | null {
  if (!groups.some(({ group, parted }) => !parted && isTime(group))) return null;
  const wrong = orders.find(({ at }) => {
    const next = marks[at + 1];
    return (
      next !== undefined &&
      ((next.senses.thing?.noun !== undefined && !next.senses.thing.plural) || next.text === "sale")
    );
  });
  return wrong ? marks[wrong.at]! : null;
}

/** "How many days did i sell something": days of ours are not those that a piece takes. */
function daysOfOurs({ marks, said }: Parts): Mark | null {
  if (!/\b(?:how many|what|which) days (?:did|have|do) (?:i|we) (?!have|had|keep|need|own)/.test(said))
    return null;
  return marks.find(({ text }) => /\bdays\b/.test(text)) ?? null;
}

/** "How much did i lose on the losers": which ones those are, nobody can tell. */
function orderOfSome({ marks, orders, cues }: Parts): Mark | null {
  const wrong = orders.find(({ at }) => {
    const isLinked = marks
      .slice(Math.max(0, at - 2), at)
      .some(({ senses }) => senses.link === "on" || senses.link === "from");
    return cues.has("money") && isLinked && /(?:losers|winners|flops)$/.test(marks[at]!.text);
  });
  return wrong ? marks[wrong.at]! : null;
}

/** "How much money do i have left": what is in hand is not what lies in pieces. */
function purse({ marks }: Parts, f: Features): Mark | null {
  if (f.piece || f.generic || f.loan || f.supply || !f.has("money")) return null;
  if (marks.some(({ text }) => /\b(?:tied|stuck|sitting|locked)\b/.test(text))) return null;
  const last = marks.at(-1)!;
  return last.text === "left" ? last : null;
}

/** "the first hutch", "the 5th of each month": no day of this month. */
function ordinalAdrift({ marks, periods }: Parts): Mark | null {
  for (const { at } of periods) {
    const { text } = marks[at]!;
    if (!/^(?:on )?(?:the )?(?:first|second|third|fourth|fifth|\d+(?:st|nd|rd|th))$/.test(text)) continue;
    const next = marks[at + 1];
    if (!next) continue;
    const { thing, flags } = next.senses;
    if (
      thing?.noun ||
      flags.has("generic") ||
      flags.has("parted") ||
      marks[at + 2]?.senses.flags.has("parted")
    )
      return marks[at]!;
  }
  return null;
}

/** "What wood sells best": what pieces are of is no way to part them. */
function sortOfTrait({ marks, cues }: Parts): Mark | null {
  // "What materials cost me" are those that were bought.
  if (cues.has("spent") || cues.has("cost")) return null;
  const at = marks.findIndex(
    ({ text }, place) => SORTS.test(text) && /^(?:what|which|best|worst)$/.test(marks[place - 1]?.text ?? ""),
  );
  return at < 0 ? null : marks[at]!;
}
const SORTS = /^(?:woods?|colou?rs?|materials?|finish(?:es)?|styles?|brands?|sizes?)$/;

/** "Profit on one dresser": which one, nobody can tell. */
function oneOfThem({ marks }: Parts): Mark | null {
  const at = marks.findIndex(
    ({ text }, place) =>
      text === "one" &&
      marks[place + 1]?.senses.thing?.noun !== undefined &&
      !marks[place + 1]!.senses.thing!.plural,
  );
  return at < 0 ? null : marks[at]!;
}

/** "What does the nurse do on weekends": what others do stands in no book. */
function doingsOfOthers({ marks, said }: Parts): Mark | null {
  const isOfSome = marks.some(({ senses }) =>
    senses.own.some(({ dimension }) => dimension === "buyer" || dimension === "person"),
  );
  if (!isOfSome || !/\bwhat (?:does|do|did) (?!i\b|we\b)(?:\S+ ){1,4}do\b/.test(said)) return null;
  return marks.findLast(({ text }) => /^do\b/.test(text)) ?? null;
}

/** "How many did they sell": who that is, the question does not say. */
function theirDeeds({ marks, items, said }: Parts): Mark | null {
  if (
    items.length > 0 ||
    !/\b(?:did|do|have|had) they (?:sell|sold|buy|bought|list|listed|finish|make|spend|pay)\b(?! for)/.test(
      said,
    )
  )
    return null;
  return marks.find(({ text }) => /\bthey$/.test(text)) ?? null;
}

/** "Whats in the barn": what is in nothing that the books know. */
function costOfNowhere({ marks }: Parts, f: Features): Mark | null {
  if (f.piece || f.generic || f.supply || f.order || f.by) return null;
  return (
    marks.find(
      ({ text, senses }) =>
        senses.cues.includes("cost") && /^(?:what ?s?|what is|is) in(?: the)?$/.test(text),
    ) ?? null
  );
}

/** "How much did my neighbor make": what others earn stands in no book. */
function earningsOfOthers({ marks, said }: Parts): Mark | null {
  if (
    !/\b(?:did|does|do|has|have) (?:\S+ ){1,2}(?:make|made|earn|earned|clear|profit)\b(?! me| us)/.test(said)
  )
    return null;
  const at = marks.findIndex(
    ({ senses }, place) =>
      senses.own.some(({ dimension }) => dimension === "buyer" || dimension === "source") &&
      (senses.thing === undefined || senses.thing.person === true) &&
      !senses.own.some(
        ({ dimension }) => dimension === "person" || dimension === "kind" || dimension === "trait",
      ) &&
      /\b(?:did|does|do|has|have|my|the|our)$/.test(marks[place - 1]?.text ?? "") &&
      /^(?:make|made|earn|earned|clear|profit)\b/.test(marks[place + 1]?.text ?? ""),
  );
  return at < 0 ? null : marks[at]!;
}

/** "Percent of the van paid": of the loan, which is no share of what was paid. */
function loanPaidOff({ marks, said }: Parts, f: Features): Mark | null {
  if (!f.loan || !f.has("share") || !/\bpaid(?: off| down)?(?: so far| yet)?$/.test(said)) return null;
  return marks.findLast(({ text }) => /\bpaid\b/.test(text)) ?? null;
}

/** "Which month did i not sell a chair": what was not done has no month. */
function notDoneIn({ marks }: Parts, f: Features): Mark | null {
  if (!f.groups("day", "weekday", "week", "month", "quarter", "year") || !f.has("unsold")) return null;
  return (
    marks.find(
      ({ text, senses }) => senses.cues.includes("unsold") && /\b(?:not|didnt|never)\b/.test(text),
    ) ?? null
  );
}

/** "Which pieces did i break even on": none is told apart by making just nothing. */
function evenOnSome({ marks, said }: Parts): Mark | null {
  const isOfSome =
    /\b(?:any|which|what|how many|list|show|every)\b.*\bbr(?:eak|oke) even\b|\bbr(?:eak|oke) even on any/.test(
      said,
    );
  return isOfSome ? (marks.find(({ text }) => /\bbr(?:eak|oke) even\b/.test(text)) ?? null) : null;
}

/** "My break even", "miles per sale": a point and a quotient that nobody works out. */
function noSuchFigure({ marks, said }: Parts, f: Features): Mark | null {
  if (/\b(?:my|the|our) br(?:eak|oke) even\b|\bbreak even (?:point|sales|revenue)\b/.test(said) && !f.piece)
    return marks.find(({ text }) => /\bbreak even\b/.test(text)) ?? null;
  return f.has("miles")
    ? (marks.find(({ text }) => /\b(?:per|each|every|a) (?:sale|flip)\b/.test(text)) ?? null)
    : null;
}

/** "Spent on furniture and paint": the two are no one figure. */
function furnitureBesideSupply({ marks }: Parts): Mark | null {
  const isFurniture = (mark: Mark | undefined): boolean =>
    /^(?:pieces|furniture|inventory)$/.test(mark?.text ?? "");
  const isSupply = (mark: Mark | undefined): boolean => mark?.senses.thing?.supply !== undefined;
  const at = marks.findIndex(({ senses }, place) => {
    const [before, next] = [marks[place - 1], marks[place + 1]];
    return (
      senses.flags.has("and") &&
      ((isFurniture(before) && isSupply(next)) || (isSupply(before) && isFurniture(next)))
    );
  });
  return at < 0 ? null : (marks.slice(at - 1, at + 2).find(isFurniture) ?? null);
}

/** "Gas per piece": what is spent on no piece falls on none. */
function shopCostApiece({ marks }: Parts): Mark | null {
  const isOfShop = marks.some(({ senses: { thing, own } }) =>
    /^(?:vehicle|storage)$/.test(
      thing?.supply ?? own.find(({ dimension }) => dimension === "category")?.value ?? "",
    ),
  );
  return isOfShop
    ? (marks.find(({ text }) => /\b(?:per|each|every|a) (?:piece|sale|flip|item)\b/.test(text)) ?? null)
    : null;
}

/** "The lowest i ever had the desk listed": what was asked before stands in no list price. */
function askedBefore({ marks, orders, said }: Parts): Mark | null {
  const isPast = /\b(?:ever|once) (?:had|asked|listed|put)\b.*\b(?:listed|up|asked|at|for)\b/.test(said);
  return orders.length > 0 && isPast
    ? (marks.find(({ text }) => /\bever\b/.test(text)) ?? marks[orders[0]!.at]!)
    : null;
}

/** "Cost of what sold or was scrapped in june": its days would be those of the sale alone. */
function costOfEnds({ marks, cues, periods }: Parts): Mark | null {
  if (!cues.has("cost") || !cues.has("sold") || periods.length === 0) return null;
  const [at] = ["scrapped", "kept", "given"].flatMap((cue) => cues.get(cue as Cue) ?? []);
  return at === undefined ? null : marks[at]!;
}

const GUARDS: readonly Guard[] = [
  costOfEnds,
  askedBefore,
  shopCostApiece,
  noSuchFigure,
  furnitureBesideSupply,
  evenOnSome,
  notDoneIn,
  loanPaidOff,
  earningsOfOthers,
  costOfNowhere,
  theirDeeds,
  doingsOfOthers,
  oneOfThem,
  sortOfTrait,
  toCome,
  ({ adrift }) => adrift,
  countedOrder,
  orderOfOne,
  orderOfSome,
  daysOfOurs,
  ordinalAdrift,
  purse,
];

/** The first word for which no measure can answer; null where there is none. */
export function guarded(parts: Parts, f: Features): Mark | null {
  for (const guard of GUARDS) {
    const mark = guard(parts, f);
    if (mark) return mark;
  }
  return null;
}

/** "What would the hutch go for at auction": what has not been, no figure of the books tells. */
const SUPPOSED =
  /^(?:so |and )?(?:what|how much)(?:s)? (?:would|could|might) (?!(?:i|we|it|they|everything|all)\b)/;

/** "how can i make money", "should i have sold": advice is asked for, and no figure. */
export function asksAdvice({ first, said }: Parts): boolean {
  return (
    /^(?:should|shall|must|would|could)$/.test(first) ||
    SUPPOSED.test(said) ||
    /\b(?:i|we) should (?!know|like)/.test(`${said} `) ||
    /\b(?:could (?:i|we) have|(?:can|could) (?:i|we) (?!see|get|have)|(?:should|would|shall) (?:i|we) (?!see))/.test(
      said,
    )
  );
}
