import { renderUnicodeCompact } from "uqr";

/** Where the pairing link is shown: its columns, and whether it is a terminal that can draw. */
export interface Screen {
  isTerminal: boolean;
  columns: number;
}

/** White blocks on black, whatever the terminal's own colors: a phone reads dark modules on a light ground. */
const ON_BLACK = "\x1b[40;97m";
const PLAIN = "\x1b[0m";

/**
 * What to do to become the owner, the link alone on its line. On a terminal wide enough the link is drawn to be
 * photographed as well (ISO/IEC 18004, lowest error correction: the code is read from a screen).
 * `link` is an address, or the words to send where the server is not Telegram's own.
 */
export function pairingText(link: string, username: string, screen: Screen): string {
  const isAddress = link.startsWith("http");
  const how = isAddress
    ? "To become the owner, open this link on your phone and press Start. It works once:"
    : `To become the owner, send this to @${username}. It works once:`;
  const picture = isAddress && screen.isTerminal ? pictureOf(link, screen.columns) : [];
  return ["", how, "", link, "", ...picture].join("\n").trimEnd();
}

function pictureOf(link: string, columns: number): string[] {
  const lines = renderUnicodeCompact(link, { ecc: "L", border: 2 }).trimEnd().split("\n");
  if (lines.some((line) => line.length > columns)) return [];
  return ["Or point the phone's camera here:", "", ...lines.map((line) => `${ON_BLACK}${line}${PLAIN}`)];
}
