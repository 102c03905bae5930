import { readdirSync, readFileSync } from "node:fs";
import { join } from "node:path";
import { expect, test } from "vitest";
import { verbs } from "../../core/verbs/list.ts";

const KINDS: ReadonlySet<string> = new Set(verbs.map(({ kind }) => kind));

/** Five or more quoted words in a set, or a text cut at its blanks: a word list. */
const LISTS = [
  /new Set\(\s*\[((?:\s*"[^"]*",?){5,})\s*\]/g,
  /\bwordSet\(/g,
  /"[^"]{3,}"(?:\s*\+\s*"[^"]*")*\s*\)?\.split\(\s*" "/g,
];

/** Three words or more that stand for one another in a pattern. */
const PATTERNS = [/\/[^/\n]*\b[a-z]{2,}\|[a-z]{2,}\|[a-z]{2,}[^/\n]*\//g];

/** Lists of the names of fields. */
const NAMES_OF_FIELDS: ReadonlySet<string> = new Set([
  "core/notes/print.ts",
  "core/decide/answering/completion.ts",
  "core/decide/unclear/whole.ts",
]);

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "words" || entry.name === "rows" ? [] : filesOf(path);
    return [path];
  });
}

const isOfKinds = (list: string): boolean =>
  [...list.matchAll(/"([^"]*)"/g)].every(([, word]) => KINDS.has(word!));

function straysIn(path: string, lists: readonly RegExp[]): string[] {
  const source = readFileSync(path, "utf8");
  return lists
    .flatMap((list) => [...source.matchAll(list)])
    .filter(([, words]) => !words || !isOfKinds(words))
    .map(([found]) => `${path}: ${found.replace(/\s+/g, " ").slice(0, 60)}`);
}

test.each([
  ["core/notes", LISTS],
  ["core/decide", [...LISTS, ...PATTERNS]],
  ["core/mending", [...LISTS, ...PATTERNS]],
])("the word lists of %s stand in words/ alone", (room, lists) => {
  const strays = filesOf(room)
    .filter((path) => !NAMES_OF_FIELDS.has(path))
    .flatMap((path) => straysIn(path, lists));
  expect(strays).toEqual([]);
});
