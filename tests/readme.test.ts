import { existsSync, mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join, resolve } from "node:path";
import { fileURLToPath } from "node:url";
import { afterAll, beforeAll, describe, expect, test } from "vitest";
import { createConversation } from "../bot/conversation/conversation.ts";
import { fillDemo } from "../bot/demo/fill.ts";
import { showReply } from "../bot/terminal/screen.ts";
import { readMessage } from "../core/notes/read.ts";
import type { Ledger } from "../db/ledger.ts";
import { openLedger } from "../db/open.ts";

const TOP = resolve(fileURLToPath(import.meta.url), "../..");
const readme = readFileSync(join(TOP, "README.md"), "utf8");
const developers = readFileSync(join(TOP, "DEVELOPERS.md"), "utf8");
const manifest = JSON.parse(readFileSync(join(TOP, "package.json"), "utf8")) as {
  scripts: Record<string, string>;
  dependencies: Record<string, string>;
  devDependencies: Record<string, string>;
};

/** What stands between backticks, blocks of code aside. */
function quotedIn(markdown: string): string[] {
  const prose = markdown
    .replace(/^ {4}.*$/gm, "")
    .replace(/^```\w+\n.*?^```$/gms, "")
    .replace(/\s+/g, " ");
  return [...prose.matchAll(/`([^`]+)`/g)].map(([, words]) => words!);
}

interface Exchange {
  note: string;
  lines: string[];
}

/** The conversation shown: each note with the lines of its reply. */
function exchangesIn(markdown: string): Exchange[] {
  const block = markdown
    .replace(/^```\w+\n.*?^```$/gms, "")
    .split("\n")
    .filter((line) => line.startsWith("    "));
  const exchanges: Exchange[] = [];
  for (const line of block.map((each) => each.slice(4))) {
    if (line.startsWith("> ")) exchanges.push({ note: line.slice(2), lines: [] });
    else if (/^(?:docker|npm) /.test(line)) continue;
    else exchanges.at(-1)?.lines.push(line);
  }
  return exchanges;
}

const exchanges = exchangesIn(readme);

/** Notes in running text: several words in small letters, and no command of the shell. */
const notesInProse = [
  ...quotedIn(readme).filter(
    (words) =>
      /^[a-z][a-z0-9]* [^,]+$/.test(words) &&
      !/^(?:npm|apt-get|docker|systemctl|loginctl|journalctl) /.test(words),
  ),
  ...[...readme.split("\n\n")[1]!.matchAll(/"([^",]+),?"/g)].map(([, note]) => note!),
];

/** Taken by the conversation as words to the bot itself, when they are the whole message. */
const TO_THE_BOT = [
  "time zone America/Chicago",
  "mileage rate 2027 74",
  "remove NAME",
  "show paint receipts",
  "members see money",
];

/** Questions that only the books can answer, each going on from the one before. */
const QUESTIONS = [
  "profit by kind",
  "what if i pay 300 more a month",
  "should i buy this dresser for 60",
  "how much on paint this year",
  "and in june?",
];

describe("the conversation in the README", () => {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-readme-"));
  // The numbers were taken on this day: the half year ends on the day it is looked at.
  const now = () => Date.parse("2026-11-25T12:00:00Z");
  let ledger: Ledger;
  let say: (text: string) => string[];
  beforeAll(() => {
    const opened = openLedger({ directory, now: now() });
    if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
    ledger = opened.ledger;
    const log = { debug() {}, info() {}, warn() {}, error: console.error };
    const deps = { ledger, currency: "USD", zone: () => "UTC", now, log };
    expect(fillDemo(deps)).toEqual([]);
    const person = ledger.transaction(() =>
      ledger.members.add({ user: "reader", name: "reader", role: "owner", joined: now() }),
    );
    const conversation = createConversation(deps);
    let count = 0;
    say = (text) => {
      conversation.hear({ person, chat: "reader", message: `m${++count}`, text, said: now() });
      let row = ledger.outbox.nextUnsent(now(), "reader");
      // Buttons that are used up go from an earlier message first.
      for (; row && row.body.kind !== "text"; row = ledger.outbox.nextUnsent(now(), "reader"))
        ledger.outbox.markSent(row.id, null, now());
      if (row?.body.kind !== "text") throw new Error(`no reply to ${text}`);
      ledger.outbox.markSent(row.id, `bot-${count}`, now());
      return showReply(row.body.reply).text.split("\n");
    };
  });
  afterAll(() => {
    ledger.close();
    rmSync(directory, { recursive: true, force: true });
  });

  test.each(exchanges)("$note", ({ note, lines }) => {
    const shown = say(note);
    const isCut = lines.at(-1) === "…";
    expect(isCut ? shown.slice(0, lines.length - 1) : shown).toEqual(isCut ? lines.slice(0, -1) : lines);
  });

  test.each(QUESTIONS)("%s is answered", (question) => {
    expect(readme.replace(/\s+/g, " ")).toContain(`\`${question}\``);
    expect(say(question)[0]).toMatch(/\d/);
  });

  test("has something to show", () => {
    expect(exchanges.length).toBeGreaterThan(4);
    expect(notesInProse.length).toBeGreaterThan(10);
  });
});

test.each([...exchanges.map(({ note }) => note), ...notesInProse])("%s is understood", (note) => {
  if (TO_THE_BOT.includes(note) || QUESTIONS.includes(note)) return;
  const kinds = readMessage(note, "2026-11-25").map(({ kind }) => kind);
  expect(kinds).not.toEqual([]);
  expect(kinds).not.toContain("unclear");
});

test("every script that is named is there, and every script is named", () => {
  const both = `${readme}\n${developers}`;
  const named = [...both.matchAll(/\bnpm (?:run (?:-s )?)?(?!run\b)([a-z]+)/g)].map(([, name]) => name!);
  // In the table of commands a cell may go on with bare names.
  const cells = developers.match(/^\| `npm run [^|]*/gm) ?? [];
  const bare = cells.flatMap((cell) => quotedIn(cell).filter((words) => /^[a-z]+$/.test(words)));
  const scripts = new Set([...named, ...bare]);
  scripts.delete("ci");
  expect([...scripts].sort()).toEqual(Object.keys(manifest.scripts).sort());
});

test("every file that is named for contributors is there", () => {
  const paths = quotedIn(developers).filter((words) => /^(?:\.ci|bot|core|db|tests)\/[\w./-]*$/.test(words));
  // In the table of rooms a bare name is a file of the row's room.
  const rows = [...developers.matchAll(/^\| `([^`]+\/)` \| (.*)$/gm)];
  const ofRooms = rows.flatMap(([, room, words]) =>
    quotedIn(words!).flatMap((name) => (/\.ts$|\/$/.test(name) ? [`${room}${name}`] : [])),
  );
  expect(ofRooms.length).toBeGreaterThan(5);
  expect([...paths, ...ofRooms].filter((path) => !existsSync(join(TOP, path)))).toEqual([]);
});

test("every dependency has its reason", () => {
  const table = developers.slice(developers.indexOf("## Dependencies"));
  const reasons = [...table.matchAll(/^\| ([^|]+) \|/gm)].flatMap(([, names]) => names!.split(", "));
  const used = Object.keys({ ...manifest.dependencies, ...manifest.devDependencies });
  const named = reasons.filter((name) => name !== "package" && !name.startsWith("---"));
  expect(named.sort()).toEqual(used.filter((name) => !name.startsWith("@types/")).sort());
});
