import type { Tok } from "../clause.ts";
import { isAmount } from "../clause.ts";
import type { VerbFacts } from "../heads.ts";
import { absorbs, headOf, headsOf, isLight, strongHeadsOf, takesSlot } from "../heads.ts";
import { isQuestion } from "../questions.ts";
import type { Kind } from "../reading.ts";
import { CARRIED, TAKES_TIME } from "../words/times.ts";
import type { Cut } from "./cut.ts";
import type { Shape } from "./shape.ts";
import { shapeOf } from "./shape.ts";

/** Whether a run without a verb says a kind of note by what it holds alone. */
function standsAlone(shape: Shape, before: Shape, facts: VerbFacts, joint: string | undefined): boolean {
  const { head } = before;
  if (shape.miles) return before.miles || !takesSlot(head, "miles", facts);
  // "sanded dresser and desk 2h": one job on both.
  if (shape.duration && before.labor && !before.duration && !head && !shape.labor) return false;
  // "spent 12 on wax and 2 hours waxing the hutch"
  if (shape.duration && before.amount && before.supply && !before.duration) return true;
  if (shape.duration) return before.duration || !takesSlot(head, "minutes", facts);
  if (shape.stream && shape.amount) return true;
  if (shape.supply && shape.amount) {
    const waits = takesSlot(head, "money", facts) || takesSlot(head, "price", facts);
    // "bought armoire, paint 12": after a comma, and the number right behind it.
    const isPricedAlone = joint === "," && shape.pricedSupply && before.piece;
    // "spent 2h on the desk and 14 on paint"
    const isWorked = before.duration && !before.supply;
    // "lent the sander to bob, and screws 4": what is lent has no price.
    const isOpen = before.supply && !takesSlot(head, "what", facts);
    return before.amount || isWorked || isPricedAlone || joint === "." || !(isOpen || waits);
  }
  return shape.loan && shape.amount;
}

function saysTheSame(a: Tok, b: Tok): boolean {
  return strongHeadsOf(a).some(({ kind }) => strongHeadsOf(b).some((head) => head.kind === kind));
}

/** A verb that could complete the one before opens a clause where it brings a thing or an amount of its own. */
export function hasItsOwn(next: Shape, before: Shape, paid = true): boolean {
  if (next.loan || next.supply || next.stream) return true;
  if (next.percent && !before.percent) return true;
  // "spent 19 on glass and spent 40 minutes on it"
  if (next.duration && before.amount && !before.duration) return true;
  // "bureau 35 bought, coat rack free"
  if (next.piece && before.piece && before.amount && next.head?.text === "free") return true;
  // "deposit 45 on desk, hold hutch": the same kind of note again, of another piece.
  if (next.head && before.head && next.headFirst && before.piece && saysTheSame(next.head, before.head))
    return true;
  // "car loan balance 5210 and grad loan balance 2980"
  const isTwice =
    next.head && before.head && next.amount && before.amount && saysTheSame(next.head, before.head);
  if (isTwice && strongHeadsOf(next.head!).some(({ kind }) => kind === "statement")) return true;
  // "worked 3h on the desk, finished it": that it is done is a note of its own.
  const isDone = next.pronoun && !next.amount && !next.duration && isFinish(next.head);
  if (isDone && (before.duration || (before.supply && before.amount))) return true;
  // "rosa got the sideboard, rest was 220. she tipped me 10": what came in besides is no price.
  if (next.amount && before.amount && before.piece && isIncome(next.head)) return true;
  // "wardrobe done, sideboard started", "gave the stool to a friend, cabinet done": a piece with its own verb behind it.
  // "started on the stool. the hutch is 180 now": what is begun has no price.
  const isBegun = saysKind(before.head, "start") && next.amount;
  const isAfter = !before.headFirst || isFinish(next.head) || isBegun;
  const isBehind = next.piece && before.piece && !next.headFirst && isAfter;
  if (isBehind && next.head && before.head) return true;
  // "desk done and started hutch", "2h on desk. started on hutch": what is begun is not what else is told of.
  const isNamed = next.piece && before.piece && next.headFirst;
  if (isNamed && !saysKind(before.head, "start") && saysKind(next.head, "start")) return true;
  // "gave the lamp to mom, finished the desk": what is done was not given with it.
  const isGone = saysKind(before.head, "retire") && !before.labor && !before.duration;
  if (isNamed && isGone && isFinish(next.head)) return true;
  // "sold desk 110, listed dresser": what is listed was not sold with it.
  if (isNamed && before.amount && isListing(next.head)) return true;
  if (!next.amount) return false;
  // "got stool 18 and listed 70": "got" alone would be taken up by the listing.
  if (before.piece && before.amount && next.headFirst && isListing(next.head)) return true;
  // "hold #4 and #5 till fri 60 deposit" is one hold; "sold desk, paid 40 for lamp" a sale and a purchase.
  const isOfAnother = next.piece || next.unlisted;
  const another = isOfAnother && (before.piece ? before.amount || next.headFirst : !paid);
  // "listed it for 180 and then a man put down 40 on it"
  if (next.pronoun && !next.piece && before.amount && isDeposit(next.head)) return true;
  return another || (next.hands && before.amount);
}

const PAID: ReadonlySet<string> = new Set(["paid", "payed", "pd"]);

const saysKind = (head: Tok | undefined, kind: Kind): boolean =>
  head !== undefined && headsOf(head).some((said) => said.kind === kind);

const isTrade = (head: Tok): boolean =>
  headsOf(head).some(({ kind, tails }) => tails === null && (kind === "buy" || kind === "sell"));

const isListing = (head: Tok | undefined): boolean =>
  head !== undefined && strongHeadsOf(head).some(({ kind }) => kind === "list");

const isRetiring = (head: Tok): boolean => strongHeadsOf(head).some(({ kind }) => kind === "retire");

const isFinish = (head: Tok | undefined): boolean =>
  head !== undefined && strongHeadsOf(head).some(({ kind }) => kind === "finish");

const isIncome = (head: Tok | undefined): boolean =>
  head !== undefined && headsOf(head).every(({ kind, light }) => kind === "income" && !light);

const isDeposit = (head: Tok | undefined): boolean =>
  head !== undefined && strongHeadsOf(head).some(({ kind }) => kind === "hold");

/** "so i went to the estate sale and": nothing that could be recorded yet. */
function isLeadIn(before: Shape, cut: Cut): boolean {
  const thing = before.amount || before.miles || before.duration;
  if (thing || cut.repeats) return false;
  const isOpen = !before.head || (isLight(before.head) && !before.piece && !before.supply);
  return isOpen && !isDoneAlone(cut);
}

/** "done and listed 110": that it is done is a note, though its piece is left out. */
function isDoneAlone({ tokens }: Cut): boolean {
  const said = tokens.filter(({ kind, roles }) => kind !== "mark" && (roles.heads || !roles.filler));
  return said.length === 1 && headsOf(said[0]!).some(({ kind }) => kind === "finish");
}

/** "45 min", "took 3 hrs": how long, and no verb that says more. */
const isTimeAlone = ({ head, labor }: Shape): boolean => !labor && (!head || TAKES_TIME.has(head.text));

/** "sanded, sealed and done", "hutch is done too": the last word says that nothing is left to do. */
function isSaidDone(tokens: readonly Tok[]): boolean {
  const last = tokens.findLast(
    ({ kind, roles }) =>
      kind !== "mark" && kind !== "day" && !(roles.filler && !roles.heads) && !roles.opinion,
  );
  return last !== undefined && !last.roles.labor && headsOf(last).some(({ kind }) => kind === "finish");
}

/** "needed a new drill so i spent 60": what for, before how much. */
function isWhatFor(before: Shape, next: Shape, facts: VerbFacts): boolean {
  const isSupply = before.supply && !before.amount && (!before.head || isLight(before.head));
  return isSupply && next.amount && !next.supply && !next.piece && takesSlot(next.head, "money", facts);
}

/** "poly on the desk, 1 hr", "did the first coat on it, took 50 min", "took the desk to the buyer, 17 miles": how long, or how far. */
function isMeasureOfIt(next: Shape, before: Shape, verb: Tok | undefined, facts: VerbFacts): boolean {
  const isMeasure =
    next.duration !== next.miles && !next.piece && !next.amount && !next.supply && !next.pronoun;
  // "hauled it home, 14 mi"
  const isOf = before.piece || (before.pronoun && next.miles);
  const isOpen = isOf && !before.amount && !before.duration && !before.miles;
  if (!isMeasure || !isOpen || (next.miles && before.supply)) return false;
  const isTook = next.duration && next.head !== undefined && TAKES_TIME.has(next.head.text);
  if (next.head && !isTook) return false;
  if (verb === undefined || (next.duration && before.labor)) return true;
  if (isTook) return takesSlot(verb, "minutes", facts) || (isLight(verb) && !isTrade(verb));
  return next.miles && CARRIED.has(verb.text);
}

/** How a run of tokens goes on from the clause before it. */
export function joins(
  next: Shape,
  cut: Cut,
  facts: VerbFacts,
  joint: string | undefined,
): "merge" | "own" | "repeat" {
  const before = shapeOf(cut.tokens);
  const verb = before.head ?? cut.repeats;
  // "cleaned up and done, 45 min": the work, and that it is done.
  if (next.duration && isTimeAlone(next) && before.piece && isSaidDone(cut.tokens)) return "own";
  if (isMeasureOfIt(next, before, verb, facts)) return "merge";
  // "love the desk but sold the lamp 20": of the first nothing is told.
  const isUntold = before.piece && !verb && !before.labor && joint === "but";
  if (isUntold && next.piece && (next.head || next.labor)) return "own";
  if (next.head) {
    // "2 lamps 5 each, got em tues", "48 for the coffee table, listed": the verb comes late.
    const isBare = !next.piece && !next.amount && !next.supply && !next.unlisted;
    const isLate = isBare && !verb && before.piece && before.amount;
    if (isLate && (isTrade(next.head) ? next.pronoun || !isLight(next.head) : isListing(next.head)))
      return "merge";
    // "sandpaper, 9, paid by card on the 2nd": how and when, of the cost before it.
    if (isBare && !verb && before.supply && before.amount && PAID.has(next.head.text)) return "merge";
    const paid = verb !== undefined && strongHeadsOf(verb).some((head) => facts.takes(head.kind, "money"));
    if (verb && absorbs(verb, next.head, facts) && !hasItsOwn(next, before, paid)) return "merge";
    // "the crib got wet and i had to throw it out"
    const isLeft = !verb || (isLight(verb) && !before.headFirst);
    const isTopic = before.piece && isLeft && !before.amount && !before.duration && !before.supply;
    if (isTopic && next.pronoun && !next.piece && !next.amount && isRetiring(next.head)) return "merge";
    return before.filling || isLeadIn(before, cut) || isWhatFor(before, next, facts) ? "merge" : "own";
  }
  // "sanded desk 1h and painted the lamp": how long that took is still to say.
  if (next.labor && next.piece && !next.duration && before.piece && cut.tokens.at(-1)!.kind === "duration")
    return "own";
  // "armchair and ottoman 35 min": one job on both.
  const isPieceAlone = before.piece && !before.head && !before.amount && !before.duration && !before.supply;
  if (next.piece && next.duration && isPieceAlone && !cut.repeats) return "merge";
  // "stain and final coat of poly on the crib 50 min"
  const isSupplyAlone = before.supply && !before.head && !before.amount && !before.piece && !before.duration;
  if (isSupplyAlone && next.duration && next.piece && !next.amount) return "merge";
  // "stripped and sanded desk 3h": one job, and its parts.
  if (isLeadIn(before, cut) && !before.piece && !before.supply && !before.stream && !before.loan)
    return "merge";
  if (next.filling || (next.fee && verb && headsOf(verb).some((said) => facts.takes(said.kind, "fee"))))
    return "merge";
  if (next.loan && next.amount && before.loan && before.amount && verb) return "repeat";
  // "bench is done, asking 80"
  const isDone = verb ? !takesSlot(verb, "price", facts) : before.duration;
  if (next.asking && next.amount && !next.piece && isDone) return "own";
  // "knobs 8.50 for the desk, chair was junk so trashed it"
  if (next.piece && next.told && !next.amount && before.amount && before.piece) return "own";
  const isPriced = before.amount || before.free;
  if (standsAlone(next, { ...before, amount: isPriced, head: verb }, facts, joint)) return "own";
  // "bought desk 20, 3 stools 5 each and a lamp for nothing"
  if (next.piece && (next.amount || next.free) && isPriced && verb && (before.piece || before.pronoun))
    return "repeat";
  if (next.piece && next.buyer && before.piece && before.buyer && verb) return "repeat";
  // "bought a rocker at the thrift store and a lamp 8 at the yard sale": two places, two purchases.
  if (next.piece && next.place && before.piece && before.place && verb && takesSlot(verb, "price", facts))
    return "repeat";
  if (next.piece && next.amount && before.amount && !verb) return "own";
  if (next.unlisted && before.amount && before.piece && verb) return "repeat";
  // "drove 7 miles for a sewing table, 10 bucks": no drive has a price.
  const isDriven = before.miles && before.piece && (!verb || takesSlot(verb, "miles", facts));
  if (isDriven && next.amount && !before.amount && !next.piece && joint !== undefined) return "own";
  return "merge";
}

/** "bought dresser 30 and nightstand": was the nightstand in the 30? */
export function isPriceForBoth(cut: Cut, next: Shape, joint: readonly Tok[], facts: VerbFacts): boolean {
  const head = headOf(cut.tokens) ?? cut.repeats;
  if (
    !next.piece ||
    next.amount ||
    next.free ||
    next.head ||
    next.prepositional ||
    !head ||
    joint.length === 0
  )
    return false;
  const price = cut.tokens.findLastIndex(isAmount);
  const piece = cut.tokens.findIndex((token) => token.kind === "piece");
  return (
    price >= 0 &&
    piece >= 0 &&
    piece < price &&
    strongHeadsOf(head).some((said) => facts.takes(said.kind, "price"))
  );
}

/** "listed it for 180 and a man called and put 40 down": the man's call leads in what follows. */
export function isSomebodysDoing(shape: Shape, part: readonly Tok[]): boolean {
  const isBare = !shape.head && !shape.piece && !shape.amount && !shape.supply && !shape.pronoun;
  return (
    isBare &&
    part.some(({ roles }) => roles.person) &&
    part.some(({ roles }) => roles.hedge === "offer" || roles.hedge === "appointment")
  );
}

/** "snooze 2 days, whats unlisted": a question behind a note is one of its own. */
export function asksSomething(part: readonly Tok[]): boolean {
  return (
    /^(?:what|whats|how|hows|show|which|when|where|who|whos)(?: |$)/.test(part[0]!.text) && isQuestion(part)
  );
}

/** "i think i overpaid but i bought …": what stands before "but" says nothing to record, and takes nothing from it. */
export function isOutweighed(last: Cut, joint: readonly Tok[]): boolean {
  if (!joint.some(({ text }) => text === "but")) return false;
  const before = shapeOf(last.tokens);
  const isDoubt = last.tokens.some(({ roles }) => roles.hedge === "doubt");
  return isLeadIn(before, last) && !before.piece && !before.supply && !isDoubt;
}
