import type { Tok } from "./clause.ts";
import type { Sign } from "./grammar.ts";
import type { Roles } from "./lexicon.ts";

const SIGNS: readonly Sign[] = [
  "piece",
  "named",
  "number",
  "supply",
  "loan",
  "stream",
  "duration",
  "miles",
  "percent",
  "tax",
  "clock",
  "span",
  "labor",
  "person",
  "pronoun",
  "unknown",
  "helper",
  "moneyFirst",
  "supplyFirst",
  "off",
  "loanward",
  "yearDays",
  "day",
];
const BITS = Object.fromEntries(SIGNS.map((sign, place) => [sign, 1 << place])) as Readonly<
  Record<Sign, number>
>;

/** The bits of some signs: a saying is held against a clause in two steps, however many signs it names. */
export function maskOf(signs: readonly Sign[] | undefined): number {
  return (signs ?? []).reduce((mask, sign) => mask | BITS[sign], 0);
}

/** Words that a slot begins from; a clause without any of them spares the slot its search. */
export const HINTS = { preposition: 1, until: 2, fee: 4, method: 8, on: 16, day: 32, place: 64 } as const;
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

/** What a word or phrase tells by itself, as bits. */
export interface OwnSigns {
  signs: number;
  hints: number;
}

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
  return { signs, hints };
}

/** What a clause holds, for telling its kind. */
export class Signs {
  mask = 0;
  hints = 0;

  constructor(mask = 0) {
    this.mask = mask;
  }

  has(sign: Sign): boolean {
    return (this.mask & BITS[sign]) !== 0;
  }

  add(sign: Sign): void {
    this.mask |= BITS[sign];
  }
}

const LOAN = /(?:^| )loans?(?: |$)/;
const LOANWARD = new Set(["to", "toward", "towards", "on", "onto", "into", "at"]);
/** How many tokens before the loan may stand between it and its "to". */
const LOANWARD_REACH = 5;

export function signsOf(tokens: readonly Tok[]): Signs {
  const signs = new Signs();
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    switch (token.kind) {
      case "word":
        addWordSigns(token, tokens, at, signs);
        break;
      case "piece":
        signs.mask |= BITS.piece | BITS.named;
        break;
      case "amount":
        signs.mask |= BITS.number;
        if (token.text === "365" || token.text === "365.25") signs.add("yearDays");
        break;
      case "day":
        signs.add("day");
        signs.hints |= HINTS.day;
        break;
      case "span":
        signs.hints |= HINTS.until;
        signs.add("span");
        if (token.days === 365) signs.add("yearDays");
        break;
      case "duration":
      case "miles":
      case "percent":
      case "clock":
        signs.add(token.kind);
    }
  }
  return signs;
}

function addWordSigns({ roles, text, unknown }: Tok, tokens: readonly Tok[], at: number, into: Signs): void {
  const { signs, hints } = roles.own ?? ownSignsOf(text, roles);
  into.mask |= signs;
  into.hints |= hints;
  if (unknown && text.length > 1) into.mask |= BITS.named | BITS.unknown;
  if (text === "off" && tokens[at - 1]?.kind === "amount") into.mask |= BITS.off;
  if ((signs & BITS.loan) === 0) return;
  for (let back = Math.max(0, at - LOANWARD_REACH); back < at; back += 1)
    if (LOANWARD.has(tokens[back]!.text)) into.mask |= BITS.loanward;
}
