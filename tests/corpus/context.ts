import { readFileSync } from "node:fs";
import { argv } from "node:process";
import { pathToFileURL } from "node:url";
import type { Books } from "../../core/books/books.ts";
import type { Fact } from "../../core/books/facts.ts";
import { show } from "../../core/money.ts";
import { type Chat, openChat, type Said } from "../bot/conversation/chat.ts";

/*
 * Messages over books that stand already, sent through the real conversation: what each leaves recorded, at once or
 * after one tap. `npx tsx tests/corpus/context.ts [file ...]` prints the failures by class, with what was replied.
 */

/** What a message should leave recorded: facts, or a change of facts that stood. Fields that are not there are free. */
export type Wanted =
  | Record<string, unknown>
  | { mend: true; facts: Record<string, unknown>[] }
  | { removed: true; was: Record<string, unknown>[] };

export interface ContextCase {
  id: string;
  class: string;
  /** The local day of the messages. */
  on: string;
  /** What was sent before; "@at ISO" moves the clock. */
  before: string[];
  line: string;
  /** Which of `before` (from 0) is replied to. */
  replyTo?: number;
  facts: Wanted[];
  /** What is as good: where several pieces are alike, any of them. */
  or?: Wanted[][];
  /** Whether it has to be asked, must not be, or may. */
  ask: true | false | "either";
  /** How many questions are open after the message, where that matters. */
  open?: number;
}

export type Outcome =
  | "right at once"
  | "right after one tap"
  | "right, though it should have asked"
  | "asked needlessly"
  | "asked without the right answer"
  | "refused needlessly"
  | "leaves the wrong questions open"
  | "wrong silently";

export interface Result {
  case: ContextCase;
  outcome: Outcome;
  /** What was replied to the message, with its buttons. */
  reply: string;
}

/** The outcomes that are as the case wants them. */
export const RIGHT: ReadonlySet<Outcome> = new Set(["right at once", "right after one tap"]);

export function contextCases(name: string): ContextCase[] {
  return rowsOf(new URL(`./${name}`, import.meta.url)) as ContextCase[];
}

function rowsOf(file: URL | string): unknown[] {
  const lines = readFileSync(file, "utf8").split("\n");
  return lines.filter((line) => line.trim() !== "").map((line) => JSON.parse(line));
}

interface Change {
  added: Fact[];
  removed: Fact[];
  books: Books;
}

interface Played {
  said: Said;
  /** The facts before it. */
  stood: readonly Fact[];
  change: Change;
  /** It was answered with a question. */
  asked: boolean;
  /** It was called not recorded. */
  refused: boolean;
  /** How many questions it left open. */
  open: number;
}

/** What was replied to the messages before, and the way back to where they led. */
interface Scene {
  replies: readonly (Said | null)[];
  back: () => void;
}

/** A chat in which case after case is played: one of its own for each would be most of the work. */
export class Stage {
  readonly #chat = openChat();
  readonly #toFresh = this.#chat.keep();
  readonly #scenes = new Map<string, Scene>();

  end(): void {
    this.#chat.end();
  }

  /** Brings about what was sent before a message: once for all cases that begin alike. */
  #standBehind(before: readonly string[], on: string): Scene {
    const key = JSON.stringify([on, before]);
    const known = this.#scenes.get(key);
    known?.back();
    const scene = known ?? this.#playedBehind(before, on);
    this.#scenes.set(key, scene);
    return scene;
  }

  #playedBehind(before: readonly string[], on: string): Scene {
    const last = before.at(-1);
    if (last === undefined) {
      this.#toFresh();
      this.#chat.at(`${on}T15:00:00Z`);
      return { replies: [], back: this.#chat.keep() };
    }
    const { replies } = this.#standBehind(before.slice(0, -1), on);
    return { replies: [...replies, sent(this.#chat, last)], back: this.#chat.keep() };
  }

  /** Plays up to the message and sends it. */
  play(one: ContextCase): Played {
    const { before, on, line, replyTo } = one;
    const { replies } = this.#standBehind(before, on);
    const chat = this.#chat;
    const stood = [...chat.ledger.books.facts];
    const open = new Set(chat.ledger.questions.everyOpen().map(({ id }) => id));
    const to = replyTo === undefined ? undefined : replies[replyTo]?.message;
    const said = chat.say(line, { message: "m-line", ...(to ? { replyTo: to } : {}) });
    const left = chat.ledger.questions.everyOpen();
    const asked = left.some(({ id }) => !open.has(id));
    const refused = chat.ledger.findNote("home", "m-line")?.state === "unclear";
    return { said, stood, change: changeOf(stood, chat.ledger.books), asked, refused, open: left.length };
  }

  /** Whether any button of a reply leaves what is wanted: each is pressed where the message just played led. */
  anyButton({ said, stood }: Played, isWanted: (change: Change) => boolean): boolean {
    const chat = this.#chat;
    const back = chat.keep();
    return said.buttons.some(({ press }) => {
      back();
      chat.tap({ message: said.message, press });
      return isWanted(changeOf(stood, chat.ledger.books));
    });
  }
}

function sent(chat: Chat, text: string): Said | null {
  if (!text.startsWith("@at ")) return chat.say(text);
  chat.at(text.slice(4));
  return null;
}

function changeOf(before: readonly Fact[], books: Books): Change {
  const after = books.facts;
  const stood = new Set(before.map(({ id }) => id));
  const stands = new Set(after.map(({ id }) => id));
  return {
    added: after.filter(({ id }) => !stood.has(id)),
    removed: before.filter(({ id }) => !stands.has(id)),
    books,
  };
}

/** A fact as a case writes it: its fields side by side, money with two decimals. */
function flat(fact: Fact, books: Books): Record<string, unknown> {
  const { kind, day, by, pieces, amount, data } = fact;
  const told: Record<string, unknown> = { kind, day, by, pieces, ...data };
  const said = amount === undefined ? undefined : plain(amount);
  // What the books make of a fact without an amount of its own, and only the pieces given of a trade.
  const posted = (account: string) =>
    (books.postings.get(fact.id) ?? []).reduce(
      (sum, leg) => sum + (leg.account === account ? leg.cents : 0),
      0,
    );
  if (kind === "fallthrough")
    Object.assign(told, { kept: plain(-posted("deposits kept")), refunded: plain(-posted("cash")) });
  if (kind === "refund" && said === undefined) told["amount"] = plain(posted("refunds"));
  if (kind === "trade")
    Object.assign(told, {
      pieces: pieces.slice(0, pieces.length - data.made.length),
      name: data.made[0]?.name,
    });
  if (kind === "hold") told["deposit"] = said;
  else if (kind !== "fallthrough") told["amount"] ??= said;
  if (kind === "buy") told["name"] = data.made[0]?.name;
  if (kind === "reprice" && !data.cut) told["listPrice"] = said;
  for (const field of ["fee", "owed", "agreed", "paid", "received"]) {
    const cents = told[field];
    if (typeof cents === "number") told[field] = plain(cents);
  }
  return told;
}

function plain(cents: number): string {
  return show(cents).replaceAll(",", "");
}

function isFact(wanted: Record<string, unknown>, fact: Fact, books: Books): boolean {
  const got = flat(fact, books);
  return Object.entries(wanted).every(([field, value]) => {
    // A cut leaves the new price to the books; what it came to is not the fact's own.
    if (fact.kind === "reprice" && fact.data.cut && (field === "listPrice" || field === "amount"))
      return true;
    return value === null ? got[field] === undefined : JSON.stringify(got[field]) === JSON.stringify(value);
  });
}

function areFacts(wanted: readonly Record<string, unknown>[], facts: readonly Fact[], books: Books): boolean {
  if (wanted.length !== facts.length) return false;
  const left = [...facts];
  return wanted.every((one) => {
    const at = left.findIndex((fact) => isFact(one, fact, books));
    if (at >= 0) left.splice(at, 1);
    return at >= 0;
  });
}

/** Whether the books changed as the case wants it. */
function isRight({ facts, or = [] }: ContextCase, change: Change): boolean {
  return [facts, ...or].some((wanted) => isAsWanted(wanted, change));
}

function isAsWanted(facts: readonly Wanted[], { added, removed, books }: Change): boolean {
  const [first] = facts;
  if (first && "removed" in first)
    return added.length === 0 && areFacts(first["was"] as Record<string, unknown>[], removed, books);
  if (first && "mend" in first)
    return removed.length > 0 && areFacts(first["facts"] as Record<string, unknown>[], added, books);
  return removed.length === 0 && areFacts(facts as Record<string, unknown>[], added, books);
}

function isUnchanged({ added, removed }: Change): boolean {
  return added.length === 0 && removed.length === 0;
}

function outcomeOf(stage: Stage, one: ContextCase, played: Played): Outcome {
  const outcome = outcomeOfFacts(stage, one, played);
  const isAsWanted = one.open === undefined || one.open === played.open;
  return outcome === "right at once" && !isAsWanted ? "leaves the wrong questions open" : outcome;
}

function outcomeOfFacts(stage: Stage, one: ContextCase, played: Played): Outcome {
  if (!isUnchanged(played.change)) {
    if (!isRight(one, played.change)) return outcomeOfPart(stage, one, played);
    return one.ask === true && !played.asked ? "right, though it should have asked" : "right at once";
  }
  if (one.facts.length === 0) {
    if (one.ask !== false) return "right at once";
    if (played.asked) return "asked needlessly";
    return played.refused ? "refused needlessly" : "right at once";
  }
  if (!played.asked && played.said.buttons.length === 0) return "refused needlessly";
  const fits = stage.anyButton(played, (change) => isRight(one, change));
  if (!fits) return "asked without the right answer";
  return one.ask === false ? "asked needlessly" : "right after one tap";
}

/** Of a message of several facts, some of them recorded: no wrong one where the rest is asked or said to be missing. */
function outcomeOfPart(stage: Stage, one: ContextCase, played: Played): Outcome {
  const { added, removed, books } = played.change;
  const wanted = [one.facts, ...(one.or ?? [])].flat() as Record<string, unknown>[];
  const isPart =
    removed.length === 0 && added.every((fact) => wanted.some((each) => isFact(each, fact, books)));
  const isTold = played.asked || played.said.text.includes("not recorded");
  if (!isPart || !isTold) return "wrong silently";
  if (!played.asked) return "refused needlessly";
  if (!stage.anyButton(played, (change) => isRight(one, change))) return "asked without the right answer";
  return one.ask === false ? "asked needlessly" : "right after one tap";
}

export function tryCase(stage: Stage, one: ContextCase): Result {
  const played = stage.play(one);
  const buttons = played.said.buttons.map(({ label }) => `[${label}]`).join(" ");
  return {
    case: one,
    outcome: outcomeOf(stage, one, played),
    reply: `${played.said.text}\n${buttons}`.trim(),
  };
}

/** A note that was once recorded wrongly without a word, and what was then replied. */
interface Misread {
  class: string;
  before?: string[];
  line: string;
  replied?: string;
  right: string;
}

/** The misread notes of a file that are still answered with what was wrong. */
export function stillMisread(stage: Stage, name: string): { note: Misread; reply: string }[] {
  const notes = (rowsOf(new URL(`./${name}`, import.meta.url)) as Misread[]).filter(
    ({ before, replied }) => before && replied,
  );
  return notes.flatMap((note) => {
    const { before = [], line, replied = "" } = note;
    const { said, change } = stage.play({
      id: "",
      class: note.class,
      on: "2026-05-09",
      before,
      line,
      facts: [],
      ask: "either",
    });
    const isSame =
      said.text.includes(replied.split("\n")[0]!) && (!isUnchanged(change) || /\?/.test(replied));
    return isSame ? [{ note, reply: said.text }] : [];
  });
}

function printClass(name: string, results: readonly Result[]): void {
  const failed = results.filter(({ outcome }) => !RIGHT.has(outcome));
  console.log(`\n## ${name}: ${results.length - failed.length} of ${results.length}`);
  for (const { case: one, outcome, reply } of failed) {
    const before = one.before.join(" / ");
    console.log(`- ${one.id} ${outcome.toUpperCase()}\n    ${before}\n    > ${one.line}`);
    console.log(
      `    ${reply.replace(/\n/g, "\n    ")}\n    wants ${JSON.stringify(one.facts)} ask ${one.ask}`,
    );
  }
}

function printFile(stage: Stage, name: string): void {
  const results = contextCases(name).map((one) => tryCase(stage, one));
  const counts = new Map<string, number>();
  for (const { outcome } of results) counts.set(outcome, (counts.get(outcome) ?? 0) + 1);
  for (const each of new Set(results.map((result) => result.case.class)))
    printClass(
      each,
      results.filter((result) => result.case.class === each),
    );
  const rows = [...counts].map(([outcome, count]) => `${outcome} ${count}`);
  console.log(`\n${name}: ${results.length} messages. ${rows.join(", ")}`);
}

if (import.meta.url === pathToFileURL(argv[1] ?? "").href) {
  const files = argv.slice(2);
  const stage = new Stage();
  for (const name of files.length > 0 ? files : ["context.jsonl", "siblings.jsonl", "misread-in-chat.jsonl"])
    if (name.includes("misread")) {
      const left = stillMisread(stage, name);
      for (const { note, reply } of left)
        console.log(`- ${note.line}: ${reply.split("\n")[0]} (${note.right})`);
      console.log(`${name}: ${left.length} still answered as before`);
    } else printFile(stage, name);
  stage.end();
}
