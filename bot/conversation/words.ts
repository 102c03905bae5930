import { isChoice } from "../../core/decide/answering/answer.ts";
import { offerOf, orLikely } from "../../core/decide/decide.ts";
import { mattersOf } from "../../core/decide/matters.ts";
import { mentionsOf } from "../../core/decide/pieces/mentioned.ts";
import { isNothing, isRemark, smallTalk, whyNoFact } from "../../core/decide/talk/smalltalk.ts";
import { isOnlyDeclined, withOfferEnds } from "../../core/decide/unclear/offer-ends.ts";
import { readYesNo } from "../../core/notes/bare.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import { asksOfBot } from "../../core/notes/second-look/gathered.ts";
import { isFor } from "../../core/notes/unclear.ts";
import { endsAsking, soundsAsked } from "../../core/questions/sounds.ts";
import type { Note } from "../../db/notes.ts";
import type { Question } from "../../db/questions.ts";
import { answersAny, type SaidNow } from "./answering.ts";
import { answerApart, answerAsked, asksFigure } from "./asked.ts";
import { heard } from "./cautioning.ts";
import { runCommand } from "./commands.ts";
import { goneOn, ofBuyer, talkingDesk } from "./going-on.ts";
import type { Incoming } from "./incoming.ts";
import { readLed } from "./leading.ts";
import { changeLettered } from "./lettered.ts";
import { filePicture } from "./pictures.ts";
import { askAgain, askWhetherAgain, closeQuestionsOf, openQuestions } from "./questions.ts";
import { decideAll } from "./recording.ts";
import { paidLoan } from "./spoken.ts";
import { keepNamed } from "./talk.ts";
import type { Turn } from "./turn.ts";
import { hasRecorded, twinsOf } from "./twins.ts";

/** Words to the bot, answers to what it asked, and the piece of a picture come before notes. */
export function takeWords(turn: Turn, { text, replyTo }: Incoming, replyRoot: number | undefined): void {
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
  if (turn.lines === 1 && answersAny(turn, said, questions)) return;
  const [newest] = open;
  // "cancel that" with nothing asked takes back what was noted.
  const takesBack = !newest && readings[0]?.kind === "undo";
  if (yesNo !== null && !takesBack) {
    const undo = yesNo === "yes" ? "" : ' "undo" takes back your newest note.';
    turn.spoken.push(
      newest ? "That needs more than a yes or no." : `Nothing is waiting for an answer.${undo}`,
    );
    if (newest) askAgain(turn, newest);
    return;
  }
  if (replyRoot !== undefined && filePicture(turn, replyRoot, text)) return;
  const take = (note: SaidNow) =>
    readNotes(turn, { ...note, readings: readLed(turn, note) ?? note.readings }, replyRoot);
  const takeNote = (part: string) => take({ ...said, text: part, readings: readMessage(part, turn.today) });
  if (!answerApart(turn, text, takeNote)) take(said);
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

/** "could you hold the vanity for beatrice?": it is told, however it is asked. */
const isOrder = (text: string, readings: readonly Reading[]): boolean =>
  asksOfBot(text) && readings.every((reading) => reading.kind === "unclear" && reading.could !== undefined);

function readNotes(turn: Turn, said: SaidNow, replyRoot: number | undefined): void {
  const text = paidLoan(turn, said.text, replyRoot);
  const read = text === said.text ? said.readings : readMessage(text, turn.today);
  // A list of notes is told by itself, whatever was said before.
  const desk = turn.lines === 1 ? talkingDesk(turn, replyRoot) : null;
  const isAsked = desk !== null && asksFigure(turn, text, read, () => ofBuyer(text, read, desk) !== null);
  const asSaid = desk && !isAsked ? goneOn(text, read, desk) : read;
  // "sold the chest for how much": nothing is done that a caution could be for.
  if (!endsAsking(text)) heard(turn, text, asSaid);
  if (!isAsked && isRemark(text, asSaid)) return;
  const mayBe =
    desk && asSaid.every(({ kind }) => kind === "unclear") && !isOnlyDeclined(asSaid, text)
      ? orLikely(text, asSaid, desk)
      : asSaid;
  const isOther = mayBe !== asSaid || isOrder(text, asSaid);
  // "somebody wants the desk for 80" of a listed desk tells of an offer, and "somebody is coming tonight" of a visit.
  const isTold =
    desk !== null &&
    !soundsAsked(text) &&
    (offerOf(asSaid, desk) !== undefined || asSaid.every((reading) => isFor(reading, "appointment")));
  if (!isTold && answerAsked(turn, text, asSaid, { replyRoot, isOther })) return;
  const readings = withOfferEnds(mayBe, text);
  // "finished it" of two people is about two things.
  const isOfTalk = readings.some((reading) => reading.follows || mentionsOf(reading).some(({ it }) => it));
  const twins = twinsOf(turn, text).filter(({ author }) => author === turn.person || !isOfTalk);
  // Words repeated before anything came of them are taken anew in place of the first, not doubted.
  const isRepeat = (note: Note) => note.author === turn.person && !hasRecorded(turn, note);
  const twin = twins.find((note) => !isRepeat(note));
  for (const { root } of twins.filter(isRepeat)) closeQuestionsOf(turn, root);
  const noFact = whyNoFact(readings);
  const offer = noFact === null ? undefined : offerOf(readings, desk ?? talkingDesk(turn, replyRoot));
  if (noFact || readings.every(isNothing)) keepNamed(turn, text);
  const isNew = turn.ledger.books.facts.length === 0;
  if (readings.length === 0 || readings.every(isNothing))
    turn.spoken.push(`Nothing there for the books.${isNew ? " Like:\nbought dresser 30" : ""}`);
  else if (offer) decideAll(turn, mattersOf([offer], turn.today), { root: turn.root, replyRoot });
  else if (noFact) turn.spoken.push(noFact);
  else if (twin) askWhetherAgain(turn, readings, twin);
  else decideAll(turn, mattersOf(readings, turn.today, turn.ledger.books), { root: turn.root, replyRoot });
}
