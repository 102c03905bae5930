import { type Cell, filled } from "./cells.ts";
import { factOf, KINDS, type Kind, SHOP, TODAY } from "./kinds.ts";

/* Each kind of note told plainly in thirty ways, beside each other kind, and with what people add to it. */

function cell(kind: string, grid: string, line: string, facts: Record<string, unknown>[]): Cell {
  return {
    id: `${grid} | ${line}`,
    class: `${kind} ${grid}`,
    on: TODAY,
    before: [...SHOP],
    line,
    facts,
    ask: false,
  };
}

/** Each kind in each of its ways. */
export function plainly(): Cell[] {
  return KINDS.flatMap((kind) =>
    [kind.note, kind.also, ...kind.plain].map((line) => cell(kind.kind, "plainly", line, [factOf(kind)])),
  );
}

const JOINTS: readonly string[] = [
  ", ",
  " and ",
  ". ",
  " then ",
  "\n",
  "; ",
  " & ",
  ", and ",
  " and then ",
  ". also ",
];

/** Each kind with each other, at each joint. */
export function joined(): Cell[] {
  return KINDS.flatMap((one) =>
    KINDS.filter((other) => other !== one).flatMap((other) =>
      JOINTS.flatMap((joint) =>
        [
          [one.note, other.note],
          [one.also, other.also],
        ].map(([first, second]) =>
          cell(`${one.kind} ${other.kind}`, "joined", `${first}${joint}${second}`, [
            factOf(one),
            factOf(other),
          ]),
        ),
      ),
    ),
  );
}

/** What people add, and what it says of the note. */
interface Added {
  said: string;
  wants?: Record<string, unknown>;
  where?: "front" | "behind";
  of?: (kind: Kind) => boolean;
}

const isDeal = ({ kind }: Kind): boolean => ["sell", "buy", "spend", "hold"].includes(kind);
const isDeed = ({ kind }: Kind): boolean => !["statement", "income"].includes(kind);

const ADDED: readonly Added[] = [
  { said: "today" },
  { said: "yesterday", wants: { day: "2026-05-08" } },
  { said: "last night", wants: { day: "2026-05-08" } },
  { said: "yesterday morning", wants: { day: "2026-05-08" } },
  { said: "this morning" },
  { said: "earlier today" },
  { said: "on monday", wants: { day: "2026-05-04" } },
  { said: "last thursday", wants: { day: "2026-05-07" } },
  { said: "friday", wants: { day: "2026-05-08" } },
  { said: "3 days ago", wants: { day: "2026-05-06" } },
  { said: "two days ago", wants: { day: "2026-05-07" } },
  { said: "a week ago", wants: { day: "2026-05-02" } },
  { said: "the day before yesterday", wants: { day: "2026-05-07" } },
  { said: "on the 3rd", wants: { day: "2026-05-03" } },
  { said: "the 3rd", wants: { day: "2026-05-03" } },
  { said: "5/3", wants: { day: "2026-05-03" } },
  { said: "on may 3", wants: { day: "2026-05-03" } },
  { said: "may 3rd", wants: { day: "2026-05-03" } },
  { said: "cash", wants: { method: "cash" }, where: "behind", of: ({ paid }) => paid === true },
  { said: "in cash", wants: { method: "cash" }, where: "behind", of: ({ paid }) => paid === true },
  { said: "paid cash", wants: { method: "cash" }, where: "behind", of: isDeal },
  { said: "by check", wants: { method: "check" }, where: "behind", of: ({ paid }) => paid === true },
  { said: "at the flea market", of: isDeal },
  { said: "at home", where: "behind", of: isDeed },
  { said: "in the garage", where: "behind", of: ({ kind }) => ["work", "finish", "start"].includes(kind) },
  { said: "at a yard sale", where: "behind", of: ({ kind }) => ["sell", "buy"].includes(kind) },
  { said: "with my wife", where: "behind", of: isDeed },
  { said: "with mom", where: "behind", of: isDeed },
  { said: "for my sister", where: "behind", of: ({ kind }) => ["drive"].includes(kind) },
  {
    said: "because i needed the space",
    of: ({ kind }) => ["sell", "list", "reprice", "retire"].includes(kind),
  },
  {
    said: "because we had time",
    of: ({ kind }) => ["work", "finish", "start", "drive", "list"].includes(kind),
  },
  { said: "since it was raining", of: isDeed },
  { said: "so that's good", where: "behind" },
  { said: "so happy", where: "behind" },
  { said: "yay" },
  { said: "finally" },
  { said: "ok so", where: "front" },
  { said: "hey,", where: "front" },
  { said: "fyi" },
  { said: "by the way" },
  { said: "good news,", where: "front" },
  { said: "phew,", where: "front" },
  { said: "that's it for today", where: "behind" },
  { said: "what a day", where: "behind" },
  { said: "after lunch" },
  { said: "before work" },
  { said: "while the kids were at school", of: isDeed },
  { said: "thank god" },
  { said: "!!", where: "behind" },
  { said: "lol", where: "behind" },
];

/** Each kind with each of what is added, in front and behind. */
export function added(): Cell[] {
  return KINDS.flatMap((kind) =>
    ADDED.filter(({ of }) => of?.(kind) ?? true).flatMap(({ said, wants, where }) => {
      const facts = [factOf(kind, wants)];
      const lines = [kind.note, kind.also].flatMap((note) => [
        ...(where === "front" ? [] : [`${note} ${said}`, `${note}, ${said}`]),
        ...(where === "behind" ? [] : [`${said} ${note}`]),
      ]);
      return lines.map((line) => cell(kind.kind, `added ${said}`, line, facts));
    }),
  );
}

/** Ways to put a number right: {n} is the new one, {o} the old one. */
const NUMBERS: readonly string[] = [
  "actually {n}",
  "it was {n}",
  "that was {n}",
  "no, {n}",
  "oops {n}",
  "i meant {n}",
  "should be {n}",
  "sorry, {n}",
  "make that {n}",
  "make it {n}",
  "wait {n}",
  "correction {n}",
  "not {o}, {n}",
  "{n} not {o}",
  "should have been {n}",
  "typo, {n}",
  "my bad, {n}",
  "change that to {n}",
  "change it to {n}",
  "fix that to {n}",
  "that should say {n}",
  "wrong, it was {n}",
  "{n} actually",
  "actually it was {n}",
  "was {n} not {o}",
  "*{n}",
  "hm no it was {n}",
  "i said {o} but it was {n}",
  "scratch that, {n}",
  "nope {n}",
  "that's wrong, {n}",
  "looked again, {n}",
  "turns out it was {n}",
  "it came to {n}",
  "ended up being {n}",
  "no wait {n}",
  "sorry meant {n}",
  "{n}, not {o}",
  "that's {n} not {o}",
  "it was actually {n}",
];
const OTHER_PIECES: readonly string[] = [
  "that was the {p}",
  "it was the {p}",
  "i meant the {p}",
  "sorry, the {p}",
  "no, the {p}",
  "oops, the {p}",
  "wrong piece, it was the {p}",
  "not the {o}, the {p}",
  "the {p}, not the {o}",
  "the {p} not the {o}",
  "should be the {p}",
  "that should be the {p}",
  "make that the {p}",
  "actually the {p}",
  "actually it was the {p}",
  "wait, the {p}",
  "my bad, the {p}",
  "i said {o} but meant {p}",
  "meant {p}",
  "correction: {p}",
];
const OTHER_DAYS: readonly string[] = [
  "that was yesterday",
  "it was yesterday",
  "yesterday actually",
  "actually yesterday",
  "actually that was yesterday",
  "sorry, yesterday",
  "i meant yesterday",
  "make that yesterday",
  "should be yesterday",
  "no, yesterday",
  "oops, that was yesterday",
  "change it to yesterday",
  "not today, yesterday",
  "yesterday, not today",
  "wrong day, it was yesterday",
  "that happened yesterday",
  "date should be yesterday",
  "that was from yesterday",
];
const REMOVALS: readonly string[] = [
  "delete that",
  "undo that",
  "take that out",
  "that didn't happen",
  "scratch that",
  "remove the last one",
  "cancel that",
  "remove that",
  "undo",
  "delete it",
  "delete the last one",
  "undo the last one",
  "take that back",
  "erase that",
  "ignore that",
  "oops delete that",
  "no wait, undo",
  "sorry, delete that",
  "please remove that",
  "get rid of that",
  "nevermind, delete that",
  "that was a mistake",
];
const METHODS: readonly string[] = [
  "cash btw",
  "that was cash",
  "it was cash",
  "paid cash",
  "in cash",
  "cash",
  "she paid cash",
  "that was in cash",
  "btw cash",
  "it was in cash",
  "cash, not check",
];
const BUYERS: readonly string[] = [
  "that was to rosa",
  "to rosa",
  "buyer was rosa",
  "the buyer was rosa",
  "rosa bought it",
  "sold it to rosa",
  "it went to rosa",
];

/** Each kind, then each way to put it right. */
export function corrected(): Cell[] {
  return KINDS.flatMap((kind) => [...righted(kind)]);
}

function* righted(kind: Kind): Generator<Cell> {
  const { number, other } = kind;
  const mended = (grid: string, line: string, more: Record<string, unknown>): Cell => {
    const facts = [{ mend: true as const, facts: [factOf(kind, more)] }];
    return {
      ...cell(kind.kind, `corrected ${grid}`, line, []),
      before: [...SHOP, kind.note],
      facts,
      id: `${kind.note} | ${line}`,
    };
  };
  if (number)
    for (const way of NUMBERS)
      yield mended("number", filled(way, { n: number.now, o: number.was }), number.wants);
  const piece = /the (\w+)/.exec(kind.note)?.[1];
  if (other && piece)
    for (const way of OTHER_PIECES)
      yield mended("piece", filled(way, { p: other.name, o: piece }), { pieces: [other.piece] });
  for (const line of OTHER_DAYS) yield mended("day", line, { day: "2026-05-08" });
  if (kind.paid) for (const line of METHODS) yield mended("method", line, { method: "cash" });
  if (kind.kind === "sell") for (const line of BUYERS) yield mended("buyer", line, { buyer: "rosa" });
  for (const line of REMOVALS)
    yield {
      ...mended("removal", line, {}),
      facts: [{ removed: true, was: [{ kind: kind.kind }] }],
    };
}
