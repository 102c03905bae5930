import type { Clause } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { Draft } from "../interpreting/draft.ts";
import { heldIn, itself, type Offer } from "./held.ts";
import {
  asSale,
  boughtListedSold,
  byWhatItHolds,
  correction,
  costOrPiece,
  drivenMiles,
  forAllOrOne,
  inOrOut,
  payOrBalance,
  serviceToCome,
  takenBack,
  theirsOrOurs,
} from "./kinds.ts";
import {
  cutOrPrice,
  eachDay,
  eitherAmount,
  eitherSpoken,
  newPrice,
  ofPieceOrSize,
  timeOrCost,
} from "./numbers.ts";
import {
  depositOrPrice,
  feeInOrOff,
  owedOrHeld,
  owedOrNot,
  priceAndNet,
  soldOrHeld,
  withExtra,
  withLess,
} from "./prices.ts";

/*
 * What an unclear clause may mean, as whole readings, likeliest first. Each is made of the person's own words; a
 * trouble that leaves nothing to offer offers nothing.
 */

const OFFERS: Partial<Record<Trouble["kind"], Offer>> = {
  left: itself,
  unknown: byWhatItHolds,
  unclaimed: byWhatItHolds,
  pieceOrCost: costOrPiece,
  buyer: itself,
  anotherPerson: theirsOrOurs,
  gone: itself,
  backAndKept: itself,
  moneyBack: takenBack,
  intention: asSale,
  offer: asSale,
  asking: (held) => asSale(held).slice(0, 1),
  service: serviceToCome,
  appointment: asSale,
  doubt: itself,
  shareOfPrice: itself,
  twoKinds: itself,
  priceOfBoth: forAllOrOne,
  eitherOf: ofPieceOrSize,
  part: itself,
  "so far": itself,
  pending: soldOrHeld,
  "own money": itself,
  unpaid: owedOrHeld,
  deposit: depositOrPrice,
  net: priceAndNet,
  "part paid": owedOrNot,
  extra: withExtra,
  "money in": inOrOut,
  less: withLess,
  "after fee": feeInOrOff,
  noVerb: boughtListedSold,
  timeOrCost,
  cutOrPrice,
  raiseBy: newPrice,
  loanAlone: payOrBalance,
  loneNumber: correction,
  milesUnsaid: drivenMiles,
  twoNumbers: eitherAmount,
  vagueAmount: eitherSpoken,
  whichDay: (held) => (held.made ? [held.made, ...eachDay(held)] : []),
};

/** What a clause in trouble may mean; `made` is what its words would be without the trouble. */
export function couldBe(trouble: Trouble, clause: Clause, made: Draft | undefined): Draft[] {
  const offer = OFFERS[trouble.kind];
  return offer ? offer(heldIn(clause, made)).filter(isAny).slice(0, 3) : [];
}

/** No time at all was worked on nothing. */
const isAny = ({ kind, fields }: Draft): boolean => kind !== "work" || fields["minutes"] !== 0;
