import { labelOf } from "../../core/books/label.ts";
import { dayOfInstant, showDay } from "../../core/calendar.ts";
import { ever } from "../../core/decide/fits.ts";
import { matchMention } from "../../core/decide/match.ts";
import { readBareMention } from "../../core/notes/bare.ts";
import type { Incoming } from "./incoming.ts";
import type { Turn } from "./turn.ts";

/** A picture without words: it joins the one piece of the message replied to, else its piece is asked. */
export function keepPicture(
  turn: Turn,
  picture: NonNullable<Incoming["picture"]>,
  replyRoot: number | undefined,
): void {
  const { ledger, note, said: taken } = turn;
  const facts = replyRoot === undefined ? [] : ledger.standingFactsOf(replyRoot);
  const pieces = [...new Set(facts.flatMap((fact) => fact.pieces))];
  const { file, unique: uniqueFile } = picture;
  const [piece] = pieces;
  if (pieces.length === 1 && piece !== undefined) {
    ledger.pictures.add({ note, piece, file, uniqueFile, taken });
    turn.spoken.push(`Picture added to ${labelOf(ledger.books, [piece])}.`);
    return;
  }
  ledger.pictures.add({ note, file, uniqueFile, taken });
  turn.spoken.push("Picture kept. Which piece is it? Reply to the picture with its number, like: #4");
}

/** A reply to a picture that no piece has yet, naming the piece; false where it is no such reply. */
export function filePicture(turn: Turn, root: number, text: string): boolean {
  const { ledger } = turn;
  const mention = ledger.note(root)?.text.trim() === "" ? readBareMention(text) : null;
  if (!mention) return false;
  const match = matchMention(mention, ledger.books, ever, new Set());
  if (match.kind !== "found" || match.pieces.length !== 1) {
    turn.spoken.push("I can't tell which piece that is. Say its number, like: #4");
    return true;
  }
  ledger.pictures.fileUnder(root, match.pieces[0]!);
  turn.spoken.push(`Picture added to ${labelOf(ledger.books, match.pieces)}.`);
  return true;
}

/** Sends every picture of a piece after the reply, oldest first. */
export function queuePictures(turn: Turn, piece: number): void {
  const pictures = turn.ledger.pictures.ofPiece(piece);
  for (const { file, taken, uniqueFile } of pictures) {
    const caption = `#${piece}, ${showDay(dayOfInstant(taken, turn.zone()), turn.today)}`;
    turn.files.push({ kind: "file", make: { what: "picture", name: uniqueFile, args: { file } }, caption });
  }
}
