import type { Tok } from "../clause.ts";
import { placeAfter, textOf } from "../clause.ts";
import { rolesOf } from "../tokens/roles.ts";
import { NO_ROLES, wordToken } from "../tokens/token.ts";
import { isEveryday } from "../words/everyday.ts";
import { AND, ARTICLES_WIDE, PREPOSITIONS } from "../words/links.ts";
import {
  BEFORE_GIVEN_NAME,
  BEFORE_NAMES,
  CARRIES_ON,
  DESCRIBES,
  ENDS_NAME,
  IS_CALLED,
  LIKE_SOMEBODY,
  SAID_OF_NAMED,
  SOMEBODY_NAMED,
  TAKES_NAME,
} from "../words/names.ts";
import { ALSO_YOUNG, ANYBODYS, HOUSEHOLD, NAMES_THAT_ARE_WORDS } from "../words/people.ts";

function isWordOfName(token: Tok | undefined): boolean {
  return token !== undefined && token.kind === "word" && !ENDS_NAME.has(token.text) && !token.roles.method;
}

/** Where the description of a person or place that begins at `first` ends. */
function endOfName(tokens: readonly Tok[], first: number): number {
  let at = first + 1;
  while (at < tokens.length) {
    if (!CARRIES_ON.has(tokens[at]!.text)) {
      const previous = tokens[at - 1]!.text;
      const follows = at - 1 > first || CARRIES_ON.has(previous) || BEFORE_NAMES.has(previous);
      if (!follows || !isWordOfName(tokens[at]) || tokens[at]!.roles.heads?.some((head) => !head.light))
        break;
      at += 1;
      continue;
    }
    const next = placeAfter(tokens, at + 1, BEFORE_NAMES);
    const word = tokens[next];
    const described = word?.kind === "piece" && DESCRIBES.has(tokens[at]!.text);
    // "32 at the hardware store on sandpaper"
    const isBought = tokens[at]!.text === "on" && word?.roles.supply !== undefined;
    if (
      !word ||
      isBought ||
      (word.kind !== "word" && !described) ||
      word.roles.method ||
      ENDS_NAME.has(word.text)
    )
      break;
    at = next + 1;
  }
  return at;
}

const takesName = ({ kind, text }: Tok): boolean => kind === "mark" || TAKES_NAME.has(text);

/** A person or a place, which its name may follow. */
const opensName = ({ kind, roles }: Tok): boolean =>
  kind === "word" && (roles.person !== undefined || roles.place !== undefined) && !roles.pronoun;

/** "a guy named rob paid 40", "this lady carla put 20 down": the name alone tells who does it. */
function withGivenNames(tokens: Tok[]): Tok[] {
  for (let at = 0; at < tokens.length; at += 1) {
    if (!SOMEBODY_NAMED.has(tokens[at]!.text)) continue;
    let named = at + 1;
    let isSaid = false;
    for (; BEFORE_GIVEN_NAME.has(tokens[named]?.text ?? ""); named += 1)
      isSaid ||= IS_CALLED.has(tokens[named]!.text);
    const name = tokens[named];
    const next = tokens[named + 1];
    const isCalled = isSaid;
    isSaid ||= named === at + 1 && next !== undefined && SAID_OF_NAMED.has(next.text.split(" ")[0]!);
    if (!name || !isSaid || !isGivenName(name)) continue;
    const from = BEFORE_NAMES.has(tokens[at - 1]?.text ?? "") ? at - 1 : at;
    // "to this lady dana": only where the name is said to be one is it all that they are called.
    if (!isCalled && PREPOSITIONS.has(tokens[from - 1]?.text ?? "")) continue;
    tokens.splice(from, named - from + 1, wordToken("word", name.text, name.from, name.to, NO_ROLES, true));
    at = from;
  }
  return tokens;
}

const isGivenName = ({ kind, text, unknown, roles }: Tok): boolean =>
  kind === "word" &&
  !roles.pronoun &&
  ((unknown === true && !isEveryday(text)) || NAMES_THAT_ARE_WORDS.includes(text));

/** "a young fellow gave me 110", "the last 100 from some college kid": what somebody is like, and who that is, as one. */
function withLikeness(tokens: Tok[]): Tok[] {
  const isLike = (token: Tok | undefined) => token?.kind === "word" && LIKE_SOMEBODY.has(token.text);
  for (let at = 0; at < tokens.length; at += 1) {
    if (!isLike(tokens[at])) continue;
    let end = at + 1;
    while (isLike(tokens[end])) end += 1;
    const who = tokens[end];
    const before = tokens[at - 1]?.text ?? "";
    // "a young mom" is no mom of ours; "some college kid" is anybody's.
    const isAnybody =
      who !== undefined && (!HOUSEHOLD.has(who.text) || (ANYBODYS.has(before) && ALSO_YOUNG.has(who.text)));
    if (who?.roles.person !== undefined && isAnybody && (ANYBODYS.has(before) || opensSentence(tokens, at))) {
      const text = textOf(tokens.slice(at, end + 1));
      tokens.splice(at, end - at + 1, wordToken("word", text, tokens[at]!.from, who.to, SOMEBODY));
    } else at = end - 1;
  }
  return tokens;
}

const SOMEBODY = rolesOf<never>({ person: true });

/** Whether nothing but an article and words that mean nothing stands between a place and the beginning of its sentence. */
function opensSentence(tokens: readonly Tok[], at: number): boolean {
  const before = tokens
    .slice(0, at)
    .findLast(({ text, roles }) => !ARTICLES_WIDE.has(text) && !(roles.filler && !roles.heads));
  return before === undefined || before.kind === "mark" || AND.has(before.text);
}

/** The words of a name are that and nothing else: the truck in "lady in the red truck" is no spending. */
export function withNames(said: Tok[]): Tok[] {
  if (!said.some(opensName)) return said;
  const tokens = withGivenNames(withLikeness(said));
  for (let at = -1; at + 1 < tokens.length; at += 1) {
    if (at >= 0 && !takesName(tokens[at]!)) continue;
    const first = placeAfter(tokens, at + 1, BEFORE_NAMES);
    const token = tokens[first];
    if (!token || !opensName(token)) continue;
    const end = endOfName(tokens, first);
    for (let inside = first + 1; inside < end; inside += 1) {
      const { text, from, to } = tokens[inside]!;
      tokens[inside] = wordToken("word", text, from, to, NO_ROLES);
    }
    at = Math.max(at, end - 1);
  }
  return tokens;
}
