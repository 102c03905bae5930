import type { Tok } from "../../notes/clause.ts";
import { lexed } from "../../notes/lexed.ts";
import { wordsOf } from "../../notes/tokens/text.ts";
import {
  AROUND_PAYING,
  BRINGS,
  COSTS_ME,
  FOR_THAT,
  GIVES,
  IT,
  LETS_GO,
  PAID_THAT,
  TAKES_FOR,
  TAKES_IT,
  WANTED_FOR,
} from "../../notes/words/replies.ts";

/** An amount behind words that say nothing but that it was paid, and which way it went. */
interface PaidTold {
  /** Paid by the shop, or to it; null where the words may mean either: "it was 35". */
  side: "out" | "in" | null;
  /** The words say that it was the price: they tell the side, or "for it". */
  isSaid: boolean;
  /** The amount, with what stands behind it: "45 cash". */
  rest: string;
}

/** "gave the fella 45", "she handed me 110", "it was 35", "30 for it"; null where anything else stands before the amount. */
export function paidTold(text: string): PaidTold | null {
  const tokens = lexed(text);
  const at = tokens.findIndex(({ kind }) => kind === "amount");
  const start = at < 0 ? undefined : wordsOf(text)[tokens[at]!.from]?.start;
  if (start === undefined) return null;
  const words = tokens.slice(0, at).flatMap(saidBy);
  if (words.includes(null)) return null;
  const said = text.slice(start);
  const rest = said.replace(PAID_THAT, "").replace(FOR_THAT, "$1");
  if (lexed(rest).filter(({ kind }) => kind === "amount").length > 1) return null;
  const side = sideOf(words as string[], PAID_THAT.test(said));
  return { side, isSaid: side !== null || FOR_THAT.test(said), rest };
}

/** "she loved it, paid the full 75", "he took it for 75", "got 75 for it": money that came in, whatever else is told before it. */
export function isPaidByOthers(text: string): boolean {
  const tokens = lexed(text);
  const at = tokens.findIndex(({ kind }) => kind === "amount");
  const before = tokens.slice(0, Math.max(0, at));
  const words = before.flatMap(({ text: word, roles }) => (roles.person ? [SOMEBODY] : word.split(" ")));
  const byOthers = words.some((word) => OTHERS.has(word));
  const isTaken = words.some((word, place) => TAKES_IT.has(word) && IT.has(words[place + 1] ?? ""));
  if (byOthers && isTaken) return true;
  const isGot = before.length > 0 && before.at(-1)!.text === "got" && tokens[at + 1]?.text === "for";
  const told = paidTold(text);
  return isGot || (told ? told.side === "in" : byOthers && sideOf(words, false) === "in");
}

const SOMEBODY = "they";

/** The words of a token; somebody, whoever it is; null for a word that says something else. */
function saidBy({ kind, text, roles, mention }: Tok): (string | null)[] {
  if (kind === "mark" || mention?.it) return [];
  if (kind !== "word") return [null];
  if (roles.person) return [SOMEBODY];
  return text.split(" ").map((word) => (KNOWN.some((words) => words.has(word)) ? word : null));
}

const KNOWN = [GIVES, TAKES_FOR, COSTS_ME, LETS_GO, BRINGS, WANTED_FOR, AROUND_PAYING];

const OTHERS: ReadonlySet<string> = new Set(["he", "she", SOMEBODY, "who", "him", "her", "them"]);
const OURS: ReadonlySet<string> = new Set(["me", "us"]);

/** `isPaid`: behind the amount stands that it was paid. */
function sideOf(words: readonly string[], isPaid: boolean): PaidTold["side"] {
  const at = words.findLastIndex((word) => KNOWN.slice(0, -1).some((verbs) => verbs.has(word)));
  const verb = words[at];
  if (verb === undefined) return null;
  const isTheirs = words.slice(0, at).some((word) => OTHERS.has(word));
  const behind = words.slice(at + 1);
  // "he gave it to me for 22"
  if (GIVES.has(verb) && isTheirs && IT.has(behind[0] ?? "") && behind.some((word) => OURS.has(word)))
    return "out";
  if (GIVES.has(verb)) return isTheirs || behind.some((word) => OURS.has(word)) ? "in" : "out";
  if (TAKES_FOR.has(verb)) return isTheirs ? "out" : "in";
  if (LETS_GO.has(verb)) return isTheirs || behind.some((word) => OURS.has(word)) ? "out" : "in";
  if (COSTS_ME.has(verb)) return behind.some((word) => OTHERS.has(word)) ? "in" : "out";
  if (WANTED_FOR.has(verb)) return isPaid && isTheirs ? "out" : null;
  return "in";
}
