import type { Fact } from "../../core/books/facts.ts";
import { labelOf } from "../../core/books/label.ts";
import { dayOfInstant, showDay } from "../../core/calendar.ts";
import { ever } from "../../core/decide/pieces/fits.ts";
import { matchMention } from "../../core/decide/pieces/match.ts";
import { readBareMention } from "../../core/notes/bare.ts";
import type { Button } from "../../core/reply.ts";
import type { Incoming } from "./incoming.ts";
import { echoOf } from "./outcome.ts";
import type { Turn } from "./turn.ts";

/** A picture without words that comes so soon after a note belongs to it. */
const SOON_MS = 10 * 60_000;
const PIECES_OFFERED_MAX = 3;

type Kept = NonNullable<Incoming["picture"]>;

/**
 * A picture without words: it joins the message replied to, the album that it is a part of, or the purchase or
 * the spending just noted; else its piece is asked, once.
 */
export function keepPicture(
  turn: Turn,
  { file, unique: uniqueFile }: Kept,
  of: { replyRoot: number | undefined; isFollower: boolean },
): void {
  const { ledger, note, said: taken } = turn;
  const { replyRoot, isFollower } = of;
  const add = (where: { note: number; piece?: number }) =>
    ledger.pictures.add({ ...where, file, uniqueFile, taken });
  if (replyRoot !== undefined && (isFollower || isPicture(turn, replyRoot))) {
    // All of an album are filed together, by its first picture.
    const [first] = ledger.pictures.ofMessage(replyRoot);
    add({ note: replyRoot, ...(first?.piece ? { piece: first.piece } : {}) });
    return;
  }
  const facts = replyRoot === undefined ? justNoted(turn) : ledger.standingFactsOf(replyRoot);
  const spent = facts.find((fact) => fact.kind === "spend");
  const pieces = [...new Set(facts.flatMap((fact) => fact.pieces))];
  const [piece] = pieces;
  if (spent) {
    add({ note: spent.root });
    turn.spoken.push(`Receipt kept: ${echoOf(turn, spent)[0]}`);
  } else if (pieces.length === 1 && piece !== undefined) {
    add({ note, piece });
    turn.spoken.push(`Picture added to ${labelOf(ledger.books, [piece])}.`);
    if (replyRoot === undefined) turn.buttons.push([{ label: "Another piece", press: `px:${note}` }]);
  } else {
    add({ note });
    askPiece(turn, note, pieces);
  }
}

function isPicture({ ledger }: Turn, root: number): boolean {
  return ledger.note(root)?.text.trim() === "" && ledger.pictures.ofMessage(root).length > 0;
}

/** What this person noted last, where it was a moment ago and a purchase or a spending. */
function justNoted({ ledger, person, said }: Turn): Fact[] {
  const root = ledger.lastStanding(person);
  const note = root === null ? null : ledger.note(root);
  if (root === null || !note || Math.abs(said - note.said) > SOON_MS) return [];
  const facts = ledger.standingFactsOf(root);
  return facts.every(({ kind }) => kind === "buy" || kind === "spend") ? facts : [];
}

/** Asks which piece a kept picture shows: the likely ones as buttons, any other by a reply. */
function askPiece(turn: Turn, note: number, likely: readonly number[]): void {
  const { books } = turn.ledger;
  const recent = [...books.facts]
    .reverse()
    .slice(0, 40)
    .flatMap(({ pieces }) => pieces);
  const offered = [...new Set([...likely, ...recent])].slice(0, PIECES_OFFERED_MAX);
  turn.spoken.push("Picture kept. Which piece is it?\nAnother one: reply to it with its number, like: #4");
  turn.buttons.push(
    ...offered.map((piece): Button[] => [{ label: labelOf(books, [piece]), press: `pf:${note}:${piece}` }]),
  );
}

/** A press under a kept picture: its piece, or that it is another one. */
export function pressPicture(turn: Turn, kind: "pf" | "px", note: number, piece: number): void {
  const { ledger } = turn;
  if (ledger.pictures.ofMessage(note).length === 0 || (kind === "pf" && !ledger.books.pieces.has(piece))) {
    turn.spoken.push("That picture or that piece is not there any more.");
  } else if (kind === "px") {
    ledger.pictures.fileUnder(note, null);
    askPiece(turn, note, []);
  } else {
    ledger.pictures.fileUnder(note, piece);
    turn.spoken.push(`Picture added to ${labelOf(ledger.books, [piece])}.`);
  }
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

/** "show the desk before and after": the first and the last picture of the pieces meant. */
export function showBeforeAndAfter(turn: Turn, said: string): void {
  const { books, pictures } = turn.ledger;
  const mention = readBareMention(said.replace(/ before (?:and|&) after$/i, ""));
  const match = mention ? matchMention(mention, books, ever, new Set()) : null;
  const meant = match?.kind === "found" ? match.pieces : match?.kind === "several" ? match.groups.flat() : [];
  const shown = meant.filter((piece) => pictures.ofPiece(piece).length > 0);
  for (const piece of shown) queuePictures(turn, piece, "before and after");
  if (shown.length > 0) turn.spoken.push(labelOf(books, shown));
  else if (meant.length > 0) turn.spoken.push(`No picture of ${labelOf(books, meant)} yet.`);
  else turn.spoken.push("I can't tell which piece that is. Say its number, like: show #4");
}

/** Sends the pictures of a piece after the reply, oldest first: all of them, or the first and the last. */
export function queuePictures(turn: Turn, piece: number, which: "all" | "before and after" = "all"): void {
  const all = turn.ledger.pictures.ofPiece(piece);
  const isPair = which === "before and after" && all.length > 1;
  const pictures = isPair ? [all[0]!, all.at(-1)!] : all;
  for (const [index, { file, taken, uniqueFile }] of pictures.entries()) {
    const word = isPair ? [" before", " after"][index] : "";
    const caption = `#${piece}${word}, ${showDay(dayOfInstant(taken, turn.zone()), turn.today)}`;
    turn.files.push({ kind: "file", make: { what: "picture", name: uniqueFile, args: { file } }, caption });
  }
}
