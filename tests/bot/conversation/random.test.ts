import fc from "fast-check";
import { expect, test } from "vitest";
import { examine } from "../../../db/doctor.ts";
import { type Chat, openChat, type Said } from "./chat.ts";

/** More with RUNS=1000; the seed is fixed so that a failure is the same everywhere, other ones with SEED=… */
const numRuns = Number(process.env["RUNS"] ?? 30);
const seed = Number(process.env["SEED"] ?? 20260509);

const piece = fc.constantFrom(
  ...[
    "dresser",
    "tall dresser",
    "white dresser",
    "desk",
    "lamp",
    "3 chairs",
    "chairs",
    "dining set",
    "#1",
    "#2",
    "#5",
  ],
);
const amount = fc.constantFrom("5", "12.50", "30", "40", "90", "190", "1900", "0", "15 each", "");
const day = fc.constantFrom("", "", "", "yesterday", "5/3", "on 4/28", "feb 3");
const clause = fc.oneof(
  fc.tuple(
    fc.constantFrom("bought", "sold", "listed", "deposit", "paint for", "refunded"),
    piece,
    amount,
    day,
  ),
  fc.tuple(
    fc.constantFrom("finished", "started", "keeping", "trashed", "hold", "no show on", "2h sanding", "show"),
    piece,
    fc.constant(""),
    day,
  ),
  fc.tuple(fc.constantFrom("dropped", "lowered"), piece, fc.constantFrom("to 80", "by 20", "20"), day),
  fc.tuple(fc.constantFrom("paid loan", "loan balance", "tips", "gas"), fc.constant(""), amount, day),
);
const words = clause.map((parts) => parts.filter((part) => part !== "").join(" "));
const fixedNote = fc.constantFrom(
  ...[
    "new loan 12000",
    "loan 900 at 5.5%",
    "new loan grad 4100 6.8%",
    "split payments over all loans",
    "month",
  ],
  ...[
    "buyer backed out of dresser, refunded 10",
    "dresser came back gave back 90",
    "drove 24 miles for the desk",
  ],
  ...[
    "bought dining set 5 pieces 100",
    "finished dresser and listed it 165",
    "set aside 20% for tax",
    "asdkjh",
  ],
  ...[
    "sold dresser 150 to neighbor fee 6.60",
    "deposit 45 on dresser from bob",
    "dresser 30",
    "45",
    "loan?",
    "",
  ],
);
const note = fc.oneof(
  { weight: 6, arbitrary: words },
  { weight: 2, arbitrary: fixedNote },
  { weight: 1, arbitrary: fc.array(words, { minLength: 2, maxLength: 9 }).map((lines) => lines.join("\n")) },
  { weight: 1, arbitrary: fc.tuple(words, words).map(([a, b]) => `${a}, ${b}`) },
);
const answer = fc.constantFrom(
  ...[
    "35",
    "#1",
    "2",
    "the tall one",
    "yes",
    "no",
    "never mind",
    "5.5",
    "free",
    "2h",
    "sold it for 70",
    "dresser",
  ],
  ...["undo", "make that 35", "no 20", "kept it", "all", "another", "both", "yesterday"],
);
const turn = fc.oneof(
  { weight: 6, arbitrary: fc.record({ do: fc.constant("say" as const), text: note, person: fc.nat(4) }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant("say" as const), text: answer, person: fc.nat(4) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant("reply" as const), text: answer, to: fc.nat() }) },
  { weight: 3, arbitrary: fc.record({ do: fc.constant("edit" as const), text: note, of: fc.nat() }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant("tap" as const), of: fc.nat(), old: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("wait" as const), days: fc.nat(40) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("restart" as const) }) },
);
type Turn = typeof turn extends fc.Arbitrary<infer T> ? T : never;

/** A chat of two people that remembers what was sent and what may be pressed. */
interface Table {
  chat: Chat;
  second: number;
  sent: { message: string; person: number | undefined; reply: string }[];
  buttons: { message: string; press: string; person: number | undefined }[];
  now: number;
}

function openTable(): Table {
  const chat = openChat();
  const second = chat.ledger.transaction(() =>
    chat.ledger.members.add({ user: "2002", name: "Wren", role: "member", joined: 0 }),
  );
  return { chat, second, sent: [], buttons: [], now: Date.parse("2026-05-09T15:00:00Z") };
}

/** Takes a turn; null where it has nothing to act on or is not answered by its nature. */
function take(table: Table, what: Turn): Said | null {
  const { chat, sent, buttons } = table;
  switch (what.do) {
    case "say": {
      const person = what.person === 0 ? table.second : undefined;
      const message = `m${sent.length}`;
      const said = chat.say(what.text, { message, ...(person === undefined ? {} : { person }) });
      return remember(table, said, message, person);
    }
    case "reply": {
      const to = sent[what.to % Math.max(1, sent.length)];
      if (!to) return null;
      const message = `m${sent.length}`;
      return remember(
        table,
        chat.say(what.text, { message, replyTo: to.reply || to.message }),
        message,
        undefined,
      );
    }
    case "edit": {
      const old = sent[what.of % Math.max(1, sent.length)];
      if (!old) return null;
      const person = old.person === undefined ? {} : { person: old.person };
      const said = chat.say(what.text, { message: old.message, edited: true, ...person });
      for (const { press } of said.buttons)
        buttons.push({ message: said.message, press, person: old.person });
      // The same text once more changes nothing and is not answered.
      return said.text === "" ? null : said;
    }
    case "tap": {
      const recent = what.old === 0 ? buttons : buttons.slice(-4);
      const button = recent[what.of % Math.max(1, recent.length)];
      if (!button) return null;
      const { message, press, person } = button;
      return chat.tap({ message, press, ...(person === undefined ? {} : { person }) });
    }
    case "wait":
      table.now += what.days * 86_400_000;
      chat.at(new Date(table.now).toISOString());
      return null;
    case "restart":
      chat.restart();
      return null;
  }
}

function remember(table: Table, said: Said, message: string, person: number | undefined): Said {
  table.sent.push({ message, person, reply: said.message });
  for (const { press } of said.buttons) table.buttons.push({ message: said.message, press, person });
  return said;
}

/** Facts stand or fall only with a reply that says so, and a reply that says so has its facts. */
function check(table: Table, said: Said, before: ReadonlySet<number>, numbers: Map<number, number>): void {
  const { ledger } = table.chat;
  expect(said.text).not.toBe("");
  expect(said.text).not.toContain("went wrong on my side");
  const facts = ledger.books.facts;
  const added = facts.filter((fact) => !before.has(fact.id));
  const undo = said.buttons.find(({ press, label }) => label === "Undo" && press.startsWith("u:"));
  expect({ text: said.text, undo: undo !== undefined }).toEqual({ text: said.text, undo: added.length > 0 });
  if (undo) expect(ledger.standingFactsOf(Number(undo.press.slice(2))).length).toBeGreaterThan(0);
  const gone = [...before].filter((id) => !facts.some((fact) => fact.id === id)).length;
  if (gone > 0) expect(said.text).toMatch(/Taken back|Before:/);
  for (const fact of added) {
    if (fact.kind !== "buy") continue;
    for (const number of fact.pieces) {
      // A number belongs to one place in the history for ever.
      expect(numbers.get(number) ?? fact.root).toBe(fact.root);
      numbers.set(number, fact.root);
    }
  }
}

function play(turns: readonly Turn[]): void {
  const table = openTable();
  const numbers = new Map<number, number>();
  try {
    for (const what of turns) {
      const before = new Set(table.chat.ledger.books.facts.map((fact) => fact.id));
      const said = take(table, what);
      if (said) check(table, said, before, numbers);
    }
    expect(examine(table.chat.directory)?.findings).toEqual([]);
    const statement = table.chat.statement();
    table.chat.restart();
    expect(table.chat.statement()).toEqual(statement);
  } finally {
    table.chat.end();
  }
}

test("whatever is said, pressed, edited and taken back, replies and books agree", () => {
  const turns = fc.array(turn, { minLength: 5, maxLength: 40, size: "max" });
  fc.assert(fc.property(turns, play), { numRuns, seed });
}, 600_000);
