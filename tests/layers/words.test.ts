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

/** Lists of the names of fields. */
const NAMES_OF_FIELDS = "core/notes/print.ts";

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return entry.name === "words" || entry.name === "rows" ? [] : filesOf(path);
    return [path];
  });
}

const isOfKinds = (list: string): boolean =>
  [...list.matchAll(/"([^"]*)"/g)].every(([, word]) => KINDS.has(word!));

test("the word lists of the reading stand in words/ alone", () => {
  const strays = filesOf("core/notes")
    .filter((path) => path !== NAMES_OF_FIELDS)
    .flatMap((path) => {
      const source = readFileSync(path, "utf8");
      return LISTS.flatMap((list) => [...source.matchAll(list)])
        .filter(([, words]) => !words || !isOfKinds(words))
        .map(([found]) => `${path}: ${found.replace(/\s+/g, " ").slice(0, 60)}`);
    });
  expect(strays).toEqual([]);
});
