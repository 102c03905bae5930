import type { Ask, Matter } from "../../core/decide/decision.ts";
import { mattersOf } from "../../core/decide/matters.ts";
import { withAwaited } from "../../core/decide/pieces/awaited.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Note } from "../../db/notes.ts";
import type { Question } from "../../db/questions.ts";
import type { Turn } from "./turn.ts";

/** Opens a question about a message (its root note). It is prompted when the turn's reply is put together. */
export function openQuestion(turn: Turn, matter: Matter, ask: Ask, root: number): void {
  const { person, chat, said: asked } = turn;
  const older = ask.offer ? turn.ledger.questions.everyOpen() : [];
  for (const { id, note } of older.filter((question) => isOfSameOffer(question.ask, ask))) {
    closeQuestion(turn, id);
    turn.ledger.setNoteState(note, "answered");
  }
  const opened = turn.ledger.questions.open({ person, chat, note: root, matter, ask, asked });
  turn.asked.push({ ...opened, ask, text: matter.reading.text });
}

/** A newer offer for the same pieces takes the place of what was offered before. */
const isOfSameOffer = ({ offer: before }: Ask, { offer }: Ask): boolean =>
  before !== undefined && before.pieces.join() === offer?.pieces.join();

/** Asks an open question once more, with its choices; the answer's place is then under this turn's reply. */
export function askAgain(turn: Turn, { id, token, ask, matter }: Question): void {
  turn.asked.push({ id, token, ask, text: matter.reading.text });
}

/** A person's open questions: the one a bare answer goes to first (the one asked last), then the others. */
export function openQuestions(turn: Turn): Question[] {
  const open = turn.ledger.questions.allOpen(turn.person);
  return open.sort((a, b) => (b.prompt ?? -1) - (a.prompt ?? -1) || a.id - b.id);
}

/** Closes whatever is still asked about a message, takes out what waits of it, and gives both. */
export function closeQuestionsOf(turn: Turn, root: number): Matter[] {
  const open = turn.ledger.questions.everyOpen();
  const own = open.filter((question) => question.note === root);
  const waited = open.flatMap(({ id, matter, note }) => {
    const { after = [] } = matter;
    const out = after.filter((each) => each.root === root);
    if (note === root || out.length === 0) return [];
    const left = after.filter((each) => each.root !== root);
    turn.ledger.questions.setMatter(id, { ...matter, after: left });
    return out.map((each) => each.matter);
  });
  for (const { id, matter } of own) {
    closeQuestion(turn, id);
    releaseAfter(turn, { ...matter, after: matter.after?.filter((each) => each.root !== root) ?? [] });
  }
  return [...own.map(({ matter }) => matter), ...waited];
}

/** Closes one question, so that the next one in the queue may be asked. */
export function closeQuestion(turn: Turn, id: number): void {
  turn.ledger.questions.close(id, turn.now());
  turn.closed = true;
}

/** Notes of their own that waited for this matter go on, once the turn has done the rest. `came`: the pieces that it brought. */
export function releaseAfter(turn: Turn, { after = [] }: Matter, came: readonly number[] = []): void {
  const { books } = turn.ledger;
  for (const { matter, root } of after)
    turn.released.push({ matter: { ...matter, reading: withAwaited(matter.reading, came, books) }, root });
}

/** What nobody answered for this long is dropped. */
const WAITED_DAYS_MAX = 7;

/** Drops what has waited over a week, and says so. */
export function dropOld(turn: Turn): void {
  const now = new Set(turn.asked.map(({ id }) => id));
  const oldest = turn.now() - WAITED_DAYS_MAX * 86_400_000;
  const old = openQuestions(turn).filter(({ id, asked }) => !now.has(id) && asked < oldest);
  for (const { id, matter, note } of old) {
    turn.ledger.questions.close(id, turn.now());
    releaseAfter(turn, matter);
    turn.ledger.setNoteState(note, "refused");
  }
  if (old.length > 0)
    turn.spoken.push(`Dropped after a week: ${textsOf(old.map(({ matter }) => matter.reading))}`);
}

/** The clauses as typed, each once. */
export function textsOf(readings: readonly Reading[]): string {
  return [...new Set(readings.map(({ text }) => text))].join(", ");
}

/** Confirms first that the same words within minutes of the `twin` are meant as a second note. */
export function askWhetherAgain(turn: Turn, readings: readonly Reading[], twin: Note): void {
  const minutes = Math.round(Math.abs(turn.said - twin.said) / 60_000);
  const ago = minutes < 1 ? "just now" : `${minutes} min ago`;
  const who =
    twin.author === turn.person ? "You" : (turn.ledger.members.byId(twin.author)?.name ?? "Someone");
  const [matter] = mattersOf(readings, turn.today);
  const ask: Ask = {
    prompt: `${who} sent the same note ${ago}. Record it a second time?`,
    wants: "choice",
    choices: [
      {
        label: "Yes, again",
        words: ["yes", "again"],
        effect: { kind: "instead", readings: readings.map((one) => ({ ...one, asNew: true as const })) },
      },
      { label: "No, once", words: ["no", "once"], effect: { kind: "drop" } },
    ],
  };
  openQuestion(turn, { ...matter!, waiting: [] }, ask, turn.root);
}
