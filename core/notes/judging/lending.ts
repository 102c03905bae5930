import { asSaid, type Clause, claim, type Tok } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { NOBODY_NAMED } from "../words/names.ts";
import { isOwner } from "../words/people.ts";

/** Something has to be lent; "mom borrowed the sander", "let bob use my drill" say to whom by the place of the name. */
export function judgeLending(fields: ReadingFields["lent"], clause: Clause): Trouble | null {
  if (fields.what === undefined && fields.pieces === undefined) return { kind: "unknown" };
  const { head } = clause;
  if (fields.to !== undefined || fields.returned || !head) return null;
  const isOurs = HANDS_OUT.test(head.text);
  const borrower = borrowerOf(clause, head, isOurs);
  if (borrower === null) return isOurs || !TAKES_HOME.test(head.text) ? null : { kind: "other" };
  if (!NOBODY_NAMED.has(borrower)) fields.to = borrower;
  return null;
}

/** Verbs of whoever has it now, and ours, which name them next: "lent mom the lamp". */
const TAKES_HOME = /^(?:borrow|is borrow|has |still has |took)/;
const HANDS_OUT = /^(?:let|len[dt]|loan)/;

/** The name before the verb, or behind it. */
function borrowerOf(clause: Clause, head: Tok, isBehind: boolean): string | null {
  const { tokens } = clause;
  const actor = tokens.find(({ roles }) => roles.actor === "ours");
  if (actor) return actor.text.replace(/^(?:the|my|our) /, "");
  const at = tokens.indexOf(head);
  const name = (isBehind ? tokens.slice(at + 1) : tokens.slice(0, at)).filter(isNameWord);
  const end = name.findIndex((token, place) => place > 0 && token.from !== name[place - 1]!.to);
  const words = end < 0 ? name : name.slice(0, end);
  claim(...words);
  // "moms borrowing it": she is.
  const said = asSaid(clause, words).replace(/['’]s$/, "");
  return said === "" ? null : isOwner(said) ? said.slice(0, -1) : said;
}

const isNameWord = ({ kind, roles, unknown, claimed, text }: Tok): boolean =>
  kind === "word" && !claimed && (unknown === true || roles.person === true || isOwner(text));
