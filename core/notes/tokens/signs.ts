import type { Tok } from "../clause.ts";
import { LOANWARD } from "../words/links.ts";
import { ownSignsOf } from "./own-signs.ts";
import { BITS, HINTS, Signs } from "./sign-bits.ts";

/** How many tokens before the loan may stand between it and its "to". */
const LOANWARD_REACH = 5;

export function signsOf(tokens: readonly Tok[]): Signs {
  const signs = new Signs();
  for (let at = 0; at < tokens.length; at += 1) {
    const token = tokens[at]!;
    signs.hints |= token.hints;
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

function addWordSigns(token: Tok, tokens: readonly Tok[], at: number, into: Signs): void {
  const { roles, text, unknown } = token;
  const signs = roles.own?.signs ?? ownSignsOf(text, roles);
  into.mask |= signs;
  if (unknown && text.length > 1) into.mask |= BITS.named | BITS.unknown;
  if (text === "off" && tokens[at - 1]?.kind === "amount") into.mask |= BITS.off;
  if ((signs & BITS.loan) === 0) return;
  for (let back = Math.max(0, at - LOANWARD_REACH); back < at; back += 1)
    if (LOANWARD.has(tokens[back]!.text)) into.mask |= BITS.loanward;
}
