import fc from "fast-check";
import { expect, test } from "vitest";
import { examine } from "../../../db/doctor.ts";
import { runsOf, SEED } from "../../runs.ts";
import { type Chat, openChat, type Said } from "./chat.ts";

const numRuns = runsOf({ short: 10, long: 500 });

/** Any one of words parted by bars. */
const pool = (words: string) => fc.constantFrom(...words.split(" | "));
const piece = pool(
  "dresser | tall dresser | white dresser | desk | lamp | 3 chairs | chairs | dining set | #1 | #2 | #5",
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
const fixedNote = fc.oneof(
  pool("new loan 12000 | loan 900 at 5.5% | new loan grad 4100 6.8% | split payments over all loans | month"),
  pool(
    "buyer backed out of dresser, refunded 10 | dresser came back gave back 90 | drove 24 miles for the desk",
  ),
  pool(
    "bought dining set 5 pieces 100 | finished dresser and listed it 165 | set aside 20% for tax | asdkjh",
  ),
  pool(
    "sold dresser 150 to neighbor fee 6.60 | deposit 45 on dresser from bob | dresser 30 | 45 | loan? |  ",
  ),
  pool(
    "paint 12 for bookcase and listed it 90 | finished lamp and sold it 60 | bought desk | bought a hutch",
  ),
);
const note = fc.oneof(
  { weight: 6, arbitrary: words },
  { weight: 2, arbitrary: fixedNote },
  { weight: 1, arbitrary: fc.array(words, { minLength: 2, maxLength: 9 }).map((lines) => lines.join("\n")) },
  { weight: 1, arbitrary: fc.tuple(words, words).map(([a, b]) => `${a}, ${b}`) },
);
const answer = fc.oneof(
  pool("35 | #1 | 2 | the tall one | yes | no | never mind | 5.5 | free | 2h | sold it for 70 | dresser"),
  pool("undo | make that 35 | no 20 | kept it | all | another | both | yesterday"),
);
const turn = fc.oneof(
  { weight: 6, arbitrary: fc.record({ do: fc.constant("say" as const), text: note, person: fc.nat(4) }) },
  { weight: 4, arbitrary: fc.record({ do: fc.constant("say" as const), text: answer, person: fc.nat(4) }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant("reply" as const), text: answer, to: fc.nat() }) },
  { weight: 2, arbitrary: fc.record({ do: fc.constant("edit" as const), text: note, of: fc.nat() }) },
  {
    weight: 3,
    arbitrary: fc.record({ do: fc.constant("correct" as const), amount: fc.nat(300), of: fc.nat() }),
  },
  { weight: 4, arbitrary: fc.record({ do: fc.constant("tap" as const), of: fc.nat(), old: fc.nat(9) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("wait" as const), days: fc.nat(40) }) },
  { weight: 1, arbitrary: fc.record({ do: fc.constant("restart" as const) }) },
);
type Turn = typeof turn extends fc.Arbitrary<infer T> ? T : never;

/** A chat of two people that remembers what was sent and what may be pressed. */
interface Table {
  chat: Chat;
  second: number;
  sent: { message: string; text: string; person: number | undefined; reply: string }[];
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
      return remember(table, said, { message, text: what.text, person });
    }
    case "reply": {
      const to = oneOf(sent, what.to);
      if (!to) return null;
      const message = `m${sent.length}`;
      const said = chat.say(what.text, { message, replyTo: to.reply || to.message });
      return remember(table, said, { message, text: what.text, person: undefined });
    }
    case "edit":
    case "correct": {
      const old = oneOf(sent, what.of);
      if (!old) return null;
      const text = what.do === "edit" ? what.text : old.text.replace(/\d+(?:\.\d+)?/, String(what.amount));
      const person = old.person === undefined ? {} : { person: old.person };
      const said = chat.say(text, { message: old.message, edited: true, ...person });
      old.text = text;
      keepButtons(table, said, old.person);
      // The same text once more changes nothing and is not answered.
      return said.text === "" ? null : said;
    }
    case "tap": {
      const button = oneOf(what.old === 0 ? buttons : buttons.slice(-4), what.of);
      return button ? tap(table, button) : null;
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

function oneOf<T>(list: readonly T[], pick: number): T | undefined {
  return list[pick % Math.max(1, list.length)];
}

/** A choice that was made closes its question, and made again it records nothing more. */
function tap({ chat }: Table, { message, press, person }: Table["buttons"][number]): Said {
  const token = press.startsWith("q:") ? press.split(":")[1]! : null;
  const question = token === null ? null : chat.ledger.questions.byToken(token);
  const before = chat.ledger.books.facts.map(({ id }) => id);
  const said = chat.tap({ message, press, ...(person === undefined ? {} : { person }) });
  if (question && token) {
    expect(chat.ledger.questions.byToken(token)?.closed).not.toBeNull();
    if (question.closed !== null) expect(chat.ledger.books.facts.map(({ id }) => id)).toEqual(before);
  }
  return said;
}

function remember(table: Table, said: Said, of: Omit<Table["sent"][number], "reply">): Said {
  table.sent.push({ ...of, reply: said.message });
  keepButtons(table, said, of.person);
  return said;
}

function keepButtons(table: Table, said: Said, person: number | undefined): void {
  for (const { press } of said.buttons) table.buttons.push({ message: said.message, press, person });
}

/** Facts stand or fall only with a reply that says so, and a reply that says so has its facts. */
function check(table: Table, said: Said, before: ReadonlySet<number>, numbers: Map<number, number>): void {
  const { ledger } = table.chat;
  expect(said.text).not.toBe("");
  expect(said.text).not.toContain("went wrong on my side");
  const facts = ledger.books.facts;
  const added = facts.filter((fact) => !before.has(fact.id));
  // "um:" takes back the change of a fact, "u:" the facts of a note.
  const undo = said.buttons.find(({ press, label }) => label === "Undo" && /^um?:/.test(press));
  // What stands again after a change was taken back is as it was noted: that note's own reply has its Undo.
  const isNew = (added.length > 0 && !/^Stands again/m.test(said.text)) || /^Taken out:/m.test(said.text);
  expect({ text: said.text, undo: undo !== undefined }).toEqual({ text: said.text, undo: isNew });
  if (undo?.press.startsWith("u:"))
    expect(ledger.standingFactsOf(Number(undo.press.slice(2))).length).toBeGreaterThan(0);
  // What an edit leaves as it was is noted anew, and told as it stands.
  const content = (id: number): string => {
    const { kind, day, pieces, amount } = ledger.factById(id)!;
    return JSON.stringify([kind, day, pieces, amount]);
  };
  const anew = added.map(({ id }) => content(id));
  const gone = [...before].filter(
    (id) => !facts.some((fact) => fact.id === id) && !anew.includes(content(id)),
  );
  if (gone.length > 0) expect(said.text).toMatch(/Taken back|Taken out|Before:/);
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
  fc.assert(fc.property(turns, play), { numRuns, seed: SEED });
}, 600_000);
