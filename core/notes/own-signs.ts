import type { Roles } from "./roles.ts";
import { BITS, HINTS, type OwnSigns } from "./sign-bits.ts";

const HINT_OF = new Map<string, number>([
  ...["to", "for", "from", "at", "off", "off of", "out of", "outta"].map(
    (word) => [word, HINTS.preposition] as const,
  ),
  ...[
    "until",
    "till",
    "til",
    "thru",
    "through",
    "before",
    "pickup",
    "pick up",
    "picking up",
    "coming",
    "collecting",
    "picks up",
    "picking it up",
  ].map((word) => [word, HINTS.until] as const),
  ["by", HINTS.until | HINTS.method],
  ["via", HINTS.method],
  ...["on", "in"].map((word) => [word, HINTS.on] as const),
  ["commission", HINTS.fee],
]);

const LOAN = /(?:^| )loans?(?: |$)/;

/** The signs and hints of a word or phrase, whatever stands around it. */
export function ownSignsOf(text: string, roles: Roles): OwnSigns {
  let signs = 0;
  if (roles.supply) signs |= BITS.supply;
  if (roles.stream) signs |= BITS.stream;
  if (roles.person) signs |= BITS.person;
  if (roles.labor) signs |= BITS.labor;
  if (roles.pronoun) signs |= BITS.pronoun;
  if (text === "tax" || text === "taxes") signs |= BITS.tax;
  if (LOAN.test(text)) signs |= BITS.loan;
  let hints = HINT_OF.get(text) ?? 0;
  // "hold for" takes a name as "for" does.
  if (roles.heads) hints |= (HINT_OF.get(text.slice(text.lastIndexOf(" ") + 1)) ?? 0) & HINTS.preposition;
  if (roles.method) hints |= HINTS.method;
  if (roles.place) hints |= HINTS.place;
  if (text.endsWith("fee") || text.endsWith("fees")) hints |= HINTS.fee;
  return { signs, hints, units: undefined };
}
