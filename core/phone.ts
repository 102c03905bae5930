/** What a phone held in one hand shows of a line before it breaks it, and of a reply before it has to be scrolled. */
export const PHONE_COLUMNS = 40;
export const PHONE_LINES = 5;

/** Where a line may be broken: between things said, never before its first amount, nor inside a bracket. */
const JOINTS = / · |, |; |: | \(/g;

/** A line as lines of at most 40 characters, broken at its joints; what has none is left to the phone. */
export function folded(line: string): string[] {
  if (line.length <= PHONE_COLUMNS) return [line];
  const breaks = [...line.matchAll(JOINTS)].map(partsAt(line)).filter(([first]) => isWhole(first));
  const [first, rest] = breaks.findLast(([part]) => part.length <= PHONE_COLUMNS) ?? breaks[0] ?? [];
  return first === undefined || rest === undefined ? [line] : [first, ...folded(rest)];
}

/** The same for a line of a list: what is broken off stands under it, as far in. */
export function foldedUnder(line: string): string[] {
  const margin = /^ */.exec(line)?.[0] ?? "";
  return folded(line).map((part, index) => (index === 0 ? part : `${margin}  ${part}`));
}

/** What stands in brackets at the end of a first line too long goes under it: the figure stays where it is. */
export function bracketsUnder(text: string): string {
  const [first = "", ...rest] = text.split("\n");
  const at = first.length > PHONE_COLUMNS ? first.search(/ \([^()]*\)(?: \([^()]*\))*$/) : -1;
  return at < 0 ? text : [first.slice(0, at), ` ${first.slice(at)}`, ...rest].join("\n");
}

/** A dot or a comma goes, a bracket opens the second part, any other mark closes the first. */
function partsAt(line: string): (joint: RegExpExecArray) => [first: string, rest: string] {
  return ({ 0: joint, index }) => {
    const isKept = joint === "; " || joint === ": ";
    const next = joint === " (" ? index + 1 : index + joint.length;
    return [line.slice(0, isKept ? index + 1 : index), line.slice(next)];
  };
}

function isWhole(first: string): boolean {
  const isOpen = first.split("(").length > first.split(")").length;
  return !isOpen && /\d\.\d\d/.test(first);
}

/** Parts that belong together side by side, " · " between them, as many to a line as fit 40 characters. */
export function sideBySide(parts: readonly string[]): string[] {
  const lines: string[] = [];
  for (const part of parts) {
    const joined = `${lines.at(-1)} · ${part}`;
    if (lines.length > 0 && joined.length <= PHONE_COLUMNS) lines[lines.length - 1] = joined;
    else lines.push(part);
  }
  return lines;
}

/** How many lines of 40 characters a text takes, broken between words as a phone breaks it. */
export function rowsOf(text: string): number {
  return text.split("\n").reduce((rows, line) => rows + rowsOfLine(line), 0);
}

function rowsOfLine(line: string): number {
  let rows = 1;
  let column = 0;
  for (const word of line.split(" ")) {
    const length = [...word].length;
    if (column > 0 && column + 1 + length > PHONE_COLUMNS) {
      rows++;
      column = length;
    } else column += (column > 0 ? 1 : 0) + length;
  }
  return rows;
}
