import { lastDayOf, monthOf } from "../calendar.ts";
import { ARTICLE } from "./beside.ts";
import { isTime } from "./groupings.ts";
import type { Mark } from "./marks.ts";
import { asksFigure, cutsOf, type Parts } from "./parts.ts";
import type { Period } from "./query.ts";
import type { Features } from "./rule.ts";
import { whomOf } from "./whom.ts";
import type { Cue } from "./words/cues.ts";
import { LISTERS } from "./words/plain.ts";

/** Cues that ask for things one by one and for nothing of them. */
const BARE: readonly Cue[] = ["got", "list", "which", "listed"];

/** What the words hold, for the rules that tell the measure. */
export function featuresOf(parts: Parts): Features {
  const { items, orders } = parts;
  const own = (dimension: string) =>
    items.some(({ mark }) => mark.senses.own.some((each) => each.dimension === dimension));
  const isPiece = ({ mark }: Parts["items"][number]) =>
    mark.number !== undefined || mark.senses.thing?.noun !== undefined || isTrait(mark);
  return {
    has: (...cues) => cues.some((cue) => parts.cues.has(cue)),
    piece: items.some(isPiece),
    number: items.some(({ mark }) => mark.number !== undefined),
    supply: items.some(
      (item) => !isPiece(item) && item.link !== "from" && isSupply(item.mark) && !isLoan(item.mark, parts),
    ),
    source: items.some((item) => isSource(item, parts.marks)),
    stream:
      items.length > 0 &&
      items.some(({ mark, not }) => isStream(mark) && !not) &&
      items.every(({ mark }) => isStream(mark) || isMethod(mark)),
    loan:
      parts.cues.has("loan") ||
      items.some(({ mark }) => isLoan(mark, parts) || isOnlyLoan(mark)) ||
      parts.groups.some(({ group }) => group === "loan"),
    repays:
      parts.cues.has("loanPaid") &&
      /\b(?:loans?|debts?|repa(?:id|yments?)|payments|pa(?:id|y) (?:off|down|back))\b/.test(parts.said),
    asksWay:
      /^how (?:did|do|does|has|have) /.test(parts.said) &&
      (parts.cues.has("paid") || parts.cues.has("howPaid")) &&
      !parts.cues.has("money"),
    asksOver: asksOver(parts),
    person: own("person"),
    order: orders.length > 0,
    fast: orders.some(({ order }) => order === "fastest" || order === "slowest"),
    by: parts.groups.some(({ parted }) => parted),
    period: parts.periods.length > 0,
    onPieces: isLinkedGeneric(parts),
    beside:
      cutsOf(parts).length > 0 &&
      (parts.periods.length > 1 ||
        (parts.cues.has("rest") && items.length > 0) ||
        items.filter((item) => isPiece(item) || isSource(item, parts.marks) || isCut(item.mark)).length > 1),
    groups: (...all) => parts.groups.some(({ group }) => all.includes(group)),
    inPiece: items.some((item) => item.link === "in" && isPiece(item)),
    endsAt:
      parts.marks.length > 1 &&
      parts.marks.findLast(({ text }) => !/^(?:now|right now|currently|today|these days)$/.test(text))?.senses
        .link === "at",
    buyer: items.some(
      ({ link, mark }) =>
        (!link || (link === "by" && !mark.senses.own.some(({ dimension }) => dimension === "person"))) &&
        mark.senses.own.some(({ dimension }) => dimension === "buyer"),
    ),
    mostOf:
      /\b(?:most|least|fewest) (?:often |commonly )?(?:bought|sold|listed|purchased)\b/.test(parts.said) ||
      /\b(?:buys?|bought|sells?|sold|finds?|found|gets?) (?:from |to |at )?(?:the )?most(?: often)?$/.test(
        parts.said,
      ) ||
      orders.some(({ at }) => {
        const [mark, ...behind] = parts.marks.slice(at, at + 3);
        const next = behind.find(({ text }) => !/^(?:my|our|the|all)$/.test(text));
        const isMany = next?.senses.thing?.plural || next?.senses.flags.has("generic");
        return /\b(?:most|least|fewest)(?: of)?$/.test(mark!.text) && Boolean(isMany);
      }),
    habit: /\b(?:do|does an?) \w+ (?:usually |normally |typically )?(?:sit|stay|last|hang|stick)\b/.test(
      parts.said,
    ),
    yesNo: parts.yesNo,
    limit: parts.limits.length > 0,
    priced: parts.limits.some(({ at }) => parts.marks[at - 1]?.text === "for"),
    fromBuyer: items.some(
      ({ link, mark }) =>
        (link === "from" || link === "to") &&
        mark.senses.own.some(({ dimension }) => dimension === "buyer") &&
        !mark.senses.own.some(({ dimension }) => dimension === "source"),
    ),
    fromSource: items.some((item) => item.link === "from" && isSource(item, parts.marks)),
    whoDid: /\bwho(?: has| have|ve|d)? (?:actually |originally )?(\w+)/.exec(parts.said)?.[1] ?? "",
    whereabouts:
      /\bwhere(?:s| is| are|d| did| has| have) (?!.*\b(?:come|came|from|buy|find|found|listed)\b)/.test(
        `${parts.said} `,
      ),
    isPriced:
      /\bhow much (?:is|are) (?:(?:the|my|that|those) |#)/.test(parts.said) &&
      items.some(isPiece) &&
      [...parts.cues.keys()].every((cue) => cue === "money"),
    wasPriced:
      /\bhow much (?:was|were) (?:(?:the|my|that|those) |#)/.test(parts.said) &&
      items.some(isPiece) &&
      [...parts.cues.keys()].every((cue) => cue === "money"),
    wordless:
      [...parts.cues.values()].flat().every((at) => /^(?:money wise|numbers)$/.test(parts.marks[at]!.text)) &&
      items.length + parts.orders.length + parts.limits.length + parts.amounts.length === 0 &&
      parts.besideAt.length === 0 &&
      (parts.groups.length > 0 || parts.periods.every(({ period }) => !hasView(period))),
    ranks: orders.length > 0 && orders.every(({ order }) => order === "best" || order === "worst"),
    place: own("place"),
    whom: whomOf(parts.said),
    method: items.some(({ mark }) => isMethod(mark)),
    plain: [...parts.cues].every(
      ([cue, places]) =>
        cue === "total" ||
        cue === "money" ||
        places.every((at) => parts.marks[at]!.senses.flags.has("generic")),
    ),
    countsRate:
      /\b(?:pieces|items|how many|number of|flips) (?:\w+ )*?(?:sold|sell|bought|buy|listed|list|finished|finish)\b/.test(
        parts.said,
      ) && parts.groups.some(({ group, parted }) => parted && isTime(group)),
    everHad:
      parts.cues.has("had") &&
      /\b(?:have (?:i|we)|ive|weve|did (?:i|we) ever) (?:ever )?had?\b/.test(parts.said),
    morePieces: /\b(?:more|fewer|most|fewest) (?:pieces|items|things|finds)\b/.test(parts.said),
    everyone: /\b(?:everyone|everybody|they all|all (?:of )?(?:them|my buyers|the buyers))\b/.test(
      parts.said,
    ),
    moneyWise:
      parts.cues.size > 0 &&
      [...parts.cues.values()].flat().every((at) => parts.marks[at]!.text === "money wise"),
    plainNet: [...parts.cues].every(
      ([cue, places]) =>
        /^(?:everything|money|total|income|have|got|fared)$/.test(cue) ||
        places.every((at) => /\ball (?:in|told)\b/.test(parts.marks[at]!.text)),
    ),
    plainCues: [...parts.cues.keys()].every((cue) => cue === "howMany" || cue === "total"),
    plainCount:
      (items.some(({ mark }) => mark.senses.thing?.noun !== undefined) ||
        (items.length === 0 &&
          parts.periods.length > 0 &&
          parts.marks.some(({ senses }) => senses.flags.has("generic")))) &&
      [...parts.cues.keys()].every((cue) => cue === "howMany" || cue === "total"),
    commands: /^(?:list|show|gimme|give)$/.test(parts.first),
    bare: [...parts.cues].every(
      ([cue, places]) => BARE.includes(cue) && (cue !== "listed" || parts.marks[places[0]!]!.text === "list"),
    ),
    unit: (...units) => parts.limits.some(({ unit }) => unit !== undefined && units.includes(unit)),
    acting: items.some(({ acting }) => acting),
    lists:
      (LISTERS.has(parts.first) || parts.marks[0]?.senses.thing?.plural === true) &&
      !(["money", "total", "average", "median", "howMany"] as const).some((cue) => parts.cues.has(cue)),
    opens: parts.marks.length > 1 && opensWithEvent(parts),
    // "The 3 priciest" begins at its number.
    pricey: orders.some(({ at, top }) =>
      parts.marks
        .slice(at, at + (top === null ? 1 : 2))
        .some(({ text }) => /expensive|priciest|dearest|costliest|cheapest|priced/.test(text)),
    ),
    now: /\b(?:now|current|currently|at the moment|today|these days)\b/.test(parts.said),
    fixes: /\b(?:fix|refinish|restor|redo|repair)/.test(parts.said),
    payingOut: /\b(?:i|we) (?:pay|paid|spend|spent)\b|\b(?:paid for|spent on|spend on)\b/.test(parts.said),
    settles:
      /^(?:has|have|did) (?:everyone|everybody|they all|all (?:of )?(?:them|my buyers|the buyers)) (?:paid|pay)\b/.test(
        parts.said,
      ) ||
      /^(?:has|have) .*\bpaid(?: me| us)?(?: up| in full| everything| all of it| fully| off| yet)*$/.test(
        parts.said,
      ) ||
      /^(?:did|has|is) .*\b(?:pay|paid)(?: me| us)? (?:up|in full|everything|all of it|fully)$/.test(
        parts.said,
      ),
    isBuy: orders.some(({ at }) => /^(?:buy|purchase|find)$/.test(parts.marks[at + 1]?.text ?? "")),
    topped:
      parts.groups.length === 0 &&
      orders.some(
        ({ at }) =>
          /^(?:the )?(?:highest|lowest)\b/.test(parts.marks[at]!.text) ||
          /\bfor the (?:most|least)$/.test(parts.said),
      ),
    tally: tallied(parts),
    told: isTold(parts),
    oldest: orders.some(({ at }) => parts.marks[at]!.text === "oldest"),
    longest: orders.some(({ at }) => /\b(?:longest|oldest|stalest)\b/.test(parts.marks[at]!.text)),
    paidFor: /\bpaid for\b/.test(parts.said),
    onlyAverage:
      items.length + parts.limits.length + orders.length === 0 &&
      [...parts.cues.keys()].every((cue) => cue === "average" || cue === "median" || cue === "money"),
    generic: parts.marks.some(({ senses }) => senses.flags.has("generic")),
    average: parts.cues.has("average") || parts.cues.has("median"),
  };
}

/** A day, and a month or year, which answer with more than a figure. */
function hasView({ from, to, name }: Period): boolean {
  const isMonth = from?.slice(8) === "01" && to === lastDayOf(monthOf(from));
  return (
    from === to ||
    isMonth ||
    name.endsWith("so far") ||
    Boolean(to?.endsWith("-12-31") && from?.endsWith("-01-01"))
  );
}

/** "did i make money in may", but not "do you know how much i made". */
export function isYesNo(parts: Parts, f: Features): boolean {
  if (!parts.yesNo || f.has("howMany", "which", "when", "where", "who", "howLong") || ordersRows(parts))
    return false;
  // "Do chairs take long to sell" asks how long.
  const isOfTime = f.has("daysToSell") && !f.limit && !f.beside && parts.besideAt.length === 0;
  return !asksFigure(parts) && !isOfTime;
}

/** A group right behind "how many". */
function tallied({ marks, cues, groups }: Parts): boolean {
  const at = cues.get("howMany")?.[0];
  if (at === undefined) return false;
  const next = marks.findIndex(
    (mark, place) => place > at && mark.text !== "different" && mark.text !== "of my",
  );
  return groups.some((group) => !group.parted && group.at === next);
}

/** Something is put in order, and not only compared with another ("better than"). */
function ordersRows(parts: Parts): boolean {
  const { orders, marks, besideAt } = parts;
  return orders.some(({ at }) => besideAt.length === 0 || !marks[at]!.senses.flags.has("comparing"));
}

const DONE: readonly Cue[] = ["sold", "bought", "finished", "listed", "started", "kept", "given", "scrapped"];

/** "Finished #46": what was done to one piece, and nothing asked. */
function isTold({ marks, items, yesNo, periods }: Parts): boolean {
  const [only, more] = items;
  const isOne = only?.mark.number !== undefined && more === undefined && periods.length === 0;
  return !yesNo && isOne && marks[0]!.senses.cues.some((cue) => DONE.includes(cue));
}

/** Whether a yes or no is wanted of a loan's end, and no payment of it. */
function asksOver({ said, yesNo, amounts, limits, periods, items, cues }: Parts): boolean {
  if (!yesNo || amounts.length + limits.length + periods.length > 0) return false;
  const isFree = /\b(?:debt|loan) free\b|\bout of debt\b/.test(said);
  const isOver =
    /\b(?:paid|pay|payed) (?:(?:it|them|all) )?(?:off|back|in full)\b|\b(?:gone|done|cleared|wiped out|over with|free of)\b|^(?:is|are) .*\bpaid$/.test(
      said,
    ) && !/\b(?:any|anything|some|much|part|more|close|almost|nearly|half)\b/.test(said);
  const isOfLoan =
    cues.has("loan") ||
    items.some(({ mark }) => mark.senses.own.some(({ dimension }) => dimension === "loan"));
  return isFree || (isOver && isOfLoan);
}

/** "Sold to the teacher since june": what was done, and then to whom or when. */
function opensWithEvent({ marks, items, periods }: Parts): boolean {
  const [first, second] = marks;
  const isDone = first!.senses.cues.some(
    (cue) => cue === "sold" || cue === "bought" || cue === "finished" || cue === "listed",
  );
  const isLed =
    second?.senses.link !== undefined ||
    second?.period !== undefined ||
    Boolean(second?.senses.flags.has("filler"));
  return isDone && isLed && /(?:ed|t|d)$/.test(first!.text) && items.length + periods.length > 0;
}

/** A loan's name that no buyer has: "from the student" is no loan. */
function isOnlyLoan({ senses }: Mark): boolean {
  const owns = (dimension: string): boolean => senses.own.some((own) => own.dimension === dimension);
  return owns("loan") && !owns("buyer");
}

/** "truck loan": the loan of that name, no truck. */
function isLoan({ senses }: Mark, { cues, amounts }: Parts): boolean {
  const isBought = senses.own.some(({ dimension }) => dimension === "what" || dimension === "kind");
  // "500 a month on the truck", "throw 500 at it", "paid on the truck" where nothing was ever bought for one
  const isSent = amounts.length > 0 || (!isBought && (cues.has("paid") || cues.has("spent")));
  const isOfLoans = (["loan", "ends", "payoff", "loanPaid", "suppose", "owe", "interest"] as const).some(
    (cue) => cues.has(cue),
  );
  return (isOfLoans || isSent) && senses.own.some(({ dimension }) => dimension === "loan");
}

function isSource({ mark, at, link }: Parts["items"][number], marks: readonly Mark[]): boolean {
  const { thing, own } = mark.senses;
  if (thing?.place !== undefined) return true;
  const owns = (dimension: string): boolean => own.some((each) => each.dimension === dimension);
  if (!owns("source")) return false;
  // "How much went to uncle", "what did i pay my uncle"
  const lead = marks.slice(0, at).findLast(({ text }) => !ARTICLE.test(text))?.text ?? "";
  return (
    link === "from" || link === "at" || (/\b(?:to|paid|pay)$/.test(lead) && !owns("buyer") && !owns("loan"))
  );
}

/** Who bought, how it was paid or where it was listed: what pieces are told apart by. */
function isCut({ senses }: Mark): boolean {
  return senses.own.some(({ dimension }) => /^(?:buyer|source|place|method|person)$/.test(dimension));
}

const isMethod = ({ senses }: Mark) => senses.thing?.method !== undefined;

function isTrait({ senses }: Mark): boolean {
  return (
    senses.thing?.trait === true ||
    senses.own.some(({ dimension }) => dimension === "kind" || dimension === "trait")
  );
}

function isSupply({ senses }: Mark): boolean {
  const isElse = senses.own.some(({ dimension }) => /^(?:place|source|buyer|person)$/.test(dimension));
  if (isElse && !senses.own.some(({ dimension }) => dimension === "what")) return false;
  const isStreamOnly =
    senses.thing?.stream !== undefined && !senses.own.some(({ dimension }) => dimension === "what");
  if (isStreamOnly) return false;
  return (
    senses.thing?.supply !== undefined ||
    senses.own.some(({ dimension }) => dimension === "what" || dimension === "category")
  );
}

function isStream({ senses }: Mark): boolean {
  return senses.thing?.stream !== undefined || senses.own.some(({ dimension }) => dimension === "stream");
}

const PIECES: ReadonlySet<string> = new Set([
  "piece",
  "pieces",
  "furniture",
  "inventory",
  "stock",
  "flips",
  "furniture pieces",
  "pieces of furniture",
]);

/** "on pieces", "to buying furniture": what the money went on or came of is pieces in general. */
function isLinkedGeneric({ marks, cues }: Parts): boolean {
  const isOut = marks.some(({ text }) => /^(?:went|gone|going|paid) out$/.test(text));
  const links = cues.has("paid") || isOut ? ["on", "in", "from", "for"] : ["on", "in", "from"];
  return marks.some(({ text }, at) => {
    if (!PIECES.has(text) && !/^(?:(?:her|his|their)|what (?:he|she|they)) \w+/.test(text)) return false;
    const before = marks.slice(Math.max(0, at - 2), at);
    if (before.some(({ senses }) => senses.flags.has("parted") && !senses.link)) return false;
    return before.some(
      ({ senses, text: said }) =>
        links.includes(senses.link ?? "") ||
        (cues.has("paid") ? / (?:on|into|for)$/ : / (?:on|into)$/).test(said),
    );
  });
}
