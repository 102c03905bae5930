import type { Books, Piece } from "../../books/books.ts";
import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Tok } from "../../notes/clause.ts";
import { saysNothing } from "../../notes/passed-over/passing.ts";
import { comingDay, pastDay } from "../../notes/quantities/days.ts";
import type { Mention } from "../../notes/reading.ts";
import { heard } from "../../notes/second-look/heard.ts";
import { centsIn } from "../../notes/slots/money.ts";
import { ALSO_SAID } from "../../notes/words/again.ts";
import { US } from "../../notes/words/chatter.ts";
import { isCommon } from "../../notes/words/daily.ts";
import {
  ANY_OTHER,
  ANYBODY,
  BEFORE_COMING,
  BESIDE_DEAL,
  DEAL_WORDS_MAX,
  type Deal,
  dealOf,
  ENDS_WHO,
  FEW_PEOPLE,
  NO_INTEREST,
  NOT_OF_NAME,
  OF_SOME_KIND,
  OPENS_DOING,
  SAYS_OF_IT,
  SEVERAL_PEOPLE,
  TELLS_OTHERWISE,
  TELLS_WHICH,
  WHOSE_KIN,
} from "../../notes/words/dealt.ts";
import { ARTICLES_WIDE } from "../../notes/words/links.ts";
import { HOUSEHOLD } from "../../notes/words/people.ts";
import { tellsOf } from "../../notes/words/telling.ts";

/*
 * What a message tells of a deal, word by word: who came, for which piece, what became of it and for how much. It is read
 * once, with what the books know: their buyers, and the words that tell one of their pieces from all others.
 */

/** The names on the books by which a message is read. */
interface Known {
  buyers: readonly string[];
  /** The pieces that a word tells from all others that are here. */
  byWord: ReadonlyMap<string, readonly number[]>;
}

export interface Dealt {
  deals: Set<Deal>;
  sums: { cents: Cents; each: boolean }[];
  /** Pieces that are named, "it" left out. */
  mentions: Mention[];
  /** Pieces told by a word that only they have: "green's gone". */
  described: readonly number[];
  /** Whoever came: as said, by the name on the books, or as the one of a piece ("white lady"). */
  who?: string;
  known?: string;
  buyerOf?: readonly number[];
  isSomebody: boolean;
  /** Somebody did it: told ahead of what was done, or with whom the money came to. */
  isTheirs: boolean;
  isOurs: boolean;
  method?: string;
  date?: Day;
  until?: Day;
  saysBack: boolean;
  /** Somebody says something of what they have, or nobody wants it. */
  complains: boolean;
  laments: boolean;
}

const WORDS_MAX = 30;

interface Word {
  text: string;
  token: Tok;
  /** It stands first, or behind a mark or a joint. */
  isFirst: boolean;
}

/** What a message tells of a deal; null where a word of it says anything else. */
export function dealtIn(text: string, books: Books, today: Day): Dealt | null {
  const tokens = heard(text);
  const words = tokens && wordsOf(tokens);
  if (!words || words.length > WORDS_MAX) return null;
  const known = knownIn(books);
  const dealt: Dealt = {
    deals: new Set(),
    sums: [],
    mentions: [],
    described: [],
    isSomebody: false,
    isTheirs: false,
    isOurs: false,
    saysBack: false,
    complains: false,
    laments: false,
  };
  for (let at = 0; at < words.length; ) {
    const taken = takes(dealt, words, at, known, today);
    if (taken === 0) return null;
    at += taken;
  }
  return dealt;
}

/** Each word by itself, and each token of another kind. */
function wordsOf(tokens: readonly Tok[]): Word[] {
  const words: Word[] = [];
  let isFirst = true;
  for (const token of tokens) {
    if (token.kind === "mark") {
      words.push({ text: token.text, token, isFirst });
      isFirst = true;
      continue;
    }
    const texts = token.kind === "word" ? token.text.split(" ") : [token.text];
    for (const text of texts) {
      words.push({ text, token, isFirst });
      isFirst = OPENS_DOING.has(text);
    }
  }
  return words;
}

/** So many words from a place on, or as many as there are. */
const phraseAt = (words: readonly Word[], at: number, many: number): string =>
  words
    .slice(at, at + many)
    .map(({ text }) => text)
    .join(" ");

/** How many words at a place are taken by what they tell; 0 where they say anything else. */
function takes(dealt: Dealt, words: readonly Word[], at: number, known: Known, today: Day): number {
  const { text, token } = words[at]!;
  if (token.kind === "mark") return text === "?" ? 0 : 1;
  const aside = asideAt(dealt, words, at);
  if (aside > 0) return aside;
  const people = somebodyAt(words, at, known);
  if (people) {
    const { who } = people.told;
    if (dealt.who !== undefined && who !== undefined && who !== dealt.who) return 0;
    if (dealt.deals.size === 0) dealt.isTheirs = true;
    Object.assign(dealt, { ...people.told, isSomebody: true });
    // "the chair to her sister, 20": it went to her.
    if (text === "to") dealt.deals.add("goes");
    return people.words;
  }
  for (let many = Math.min(DEAL_WORDS_MAX, words.length - at); many > 0; many -= 1) {
    const said = words.slice(at, at + many);
    if (!said.every((word) => word.token.kind === "word" || word.token.mention?.it)) continue;
    const phrase = phraseAt(words, at, many);
    if (many > 1 && BESIDE_DEAL.has(phrase)) return many;
    const deal = dealOf(phrase);
    if (!deal) continue;
    dealt.deals.add(deal);
    dealt.isTheirs ||= said.some((word) => word.text === "me" || word.text === "us");
    if (
      said.some((word) => US.has(word.text)) &&
      deal !== "pays" &&
      deal !== "puts" &&
      deal !== "goes" &&
      deal !== "held"
    )
      dealt.isOurs = true;
    return many;
  }
  // "here in an hour"
  if (token.kind === "duration" && /^(?:with)?in$/.test(words[at - 1]?.text ?? "")) return 1;
  // "got a desk": any desk, and hardly ours.
  if (text === "one" && ALSO_SAID.has(words[at + 1]?.text ?? "")) return 0;
  if (token.kind === "piece" && ANY_OTHER.has(words[at - 1]?.text ?? "")) return 0;
  if (token.kind !== "word")
    return takesToken(
      dealt,
      token,
      today,
      dealt.deals.has("held") || BEFORE_COMING.has(words[at - 1]?.text ?? ""),
    )
      ? 1
      : 0;
  if (token.roles.method !== undefined) {
    dealt.method = token.roles.method;
    return token.text.split(" ").length;
  }
  const described = known.byWord.get(text);
  if (described && dealt.described.length === 0) {
    dealt.described = described;
    return /^(?:ones?)$/.test(words[at + 1]?.text ?? "") ? 2 : 1;
  }
  if (text === "i" || text === "we" || text === "ive" || text === "weve") dealt.isOurs = true;
  if (text === "back") dealt.saysBack = true;
  // "took a picture", "her place": a thing of its own, which is none of these.
  if (ARTICLES_WIDE.has(words[at - 1]?.text ?? "") && !BESIDE_DEAL.has(text) && !token.roles.opinion)
    return 0;
  return isBeside(words[at]!) ? 1 : 0;
}

/** What is told by the way up to the next mark: a complaint before the money goes back, that nobody wants it; 0 where nothing is. */
function asideAt(dealt: Dealt, words: readonly Word[], at: number): number {
  const { text, isFirst } = words[at]!;
  const isComplaint = dealt.isSomebody && SAYS_OF_IT.has(text);
  const isNone = [1, 2, 3].some((many) => NO_INTEREST.has(phraseAt(words, at, many)));
  const isLament = isNone && (isFirst || dealt.mentions.length + dealt.described.length > 0);
  if (!isComplaint && !isLament) return 0;
  let end = at;
  while (end < words.length && words[end]!.token.kind !== "mark") {
    const { kind, mention } = words[end]!.token;
    if (kind === "amount" && words[end]!.text !== "one") return 0;
    if (kind === "piece" && isLament && mention!.it !== true) dealt.mentions.push(mention!);
    end += 1;
  }
  if (isComplaint) dealt.complains = true;
  else dealt.laments = true;
  return end - at;
}

function isBeside({ text, token }: Word): boolean {
  if (BESIDE_DEAL.has(text)) return true;
  const { roles } = token;
  if (roles.hedge || roles.vagueTime || HOUSEHOLD.has(text) || isOfWork(token)) return false;
  if ([...tellsOf([text])].some((tells) => TELLS_OTHERWISE.has(tells))) return false;
  return roles.filler === true || roles.opinion === true || saysNothing(token);
}

/** A supply, a service or a kind of work. */
const isOfWork = ({ roles }: Tok): boolean =>
  Boolean(roles.supply || roles.labor || roles.service || roles.noun);

function takesToken(dealt: Dealt, token: Tok, today: Day, isComing: boolean): boolean {
  const { kind, mention, said } = token;
  if (kind === "piece") {
    if (!mention!.it || mention!.count !== undefined) dealt.mentions.push(mention!);
    return true;
  }
  if (kind === "amount") {
    const cents = centsIn(token);
    if (cents === null || cents === 0 || token.text === "one") return false;
    if (dealt.sums.every((sum) => sum.cents !== cents)) dealt.sums.push({ cents, each: token.each === true });
    return true;
  }
  // "within the hour", "in five minutes"
  if (kind === "span" || kind === "clock") return true;
  if (kind !== "day") return false;
  const past = pastDay(said!, today);
  const coming = comingDay(said!, today);
  if (!isComing && "day" in past) dealt.date = past.day;
  if (isComing && coming) dealt.until = coming;
  return true;
}

interface Somebody {
  words: number;
  told: Partial<Dealt>;
}

/** "he's in", "she's with her mom": what they are tells nobody from others. */
const STANDS_FOR = /^(?:s?hes?|they(?:re)?)$/;
const BEFORE_MAX = 3;
const BEHIND_MAX = 6;

/** Somebody told at a place: "student", "her dad", "a lady from church", "white lady", a name; null where nobody is. */
function somebodyAt(words: readonly Word[], at: number, known: Known): Somebody | null {
  const { text, token } = words[at]!;
  const isLed = ARTICLES_WIDE.has(text) || text === "to" || text === "from";
  let from = at;
  while (
    from < at + 2 &&
    (ARTICLES_WIDE.has(words[from]?.text ?? "") || (from === at && (text === "to" || text === "from")))
  )
    from += 1;
  const before = words[at - 1]?.text ?? "";
  const mayBe =
    isLed ||
    words[at]!.isFirst ||
    before === "to" ||
    before === "from" ||
    before === "haha" ||
    before === "and" ||
    ANYBODY.has(text);
  if (!mayBe) return null;
  for (let head = from; head <= from + BEFORE_MAX && head < words.length; head += 1) {
    const word = words[head]!;
    const isCount = head === from && word.token.kind === "amount" && FEW_PEOPLE.test(word.text);
    if (isCount) continue;
    if (word.token.kind === "mark" || word.token.kind === "amount") return null;
    // "twin mom", "lady buyer": the last one is.
    const isNextHead = words[head + 1] !== undefined && isHead(words[head + 1]!, true);
    if (isNextHead || !isHead(word, head > from || isLed || words[at]!.isFirst)) {
      const isPiece =
        word.token.kind === "piece" && words[head + 1] !== undefined && isHead(words[head + 1]!, true);
      const isWord =
        word.token.kind === "word" && dealOf(word.text) === undefined && !NOT_OF_NAME.has(word.text);
      const isModifier = isPiece || isWord;
      if (!isModifier) break;
      continue;
    }
    if (words[from]!.token.kind === "amount" && !SEVERAL_PEOPLE.test(word.text)) return null;
    // Of our own household.
    const whose = words[from - 1]?.text ?? "";
    const isOurs = HOUSEHOLD.has(word.text) && !WHOSE_KIN.has(whose) && head === from;
    if (isOurs) return null;
    const end = STANDS_FOR.test(word.text) ? head + 1 : endOf(words, head + 1);
    const said = words.slice(from, end).map((each) => each.text);
    const named = said.join(" ");
    const told: Partial<Dealt> = ANYBODY.has(named) ? {} : { who: named };
    const buyer = buyerIn(said, known.buyers);
    if (buyer) told.known = buyer;
    const of = words
      .slice(from, head)
      .flatMap(
        (each) =>
          known.byWord.get(each.text) ??
          (each.token.mention?.name ? (known.byWord.get(each.token.mention.name) ?? []) : []),
      );
    if (of.length > 0) told.buyerOf = of;
    return { words: end - at, told };
  }
  // A name that is on the books, or that nobody knows, at the start of what is told.
  const buyer = known.buyers.find((each) => each === text || each === text.replace(/s$/, ""));
  if (buyer) return { words: 1, told: { who: buyer, known: buyer } };
  const isName =
    words[at]!.isFirst &&
    token.kind === "word" &&
    token.unknown === true &&
    !isCommon(text) &&
    dealOf(text) === undefined;
  // "doubled my money", "thanked her": done, and nobody.
  const next = words[at + 1]?.text ?? "";
  const isDone = /..ed$/.test(text) && (ARTICLES_WIDE.has(next) || US.has(next));
  if (!isName || isDone) return null;
  const end = endOf(words, at + 1);
  return { words: end - at, told: { who: phraseAt(words, at, end - at) } };
}

/** Whether a word is somebody: anybody at all, or where somebody stands, one who goes by what they do. */
function isHead({ text, token }: Word, isPlace: boolean): boolean {
  if (token.kind !== "word") return false;
  if (ANYBODY.has(text)) return true;
  if (ARTICLES_WIDE.has(text) || text === "him" || text === "them") return false;
  if (!isPlace || token.roles.supply || token.roles.hedge) return false;
  const isVerb = token.roles.heads !== undefined;
  return (
    token.roles.person === true ||
    HOUSEHOLD.has(text) ||
    (OF_SOME_KIND.test(text) &&
      !isVerb &&
      dealOf(text) === undefined &&
      !BESIDE_DEAL.has(text) &&
      !token.roles.filler)
  );
}

/** Where what tells which one it is ends: "from across the street". */
function endOf(words: readonly Word[], from: number): number {
  if (!TELLS_WHICH.has(words[from]?.text ?? "")) return from;
  let end = from;
  for (; end < words.length && end < from + BEHIND_MAX; end += 1) {
    const { token, text } = words[end]!;
    if (token.kind === "mark" || token.kind === "amount" || token.kind === "day") break;
    const isDeal = [1, 2, 3].some((many) => dealOf(phraseAt(words, end, many)) !== undefined);
    if (!TELLS_WHICH.has(text) && !ARTICLES_WIDE.has(text) && isDeal) break;
    if (ENDS_WHO.has(text)) break;
    if (token.roles.hedge || [...tellsOf([text])].some((tells) => tells === "denied" || tells === "doubted"))
      break;
  }
  return end;
}

/** Who on the books is told by one of these words: "twin mom" of "lady with the twins". */
function buyerIn(said: readonly string[], buyers: readonly string[]): string | undefined {
  const found = buyers.filter(
    (buyer) =>
      buyer === said.join(" ") ||
      buyer
        .split(" ")
        .some(
          (word) =>
            word.length > 2 &&
            !ANYBODY.has(word) &&
            !ARTICLES_WIDE.has(word) &&
            !TELLS_WHICH.has(word) &&
            said.some((each) => stem(each) === stem(word)),
        ),
  );
  return found.length === 1 ? found[0] : undefined;
}

const stem = (word: string): string => word.replace(/s$/, "");

/** The names by which the books know buyers and pieces. */
function knownIn({ pieces, facts }: Books): Known {
  const buyers = new Set<string>();
  for (const { hold } of pieces.values()) if (hold?.buyer) buyers.add(hold.buyer);
  for (const fact of facts) if (fact.kind === "sell" && fact.data.buyer) buyers.add(fact.data.buyer);
  const byWord = new Map<string, number[]>();
  const names = new Map<string, Set<string>>();
  const add = (word: string, piece: Readonly<Piece>): void => {
    const name = [...piece.traits, piece.name].join(" ");
    names.set(word, (names.get(word) ?? new Set()).add(name));
    byWord.set(word, [...(byWord.get(word) ?? []), piece.number]);
  };
  for (const piece of pieces.values())
    for (const word of [...piece.traits, ...piece.name.split(" ")]) add(word, piece);
  for (const [word, all] of names) if (all.size > 1) byWord.delete(word);
  return { buyers: [...buyers].sort((a, b) => b.length - a.length), byWord };
}
