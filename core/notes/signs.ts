import type { Tok } from "./clause.ts";
import type { Sign } from "./grammar.ts";

const LOAN = /(?:^| )loans?(?: |$)/;

/** What a clause holds, for telling its kind. */
export function signsOf(tokens: readonly Tok[]): Set<Sign> {
  const signs = new Set<Sign>();
  for (const token of tokens) {
    if (token.kind === "piece") signs.add("piece").add("named");
    else if (token.kind === "amount") signs.add("number");
    else if (
      token.kind === "duration" ||
      token.kind === "miles" ||
      token.kind === "percent" ||
      token.kind === "clock" ||
      token.kind === "span"
    )
      signs.add(token.kind);
    else if (token.kind === "word") addWordSigns(token, signs);
  }
  tokens.forEach((token, at) => addPairSigns(token, tokens[at - 1], tokens, at, signs));
  return signs;
}

function addPairSigns(
  token: Tok,
  previous: Tok | undefined,
  tokens: readonly Tok[],
  at: number,
  signs: Set<Sign>,
): void {
  if (token.text === "off" && previous?.kind === "amount") signs.add("off");
  if (/^365(?:\.25)?$/.test(token.text) || token.days === 365) signs.add("yearDays");
  if (!LOAN.test(token.text)) return;
  const before = tokens.slice(Math.max(0, at - 5), at);
  if (before.some((word) => /^(?:to|toward|towards|on|onto|into|at)$/.test(word.text))) signs.add("loanward");
}

function addWordSigns({ roles, text, unknown }: Tok, signs: Set<Sign>): void {
  if (roles.supply) signs.add("supply");
  if (roles.stream) signs.add("stream");
  if (roles.person) signs.add("person");
  if (roles.labor) signs.add("labor");
  if (roles.pronoun) signs.add("pronoun");
  if (unknown && text.length > 1) signs.add("named");
  if (LOAN.test(text)) signs.add("loan");
  if (/^(?:tax|taxes|taxs)$/.test(text)) signs.add("tax");
}
