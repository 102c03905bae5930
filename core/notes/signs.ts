import type { Tok } from "./clause.ts";
import type { Sign } from "./grammar.ts";

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

function hintOf({ kind, text, roles }: Tok): number {
  if (kind === "day") return HINTS.day;
  if (kind === "span") return HINTS.until;
  if (kind !== "word") return 0;
  const said = HINT_OF.get(text) ?? 0;
  return (
    said |
    (roles.method ? HINTS.method : 0) |
    (roles.place ? HINTS.place : 0) |
    (text.endsWith("fee") || text.endsWith("fees") ? HINTS.fee : 0)
  );
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
    signs.hints |= hintOf(token);
    switch (token.kind) {
      case "piece":
        signs.mask |= BITS.piece | BITS.named;
        break;
      case "amount":
        signs.mask |= BITS.number;
        if (token.text === "365" || token.text === "365.25") signs.add("yearDays");
        break;
      case "span":
        signs.add("span");
        if (token.days === 365) signs.add("yearDays");
        break;
      case "duration":
      case "miles":
      case "percent":
      case "clock":
        signs.add(token.kind);
        break;
      case "word":
        addWordSigns(token, tokens, at, signs);
    }
  }
  return signs;
}

function addWordSigns({ roles, text, unknown }: Tok, tokens: readonly Tok[], at: number, signs: Signs): void {
  if (roles.supply) signs.add("supply");
  if (roles.stream) signs.add("stream");
  if (roles.person) signs.add("person");
  if (roles.labor) signs.add("labor");
  if (roles.pronoun) signs.add("pronoun");
  if (unknown && text.length > 1) signs.mask |= BITS.named | BITS.unknown;
  if (text === "tax" || text === "taxes") signs.add("tax");
  if (text === "off" && tokens[at - 1]?.kind === "amount") signs.add("off");
  if (!text.includes("loan") || !LOAN.test(text)) return;
  signs.add("loan");
  for (let back = Math.max(0, at - LOANWARD_REACH); back < at; back += 1)
    if (LOANWARD.has(tokens[back]!.text)) signs.add("loanward");
}
