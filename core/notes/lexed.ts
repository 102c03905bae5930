import type { Head, Tok } from "./clause.ts";
import { headsOf } from "./heads.ts";
import { withMentions } from "./mentions/mentions.ts";
import { withNames } from "./mentions/names.ts";
import { withPronouns } from "./mentions/pronouns.ts";
import { withoutAnnounced } from "./passed-over/announced.ts";
import { withoutOrder } from "./passed-over/dictated.ts";
import { withoutHesitations } from "./passed-over/hesitations.ts";
import { withDayThen } from "./passed-over/other-day.ts";
import { MARKS } from "./tokens/lexicon.ts";
import { type Meant, meantBy } from "./tokens/meant.ts";
import { rolesOf } from "./tokens/roles.ts";
import { HINTS } from "./tokens/sign-bits.ts";
import { wordsOf } from "./tokens/text.ts";
import { tokensOf } from "./tokens/tokens.ts";
import { language } from "./verbs.ts";
import { SAYS_HOUR } from "./words/times.ts";

/** The tokens of a line, and what its words are for in all (`HINTS`). */
interface Lexed {
  tokens: Tok[];
  hints: number;
}

/** Lines of late: many look at the same message one after another. */
const known = new Map<string, readonly Tok[]>();
const KNOWN_MAX = 8;

/** The tokens of a line as the tables of whole lines see them, for whoever only looks at them. */
export function lexed(line: string): readonly Tok[] {
  const before = known.get(line);
  if (before) return before;
  if (known.size >= KNOWN_MAX) known.clear();
  const tokens = lexedAnew(line);
  known.set(line, tokens);
  return tokens;
}

/** The same for whoever reads them: a reader claims tokens. */
export function lexedAnew(line: string): Tok[] {
  return lexedOf(meantBy(line, wordsOf(line), language().lexer)).tokens;
}

/** The same of words whose meaning is known. Each step is taken where the line holds what it begins from. */
export function lexedOf(meant: Meant<Head>): Lexed {
  let tokens: Tok[] = tokensOf(meant, language().lexer);
  if ((meant.marks & MARKS.pause) !== 0) tokens = withoutHesitations(tokens);
  if ((meant.marks & MARKS.order) !== 0) tokens = withoutOrder(tokens);
  let hints = 0;
  for (let at = 0; at < tokens.length; at += 1) hints |= tokens[at]!.hints;
  if ((hints & HINTS.clock) !== 0) tokens = withWorkClocks(tokens);
  tokens = withMentions(tokens);
  if ((hints & (HINTS.standsForPieces | HINTS.rank)) !== 0) tokens = withPronouns(tokens);
  if ((hints & (HINTS.person | HINTS.place)) !== 0) tokens = withNames(tokens);
  if ((hints & HINTS.until) !== 0) tokens = withDayThen(tokens);
  return { tokens: withoutAnnounced(tokens), hints };
}

const isWorkWord = ({ roles }: Tok): boolean =>
  roles.labor === true || roles.heads?.some((head) => head.kind === "work") === true;

/**
 * "1:45 sanding the desk" is an hour and three quarters, "sanded 2-4pm" two hours, and neither a time of day. Without a
 * word of work so is only what stands right before "on" and the piece, or behind "time".
 */
function withWorkClocks(tokens: Tok[]): Tok[] {
  const works = tokens.some(isWorkWord);
  const isOther = !works && tokens.some((token) => headsOf(token).length > 0 || token.kind === "amount");
  if (isOther || !tokens.some(({ kind }) => kind !== "clock")) return tokens;
  return tokens.map((token, at) => {
    if (SAYS_HOUR.has(tokens[at - 1]?.text ?? "")) return token;
    const isSure = works || isOnPiece(tokens, at);
    const time = isSure || token.minutes !== undefined ? workTime(token) : null;
    if (time && !isSure) time.roles = UNSURE;
    return time ?? token;
  });
}

/** "desk 10am-12:15pm" may be when somebody comes. */
const UNSURE = rolesOf<Head>({ hedge: "vague" });

function isOnPiece(tokens: readonly Tok[], at: number): boolean {
  const around = [tokens[at - 1]?.text, tokens[at + 1]?.text];
  if (around[1] === "on" || (around[0] === "from" && tokens[at]!.minutes !== undefined)) return true;
  return tokens.slice(0, at).some(({ text }) => text === "time");
}

/** A time of day as how long it went on; null where it says none. */
function workTime(token: Tok): Tok | null {
  if (token.kind !== "clock") return null;
  if (token.minutes !== undefined) return { ...token, kind: "duration" };
  const clock = /^(\d{1,2}):(\d{2})$/.exec(token.text);
  return clock && { ...token, kind: "duration", minutes: Number(clock[1]) * 60 + Number(clock[2]) };
}
