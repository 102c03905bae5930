import { randomBytes } from "node:crypto";
import { asc, eq, isNull, sql } from "drizzle-orm";
import * as z from "zod";
import type { Instant } from "../core/calendar.ts";
import type { Ask, Matter } from "../core/decide/decision.ts";
import type { Connection } from "./connection.ts";
import { createMemory } from "./memory.ts";
import { questions } from "./schema.ts";
import { onceAsked, rowWriter } from "./statements.ts";

// The program alone writes these; the shapes catch a row that another version or another hand wrote.
const reading = z.looseObject({ kind: z.string(), text: z.string(), line: z.number() });
const matterShape = z.looseObject({
  reading,
  confirmed: z.array(z.string()),
  waiting: z.array(reading),
});
const askShape = z.looseObject({
  prompt: z.string(),
  wants: z.string(),
  choices: z.array(z.looseObject({ label: z.string(), effect: z.looseObject({ kind: z.string() }) })),
});

export interface Question {
  id: number;
  /** Member id. */
  person: number;
  chat: string;
  note: number;
  matter: Matter;
  ask: Ask;
  asked: Instant;
  closed: Instant | null;
  /** The outbox row that asked it. */
  prompt: number | null;
  /** Eight characters that name it in the data of its buttons. */
  token: string;
}

type NewQuestion = Pick<Question, "person" | "chat" | "note" | "matter" | "ask" | "asked">;

export interface Questions {
  open(question: NewQuestion): { id: number; token: string };
  /** Keeps what has become of the matter; it is asked as before. */
  setMatter(id: number, matter: Matter): void;
  /** Notes which message asked it. */
  setPrompt(id: number, outboxRow: number): void;
  /** Oldest first. */
  allOpen(person: number): Question[];
  /** Every person's, oldest first. */
  everyOpen(): Question[];
  /** Open or closed: a button may be pressed late. */
  byToken(token: string): Question | null;
  close(id: number, now: Instant): void;
}

/** The questions of a ledger that wait for an answer, and those that did. */
export function openQuestions(connection: Connection, isKept = false): Questions & { forget(): void } {
  const { db, sqlite } = connection;
  const write = rowWriter(connection, questions);
  const unclosed = db
    .select()
    .from(questions)
    .where(isNull(questions.closed))
    .orderBy(asc(questions.id))
    .prepare();
  const ofToken = onceAsked(() =>
    db
      .select()
      .from(questions)
      .where(eq(questions.token, sql.placeholder("token")))
      .prepare(),
  );
  const open = createMemory((_all: "all") => unclosed.all(), isKept);
  const changing = (column: "matter" | "prompt" | "closed") => {
    const update = onceAsked(() => sqlite.prepare(`update questions set ${column} = ? where id = ?`));
    return (id: number, value: string | number): void => {
      open.forget();
      update().run(value, id);
    };
  };
  const changeMatter = changing("matter");
  return {
    forget: open.forget,
    open({ matter, ask, ...rest }) {
      open.forget();
      const token = randomBytes(6).toString("base64url");
      const stored = { ...rest, ...encoded(matter, ask), token };
      return { id: write.run({ id: null, closed: null, prompt: null, ...stored })!, token };
    },
    setMatter: (id, matter) => changeMatter(id, matterText(matter)),
    setPrompt: changing("prompt"),
    // Read out of the text each time: whoever has asked may change what they got.
    allOpen: (person) => open.get("all").flatMap((row) => (row.person === person ? [decoded(row)] : [])),
    everyOpen: () => open.get("all").map(decoded),
    byToken(token) {
      const row = ofToken().get({ token });
      return row ? decoded(row) : null;
    },
    close: changing("closed"),
  };
}

const matterText = (matter: Matter): string => JSON.stringify(matterShape.parse(matter));

function encoded(matter: Matter, ask: Ask): { matter: string; ask: string } {
  return {
    matter: matterText(matter),
    ask: JSON.stringify(askShape.parse(ask)),
  };
}

function decoded(row: typeof questions.$inferSelect): Question {
  const matter = matterShape.parse(JSON.parse(row.matter)) as unknown as Matter;
  const ask = askShape.parse(JSON.parse(row.ask)) as unknown as Ask;
  return { ...row, matter, ask };
}
