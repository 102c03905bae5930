import { createHash } from "node:crypto";
import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { expect, test } from "vitest";

const HERE = dirname(fileURLToPath(import.meta.url));
const TOP = resolve(HERE, "../..");
/** Made by tools, or not ours; the lock file names packages. */
const SKIPPED = new Set(["node_modules", ".git", "data", "package-lock.json", "kept-out.txt"]);
/** The longest phrase of the list. */
const WORDS_MAX = 4;

/**
 * Names of brands, shops, services and makers, one program's own terms, and traces of how the project came about:
 * kept out of its text. Each stands as the start of its hash, so that the list does not bring them in itself. To add
 * one: the first 16 hex digits of the SHA-256 of its words in small letters, single spaces between them; for several
 * words also that of the first, with a plus before it.
 */
const KEPT_OUT = new Set(readFileSync(join(HERE, "kept-out.txt"), "utf8").trim().split("\n"));

const hashes = new Map<string, string>();

function hashOf(phrase: string): string {
  const known = hashes.get(phrase) ?? createHash("sha256").update(phrase).digest("hex").slice(0, 16);
  hashes.set(phrase, known);
  return known;
}

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    if (SKIPPED.has(entry.name) || entry.name.startsWith(".build")) return [];
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesOf(path);
    return /\.(?:ts|mts|mjs|js|json|jsonl|md|txt|sql|toml|ya?ml)$|^Dockerfile$/.test(entry.name)
      ? [path]
      : [];
  });
}

/** What is kept out and stands in the text: runs of one to four words of a line. */
function namesIn(text: string): string[] {
  const found = new Set<string>();
  for (const line of text.toLowerCase().split("\n")) {
    const words = line.match(/[a-z0-9]+/g) ?? [];
    for (const [first, word] of words.entries()) {
      if (KEPT_OUT.has(hashOf(word))) found.add(word);
      if (!KEPT_OUT.has(`+${hashOf(word)}`)) continue;
      for (let count = 2; count <= WORDS_MAX && first + count <= words.length; count++) {
        const phrase = words.slice(first, first + count).join(" ");
        if (KEPT_OUT.has(hashOf(phrase))) found.add(phrase);
      }
    }
  }
  return [...found];
}

test("the check knows a name when it sees one", () => {
  expect(KEPT_OUT.size).toBeGreaterThan(300);
  // A name of nobody's, on the list for this test; in parts here, so that the check below does not find it.
  const name = ["quillo", "mar"].join("");
  expect(namesIn(`A can of ${name.toUpperCase()}, red`)).toEqual([name]);
  expect(namesIn(`one ${name}-finish`)).toEqual([name, `${name} finish`]);
  expect(namesIn("A can of red paint\nfinish")).toEqual([]);
});

test("no brand, shop, service or maker is named, nor how the project came about", () => {
  const found = filesOf(TOP).flatMap((file) =>
    namesIn(readFileSync(file, "utf8")).map((name) => `${relative(TOP, file)}: ${name}`),
  );
  expect(found).toEqual([]);
});
