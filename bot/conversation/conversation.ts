import { allAtOnce, type Steps } from "../../core/steps.ts";
import { placeOf, storeNote } from "./delivery.ts";
import { editNote, type WorkedEdit, workingEdit } from "./editing.ts";
import { finish } from "./finishing.ts";
import { handleHistory, historiesLeft, leaveHistory } from "./history.ts";
import type { Conversation, Incoming, Press } from "./incoming.ts";
import { goOnWithLong, inTurns, keepPlace, letOthers, unfinishedNotes } from "./long.ts";
import { keepPicture } from "./pictures.ts";
import { handlePress } from "./presses.ts";
import { type ConversationDeps, newTurn, type Turn } from "./turn.ts";
import { tellOfTwin } from "./twins.ts";
import { takeWords } from "./words.ts";

export type { ConversationDeps } from "./turn.ts";

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
  if (historiesLeft(deps).length === 0) return;
  // What led to it has had its turn: with the first slice it would hold the loop for too long.
  await letOthers();
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
