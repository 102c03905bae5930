import { titled } from "../../core/answers/wording.ts";
import type { Fact } from "../../core/books/facts.ts";
import { type Choice, type Effect, NEVER_MIND, newMatter } from "../../core/decide/decision.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { MENDED } from "../../db/notes.ts";
import type { Question } from "../../db/questions.ts";
import { takeBackMend } from "./mending.ts";
import { impossibleText, saidOf } from "./outcome.ts";
import { closeQuestionsOf, openQuestion, openQuestions, textsOf } from "./questions.ts";
import { mayChange, notYours, tellOwner } from "./rights.ts";
import type { Turn } from "./turn.ts";

/** A block of more facts than this is taken back only after a yes. */
const UNDO_FACTS_MAX = 5;

/** Of more facts than this only the first few are said: a file of past pieces would fill many messages. */
const SAID_MAX = 40;
const SAID_FEW = 10;

/** Takes back a message: the one replied to, or this person's last one. */
export function undoNote(turn: Turn, replyRoot?: number): void {
  const { ledger, person } = turn;
  const mend = replyRoot === undefined ? ledger.lastMended(person) : repliedMend(turn, replyRoot);
  if (mend !== null && (replyRoot !== undefined || mend >= lastTouched(turn))) {
    takeBackMend(turn, mend);
    return;
  }
  const root = replyRoot ?? lastRoot(turn);
  if (root === null) turn.spoken.push("There is nothing of yours to take back.");
  else undoRoot(turn, root, replyRoot === undefined);
}

/** Takes back what stands of a message, after a yes where that is much. `own`: only what this person recorded. */
export function undoRoot(turn: Turn, root: number, own: boolean): void {
  if (!own && !mayChange(turn, root)) {
    turn.spoken.push(notYours(turn, root));
    return;
  }
  const count = factsOf(turn, root, own).length;
  if (count <= UNDO_FACTS_MAX) {
    takeBack(turn, root, own);
    return;
  }
  const effect: Effect = { kind: "undo", root, own };
  const choices = [
    { label: `Take back all ${count}`, words: ["yes"], effect },
    { ...NEVER_MIND, words: ["no"] },
  ];
  const prompt = `That message recorded ${count} notes. Take all of them back?`;
  const matter = newMatter({ kind: "undo", text: "undo", line: 0 }, turn.today);
  openQuestion(turn, matter, { prompt, wants: "choice", choices }, turn.note);
}

/** Voids what stands of a message and drops what it still asks. */
export function takeBack(turn: Turn, root: number, own: boolean): void {
  const facts = factsOf(turn, root, own);
  const said = facts
    .slice(0, facts.length > SAID_MAX ? SAID_FEW : SAID_MAX)
    .map((fact) => saidOf(turn, fact));
  const more = facts.length - said.length;
  const before = more > 0 ? [...said, `and ${more.toLocaleString("en-US")} more`] : said;
  if (facts.length > 0) {
    const voids = facts.map((fact) => fact.id);
    const result = turn.ledger.amend({ note: turn.note, author: turn.person, voids, facts: [] });
    if (result.kind === "impossible") {
      const [only, ...others] = facts;
      const way = only && others.length === 0 ? turn.ledger.factById(result.fact.id) : null;
      // Another's note is asked about first: then each is taken back by itself.
      const isOwn = way?.author === turn.person && only?.author === turn.person;
      if (only && way && way.id !== only.id && isOwn) askWayOut(turn, only, way);
      else turn.spoken.push(`Not taken back. ${impossibleText(turn, result)}`);
      return;
    }
    turn.changed = true;
    tellOwner(turn, `took back ${before.join("; ")}`);
    turn.spoken.push(titled("Taken back", before));
  }
  const dropped = closeQuestionsOf(turn, root).map(({ reading }) => reading);
  if (dropped.length > 0) {
    const nothing = facts.length === 0 ? ", nothing was recorded" : "";
    if (facts.length === 0) offerLast(turn);
    turn.spoken.push(`Dropped${nothing}: ${textsOf(dropped)}`);
  } else if (facts.length === 0) turn.spoken.push("That is taken back already.");
}

/** What needs a note that is to go is taken back first, after a tap. */
function askWayOut(turn: Turn, fact: Fact, way: Fact): void {
  const readings = [way, fact].map(
    ({ id }): Reading => ({ kind: "mend", of: { fact: id }, removed: true, text: "undo", line: 0 }),
  );
  const matter = newMatter(readings[1]!, turn.today);
  const prompt = `In the way: ${saidOf(turn, way)}`;
  const choices: Choice[] = [
    { label: "Take back both", words: ["yes", "both"], effect: { kind: "instead", readings } },
    { ...NEVER_MIND, words: ["no"] },
  ];
  openQuestion(turn, matter, { prompt, wants: "choice", choices }, turn.note);
}

/** A reply to a correction is about what it corrected, as long as it recorded nothing of its own. */
function repliedMend({ ledger }: Turn, root: number): number | null {
  return ledger.note(root)?.outcome === MENDED && !ledger.hasStandingFacts(root) ? root : null;
}

/** The note at which anything of this person's was last recorded or asked; 0: never. */
function lastTouched(turn: Turn): number {
  const facts = turn.ledger.books.facts.filter(
    ({ author, repeat, id, place }) => author === turn.person && (repeat === undefined || id !== place),
  );
  return Math.max(0, ...facts.map(({ note }) => note), ...openQuestions(turn).map(({ note }) => note));
}

/** What was dropped had recorded nothing: the note before it may have been meant. */
function offerLast(turn: Turn): void {
  const { ledger, person } = turn;
  const last = ledger.lastStanding(person);
  const [fact] = last === null ? [] : factsOf(turn, last, true);
  if (fact) turn.buttons.push([{ label: `Undo ${saidOf(turn, fact)}`, press: `u:${fact.root}` }]);
}

/** What stands of a message. `own`: only what this person recorded. */
export function factsOf(turn: Turn, root: number, own: boolean): Fact[] {
  return turn.ledger.standingFactsOf(root).filter((fact) => !own || fact.author === turn.person);
}

/** The message of this person that was touched last: by a fact that stands, or by a question still open. */
export function lastRoot(turn: Turn): number | null {
  const { ledger, person } = turn;
  const recorded = ledger.lastStanding(person);
  const facts = recorded === null ? [] : factsOf(turn, recorded, true);
  const at = (question: Question) =>
    (question.prompt === null ? null : ledger.outbox.get(question.prompt)?.note) ?? question.note;
  const touched = [
    ...facts.map((fact) => ({ root: fact.root, at: fact.note })),
    ...openQuestions(turn).flatMap((question) => [
      // What waits behind it was told later.
      ...(question.matter.after ?? [])
        .map(({ root }) => ({ root, at: Math.max(root, at(question)) }))
        .reverse(),
      { root: question.note, at: at(question) },
    ]),
  ];
  return touched.sort((a, b) => b.at - a.at)[0]?.root ?? null;
}
