/** The longest text of one message and the longest caption of a file, in UTF-16 units after the markup. */
export const TEXT_LENGTH_MAX = 4096;
export const CAPTION_LENGTH_MAX = 1024;

/** Text made safe for Telegram's HTML mode, where only these three characters mean anything. */
export function escapeHtml(text: string): string {
  return text.replaceAll("&", "&amp;").replaceAll("<", "&lt;").replaceAll(">", "&gt;");
}

/**
 * Escapes a plain text and cuts it into parts of at most `lengthMax` units: at line ends where it can, else at
 * a space, else anywhere but inside a character or an escape. No part is empty; an empty text gives no part.
 */
export function htmlParts(text: string, lengthMax: number = TEXT_LENGTH_MAX): string[] {
  const parts: string[] = [];
  let rest = text.trimEnd();
  while (rest !== "") {
    const taken = longestFit(rest, lengthMax);
    const part = taken < rest.length ? rest.slice(0, breakBefore(rest, taken)) : rest;
    rest = rest.slice(part.length).replace(/^\n/, "");
    if (part.trim() !== "") parts.push(escapeHtml(part.trimEnd()));
  }
  return parts;
}

/** How many units from the start of `text` stay within `lengthMax` once escaped. */
function longestFit(text: string, lengthMax: number): number {
  let length = 0;
  let taken = 0;
  for (const character of text) {
    length += escapeHtml(character).length;
    if (length > lengthMax) break;
    taken += character.length;
  }
  return taken;
}

function breakBefore(text: string, taken: number): number {
  const window = text.slice(0, taken + 1);
  const lineEnd = window.lastIndexOf("\n");
  if (lineEnd > 0) return lineEnd;
  const space = window.lastIndexOf(" ");
  return space > 0 ? space : taken;
}
