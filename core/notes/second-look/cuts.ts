import { wordsOf } from "../tokens/text.ts";
import { ASKS_BEHIND, DOES, OF_OURS } from "../words/asking.ts";
import { AND, BEFORE_BUYER, PARTED, RELATIVES, TELLS_OF_BUYER } from "../words/links.ts";

/* Where a line that says several things may be cut: a note from a question, a correction or a standing note. */

/** A word or a mark, however far it has been read. */
interface Piece {
  kind: string;
  text: string;
}

/** What stands before `end` is one part, what begins at `next` another; between them marks and joining words. */
interface Cut {
  end: number;
  next: number;
}

const isJoint = ({ kind, text }: Piece): boolean => (kind === "mark" ? PARTED.has(text) : AND.has(text));

/** All places where a line may be cut. */
export function cutsOf(pieces: readonly Piece[]): Cut[] {
  const cuts: Cut[] = [];
  for (let end = 1; end < pieces.length - 1; end += 1) {
    if (!isJoint(pieces[end]!)) continue;
    let next = end + 1;
    while (next < pieces.length && isJoint(pieces[next]!)) next += 1;
    if (!isRelative(pieces, end, next)) cuts.push({ end, next });
    end = next - 1;
  }
  return cuts;
}

/** "sold for 140 to imani, who paid by transfer" asks nothing: it says more of somebody just named. */
function isRelative(pieces: readonly Piece[], joint: number, next: number): boolean {
  if (!RELATIVES.has(pieces[next]?.text ?? "") || pieces[joint]!.text !== "," || pieces.at(-1)!.text === "?")
    return false;
  const isNamed = pieces.slice(Math.max(0, joint - 8), joint - 1).some(({ text }) => BEFORE_BUYER.has(text));
  return isNamed && pieces.slice(next + 1, next + 3).some(({ text }) => TELLS_OF_BUYER.has(text));
}

/** What belongs to the words before it: "put 1000 on the loan, what would i save". */
const SUPPOSES = /\b(?:would|will|save|if)\b/i;

/** The parts of a message of which each but the first asks by itself; null where it is one. */
export function askedApart(text: string): string[] | null {
  const words = wordsOf(text);
  const pieces = words.map(({ kind, norm }) => ({ kind, text: norm }));
  const parts: string[] = [];
  let from = 0;
  for (const { end, next } of cutsOf(pieces)) {
    const [asks, whom] = pieces.slice(next, next + 2);
    const isAsked =
      ASKS_BEHIND.has(asks?.text ?? "") || (DOES.has(asks?.text ?? "") && OF_OURS.has(whom?.text ?? ""));
    if (!isAsked || whom === undefined || whom.kind === "mark") continue;
    parts.push(text.slice(from, words[end - 1]!.end).trim());
    from = words[next]!.start;
  }
  if (parts.length === 0) return null;
  parts.push(text.slice(from).trim());
  return parts.slice(1).some((part) => SUPPOSES.test(part)) ? null : parts;
}
