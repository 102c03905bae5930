import type { Instant } from "../../core/calendar.ts";
import { isChoice } from "../../core/decide/answer.ts";
import { mattersOf } from "../../core/decide/decide.ts";
import { isNothing, smallTalk, whyNoFact } from "../../core/decide/smalltalk.ts";
import { readYesNo } from "../../core/notes/bare.ts";
import { readMessage } from "../../core/notes/read.ts";
import { endsAsking } from "../../core/questions/sounds.ts";
import { allAtOnce, type Steps } from "../../core/steps.ts";
import type { Ledger } from "../../db/ledger.ts";
import { createMemory } from "../../db/memory.ts";
import { MENDED, type Note } from "../../db/notes.ts";
import type { OutboxBody } from "../../db/outbox.ts";
import type { Question } from "../../db/questions.ts";
import { answerOpen, answersEach, answersInTurn, asksWithLeft, type SaidNow } from "./answering.ts";
import { answerAsked } from "./asked.ts";
import { cautionOf, heard } from "./cautioning.ts";
import { runCommand } from "./commands.ts";
import { composeReply } from "./composing.ts";
import { editNote, type WorkedEdit, workingEdit } from "./editing.ts";
import { goneOn } from "./going-on.ts";
import { handleHistory, historiesLeft, leaveHistory } from "./history.ts";
import type { Conversation, Incoming, Press } from "./incoming.ts";
import { nextLead, readLed } from "./leading.ts";
import { changeLettered } from "./lettered.ts";
import { goOnWithLong, inTurns, keepPlace, unfinishedNotes } from "./long.ts";
import { filePicture, keepPicture } from "./pictures.ts";
import { handlePress } from "./presses.ts";
import { askAgain, askWhetherAgain, closeQuestionsOf, dropOld, openQuestions } from "./questions.ts";
import { decideAll, decideReleased } from "./recording.ts";
import { isTellable, tallyOf } from "./tally.ts";
import { tidyButtons } from "./tidying.ts";
import { type ConversationDeps, newTurn, type Turn } from "./turn.ts";

export type { ConversationDeps } from "./turn.ts";

/** The same words from the same person within this long are asked about. */
const AGAIN_MS = 5 * 60_000;
/** Notes handled within this long of each other are under way together. */
const TOGETHER_MS = 15_000;

/**
 * The conversation over one ledger. `hear` and `press` handle one message or press in one transaction: the
 * delivery marked as seen, the note, its facts and the replies owed. When handling fails, nothing of it is
 * kept but the raw note, marked as failed, with an honest reply; when even that cannot be stored, they throw.
 */
export function createConversation(deps: ConversationDeps): Conversation {
  return {
    hear(incoming, how) {
      orFail(deps, incoming, incoming.text, () => hearNote(deps, incoming));
      if (!how?.leavesLong) allAtOnce(goOnWithHistories(deps));
    },
    async hearLong(incoming, isStopping) {
      const edit = await workedOut(deps, incoming, isStopping);
      orFail(deps, incoming, incoming.text, () => hearNote(deps, incoming, { inSlices: true, edit }));
      await goOnWithAll(deps, isStopping);
    },
    goOn: (isStopping) => goOnWithAll(deps, isStopping),
    press(press, how) {
      orFail(deps, { ...press, message: pressName(press) }, press.press, () => hearPress(deps, press));
      if (!how?.leavesLong) allAtOnce(goOnWithHistories(deps));
    },
  };
}

type Delivery = Pick<Incoming, "person" | "chat" | "message" | "said" | "update">;

function orFail(deps: ConversationDeps, delivery: Delivery, text: string, handle: () => void): void {
  try {
    deps.ledger.transaction(handle);
  } catch (error) {
    const { message, stack } = error instanceof Error ? error : { message: String(error), stack: "" };
    deps.log.error("note failed", { why: message, stack, chat: delivery.chat, message: delivery.message });
    deps.ledger.transaction(() => storeFailed(deps, delivery, text, message));
  }
}

function storeFailed(deps: ConversationDeps, delivery: Delivery, text: string, why: string): void {
  const { person: author, chat, message, said, update } = delivery;
  if (update && !deps.ledger.claimUpdate(update)) return;
  const note = deps.ledger.addNote({ chat, message, text, author, said, handled: deps.now() });
  deps.ledger.setNoteState(note, "failed", why.slice(0, 200));
  const reply = {
    text: "That went wrong on my side. Your words are kept, but nothing is in the books. Please send it again.",
  };
  deps.ledger.outbox.queue({ chat, body: { kind: "text", reply }, about: note });
}

/** Goes on with what was stored and is not handled to its end, oldest first. */
async function goOnWithAll(deps: ConversationDeps, isStopping: () => boolean): Promise<void> {
  for (const left of unfinishedNotes(deps)) await goOnWithLong(deps, left, { finish, isStopping });
  await inTurns(goOnWithHistories(deps), isStopping);
}

function* goOnWithHistories(deps: ConversationDeps): Steps<void> {
  for (const left of historiesLeft(deps)) yield* handleHistory(deps, left, finish);
}

/** An edit of many lines, as far as it can be worked out in slices; null: it is all done where it is recorded. */
async function workedOut(
  deps: ConversationDeps,
  incoming: Incoming,
  isStopping: () => boolean,
): Promise<WorkedEdit | null> {
  const { person, chat, text } = incoming;
  const { before, isOld } = placeOf(deps.ledger, incoming);
  if (!before || isOld) return null;
  const turn = newTurn(deps, { person, chat, note: before.id, said: before.said, lines: 1 });
  try {
    return await inTurns(workingEdit(turn, text), isStopping);
  } catch {
    // It throws once more where it is recorded, and is stored as failed.
    return null;
  }
}

function hearNote(
  deps: ConversationDeps,
  incoming: Incoming,
  { inSlices = false, edit = null }: { inSlices?: boolean; edit?: WorkedEdit | null } = {},
): void {
  const stored = storeNote(deps, incoming);
  if (!stored) return;
  const { person, chat, text, picture } = incoming;
  const { note, said, before } = stored;
  const lines = isTable(incoming) ? 1 : text.split("\n").filter((line) => line.trim() !== "").length;
  const turn = newTurn(deps, { person, chat, note, said, lines });
  const isDone = before !== null && editNote(turn, text, before, edit);
  const isLong = !isDone && inSlices && !isTable(incoming);
  const isTwin = isLong && tellOfTwin(turn, text);
  if (isLong && !isTwin) {
    keepPlace(deps, note, 0);
    return;
  }
  if (!isDone && !isTwin) handleNote(turn, incoming);
  if (picture && text.trim() !== "") {
    const { file, unique: uniqueFile } = picture;
    deps.ledger.pictures.add({ note, file, uniqueFile, taken: said });
  }
  if (!turn.isLeft) finish(turn);
}

/** Keeps what was said. Null where it was handled before, or a newer wording of the same message was. */
function storeNote(
  { ledger, now }: ConversationDeps,
  incoming: Incoming,
): { note: number; said: Instant; before: Note | null } | null {
  if (incoming.update && !ledger.claimUpdate(incoming.update)) return null;
  const { person: author, chat, text, revised } = incoming;
  const { message, before, isOld } = placeOf(ledger, incoming);
  if (isOld) return null;
  const isSame = before?.text === text;
  if (isSame && (revised === undefined || revised <= instantOf(before))) return null;
  const said = before?.said ?? incoming.said;
  const worded = revised === undefined ? {} : { revised };
  const note = ledger.addNote({ chat, message, text, author, said, handled: now(), ...worded });
  if (!isSame) return { note, said, before };
  // Kept for its time alone: an edit made before it may still come.
  ledger.setNoteState(note, before.state);
  return null;
}

/**
 * Where a delivery belongs: the name it is kept under, what was kept of the message before, and whether that is
 * newer. Edits may come in any order and before their original, and an original again under another delivery.
 * A message of the same name but of another time is another one: a bot with a new token counts from 1 again.
 */
function placeOf(
  ledger: Ledger,
  { chat, message, said, edited, revised }: Incoming,
): { message: string; before: Note | null; isOld: boolean } {
  const known = ledger.findNote(chat, message);
  if (!known) return { message, before: null, isOld: false };
  const isOfIt = known.said === said || (edited === true && revised === undefined);
  if (!isOfIt) return { message: `${message}@${said}`, before: null, isOld: false };
  const isOld = edited ? revised !== undefined && revised < instantOf(known) : true;
  return { message: known.message, before: known, isOld };
}

/** When a wording was made. */
function instantOf(note: Pick<Note, "revised" | "said">): Instant {
  return note.revised ?? note.said;
}

function handleNote(turn: Turn, incoming: Incoming): void {
  const { text, picture } = incoming;
  const replyRoot = rootOfReply(turn, incoming.replyTo);
  if (picture && text.trim() === "")
    keepPicture(turn, picture, { replyRoot, isFollower: incoming.follows === true });
  else if (isTable(incoming)) leaveHistory(turn, { file: turn.note, sent: null });
  else if (text.trim() === "") turn.spoken.push("That was empty. Send a note, like: bought dresser 30");
  else takeWords(turn, incoming, replyRoot);
}

/** A file of past pieces: its rows are no notes. */
function isTable({ document }: Incoming): boolean {
  return document?.name.toLowerCase().endsWith(".csv") === true;
}

/** Words to the bot, answers to what it asked, and the piece of a picture come before notes. */
function takeWords(turn: Turn, { text, replyTo }: Incoming, replyRoot: number | undefined): void {
  if (runCommand(turn, text) || changeLettered(turn, text)) return;
  const open = openQuestions(turn);
  const yesNo = readYesNo(text);
  // "ok" where nothing is asked: no answer, and nothing to say to it. A bare yes or no is told so.
  const isNod = open.length === 0 && !/^\s*[yn]/i.test(text);
  const chat = yesNo === null || isNod ? smallTalk(text) : null;
  if (chat !== null && !open.some(({ ask }) => isChoice(ask, text))) {
    if (chat !== "") turn.spoken.push(chat);
    return;
  }
  const readings = readMessage(text, turn.today);
  const said = { text, today: turn.today, readings, isReply: replyTo !== undefined };
  const questions = questionsFor(turn, open, { replyTo, replyRoot });
  const answers = [answersEach, answersOne, answersInTurn, answersFirst];
  if (turn.lines === 1 && answers.some((answer) => answer(turn, said, questions))) return;
  if (yesNo !== null) {
    const [newest] = open;
    turn.spoken.push(newest ? "That needs more than a yes or no." : "Nothing is waiting for an answer.");
    if (newest) askAgain(turn, newest);
    return;
  }
  if (replyRoot !== undefined && filePicture(turn, replyRoot, text)) return;
  readNotes(turn, { ...said, readings: readLed(turn, said) ?? readings }, replyRoot);
}

/** The newest question that a message fits, else none. */
function answersOne(turn: Turn, said: SaidNow, questions: readonly Question[]): boolean {
  if (!said.isReply && asksForNotes(said.text)) return false;
  return (
    questions.some((question) => answerOpen(turn, said, question)) ||
    questions.some((question) => asksWithLeft(turn, said, question))
  );
}

/** "40, and paint 12 for it": a value that answers, and notes of their own behind it. */
function answersFirst(turn: Turn, said: SaidNow, questions: readonly Question[]): boolean {
  const [first, ...rest] = said.readings;
  if (first?.kind !== "unclear" || first.could || rest.length === 0) return false;
  if (rest.some(({ kind }) => kind === "unclear" || kind === "ask")) return false;
  if (!answersOne(turn, { ...said, text: first.text, readings: [first] }, questions)) return false;
  decideAll(turn, mattersOf(rest, turn.today), { root: turn.root });
  return true;
}

/** "last 3 notes" is no answer, whatever was asked. */
const asksForNotes = (text: string): boolean =>
  /^\s*(?:my |the )?(?:last|latest|recent|today'?s)\b.*\bnotes?\s*$/i.test(text);

function readNotes(turn: Turn, said: SaidNow, replyRoot: number | undefined): void {
  const { text } = said;
  const readings = goneOn(turn, text, said.readings, replyRoot);
  // "sold the chest for how much": nothing is done that a caution could be for.
  if (!endsAsking(text)) heard(turn, text, readings);
  if (answerAsked(turn, text, readings, replyRoot)) return;
  const twins = twinsOf(turn, text);
  // Words repeated before anything came of them are taken anew in place of the first, not doubted.
  const isRepeat = (note: Note) => note.author === turn.person && !hasRecorded(turn, note);
  const twin = twins.find((note) => !isRepeat(note));
  for (const { root } of twins.filter(isRepeat)) closeQuestionsOf(turn, root);
  const noFact = whyNoFact(readings);
  if (readings.length === 0 || readings.every(isNothing))
    turn.spoken.push("Nothing there for the books. Like:\nbought dresser 30");
  else if (noFact) turn.spoken.push(noFact);
  else if (twin) askWhetherAgain(turn, readings, twin);
  else decideAll(turn, mattersOf(readings, turn.today), { root: turn.root, replyRoot });
}

/** A long message sent again within minutes is not recorded a second time, since nobody can be asked about all of it. */
function tellOfTwin(turn: Turn, text: string): boolean {
  const isTwin = twinsOf(turn, text).some((note) => hasRecorded(turn, note));
  if (isTwin)
    turn.spoken.push(
      "You sent the same just now; it counts once. To record it again, send it in five minutes.",
    );
  return isTwin;
}

/** The message that a reply is about: the person's own, or the one that the bot's message answered. */
function rootOfReply(turn: Turn, replyTo: string | undefined): number | undefined {
  if (replyTo === undefined) return undefined;
  const own = turn.ledger.findNote(turn.chat, replyTo);
  const sent = turn.ledger.outbox.messageOf(turn.chat, replyTo);
  // After a change of token both may have had the number: the later one is meant.
  if (own && own.handled >= (sent?.sent ?? 0)) return own.root;
  const about = sent?.note;
  return about === null || about === undefined ? undefined : turn.ledger.note(about)?.root;
}

/** The questions that a message may answer: without a reply any, the one asked last first; else the one replied to. */
function questionsFor(
  turn: Turn,
  open: Question[],
  { replyTo, replyRoot }: { replyTo: string | undefined; replyRoot: number | undefined },
): Question[] {
  const row = replyTo === undefined ? null : turn.ledger.outbox.messageOf(turn.chat, replyTo);
  // A message that answers no note, such as the daily one, speaks of all that is open.
  if (replyTo === undefined || row?.note === null) return open;
  const replied =
    open.find((question) => row !== null && question.prompt === row.id) ??
    open.find((question) => question.note === replyRoot);
  return replied ? [replied] : [];
}

/** The same words sent within minutes, by anybody, that recorded something or are still asked about. */
function twinsOf(turn: Turn, text: string): Note[] {
  const { ledger } = turn;
  const isAsked = (note: Note) => ledger.questions.everyOpen().some((open) => open.note === note.root);
  return ledger
    .recentNotes(null, turn.now() - 2 * AGAIN_MS)
    .filter(({ root, said }) => root !== turn.root && Math.abs(turn.said - said) <= AGAIN_MS)
    .filter((note) => sameWords(note.text, text) && (hasRecorded(turn, note) || isAsked(note)));
}

function hasRecorded({ ledger }: Turn, { root }: Note): boolean {
  return ledger.standingFactsOf(root).length > 0;
}

/** The words of a message without what may differ in a second one. In a flood each is compared with all of the last minutes. */
const plainWords = createMemory((text: string) => text.trim().toLowerCase().replace(/\s+/g, " "), true);

function sameWords(a: string, b: string): boolean {
  return plainWords.get(a) === plainWords.get(b);
}

function hearPress(deps: ConversationDeps, press: Press): void {
  const { ledger } = deps;
  if (press.update && !ledger.claimUpdate(press.update)) return;
  const { person, chat, said } = press;
  const message = pressName(press);
  const isAgain = ledger.findNote(chat, message) !== null;
  const note = ledger.addNote({
    chat,
    message,
    text: press.press,
    author: person,
    said,
    handled: deps.now(),
  });
  const turn = newTurn(deps, { person, chat, note, said, lines: 1 });
  turn.pressed = press.message;
  // A choice and an undo know by themselves that they were made before; a next step does not.
  if (isAgain && press.press.startsWith("n")) turn.spoken.push("That button was used already.");
  else handlePress(turn, press.press);
  if (!turn.isLeft) finish(turn);
}

/** A press is kept as a note of its own, under a name that no message has. */
function pressName({ message, press }: Pick<Press, "message" | "press">): string {
  return `press:${message}:${press}`;
}

/** Queues the reply and what goes with it, and keeps what came of the note. */
function finish(turn: Turn): void {
  const { ledger, chat, note } = turn;
  dropOld(turn);
  decideReleased(turn);
  const caution = cautionOf(turn);
  const { reply, aside } = composeReply(turn, caution);
  const tally = caution === null && isTellable(turn) ? { tally: { of: tallyOf(turn) } } : {};
  const row = reply === null ? null : queueReply(turn, { kind: "text", reply, ...tally });
  const [asked] = turn.asked;
  if (asked && row !== null) ledger.questions.setPrompt(asked.id, row);
  if (aside !== null) ledger.outbox.queue({ chat, body: { kind: "text", reply: aside }, about: note });
  const lead = nextLead(turn);
  if (lead !== null) ledger.outbox.queue({ chat, body: { kind: "text", reply: lead } });
  for (const body of turn.files) ledger.outbox.queue({ chat, body, about: note });
  tidyButtons(turn);
  const refused = turn.refused.length > 0 ? "unclear" : "answered";
  ledger.setNoteState(
    note,
    turn.recorded.length > 0 || turn.mended ? "recorded" : turn.asked.length > 0 ? "asked" : refused,
    turn.mended ? MENDED : undefined,
  );
}

/**
 * Queues the reply: after an edit as new words of the bot's earlier answer, else as a message, which quotes its
 * note where several are under way. A question always comes as a message: its place in the queue goes by it.
 */
function queueReply(turn: Turn, body: Extract<OutboxBody, { kind: "text" }>): number | null {
  const { ledger, chat, note, root } = turn;
  const earlier = note === root || turn.asked.length > 0 ? null : ledger.outbox.answerOf(root);
  if (earlier?.chat === chat) {
    const edit = { kind: "edit" as const, outbox: earlier.id, reply: body.reply, orSend: true as const };
    return ledger.outbox.queue({ chat, body: edit, about: note });
  }
  const replyTo = isOneOfSeveral(turn) ? { replyTo: ledger.note(note)!.message } : {};
  return ledger.outbox.queue({ chat, body, about: note, ...replyTo });
}

/** Whether the person has other notes under way: sent in the same moment, or waited for together. */
function isOneOfSeveral({ ledger, person, root, said, now, pressed }: Turn): boolean {
  if (pressed !== null) return false;
  if (now() - said > TOGETHER_MS) return true;
  return ledger
    .recentNotes(person, now() - TOGETHER_MS)
    .some((note) => note.root !== root && !note.message.startsWith("press:"));
}
