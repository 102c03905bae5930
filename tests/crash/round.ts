import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import Database from "better-sqlite3";
import { addDays, dayOfInstant } from "../../core/calendar.ts";
import { examine } from "../../db/doctor.ts";
import { ledgerPath, openLedger } from "../../db/open.ts";
import { OWNER, type Standin, startStandin } from "../standin/standin.ts";
import { type BotProcess, startBot } from "./bot-process.ts";
import type { Random } from "./random.ts";

/** What a person sends in one round, and the facts that must stand at the end, each once. */
export const SCRIPT = [
  { text: "bought dresser 30", fact: { kind: "buy", amount: 3000 } },
  { text: "paint 12.50 for dresser", fact: { kind: "spend", amount: 1250 } },
  { text: "finished dresser", fact: { kind: "finish", amount: null } },
  { text: "listed dresser 190", fact: { kind: "list", amount: 19000 } },
  { text: "sold dresser 190 cash", fact: { kind: "sell", amount: 19000 } },
  { text: "ads 240", fact: { kind: "income", amount: 24000 } },
  { text: "month", fact: null },
] as const;

/** Idle for so long without a call: the bot has nothing left to do, and its step does not come. */
const IDLE_MS = 500;
/** Only a bot that hangs needs it: no load of the machine may make a round fail. */
const HANGING_MS = 600_000;
const LOOK_MS = 25;

export interface RoundPlan {
  /** Steps at which the process dies, one start after another; the start after the last one lives. */
  crashes: { step: number; from: "start" | "updates" }[];
  /** What else goes wrong. */
  trouble(standin: Standin): void;
  /** Whether the messages are there before the bot starts, or come one after another while it runs. */
  backlog: boolean;
}

/** Plays one round. Gives how often the process died, and everything that was wrong afterwards. */
export async function playRound(plan: RoundPlan): Promise<{ deaths: number; problems: string[] }> {
  const directory = mkdtempSync(join(tmpdir(), "tailgate-crash-"));
  const standin = await startStandin();
  let ledger: Looking | undefined;
  let bot: BotProcess | undefined;
  let deaths = 0;
  try {
    const due = setUpStanding(directory);
    ledger = look(directory, due);
    const messages: number[] = [];
    const sayNext = () => {
      const line = SCRIPT[messages.length];
      if (line) messages.push(standin.say(line.text));
    };
    if (plan.backlog) for (const _ of SCRIPT) sayNext();
    plan.trouble(standin);
    for (const { step, from } of plan.crashes) {
      sayNext();
      bot = startBot(standin, directory, { CRASH_STEP: String(step), CRASH_FROM: from });
      await endOf(bot, standin, { ledger, sayNext });
      if (bot.exit?.signal === "SIGKILL") deaths++;
      else await bot.kill();
      // A crash loses the confirmation of what was handled last, so it is delivered again.
      standin.redeliver();
    }
    bot = startBot(standin, directory);
    while (messages.length < SCRIPT.length) sayNext();
    await settled(bot, standin, { ledger, messages });
    const { code } = await bot.stop();
    const atExit = code === 0 ? [] : [`exit code ${code}: ${bot.output}`];
    return {
      deaths,
      problems: [
        ...atExit,
        ...problemsOf(directory, ledger, standin, messages),
        ...ledger.standingProblems(),
      ],
    };
  } catch (error) {
    return { deaths, problems: [`${error instanceof Error ? error.message : error}\n${bot?.output ?? ""}`] };
  } finally {
    if (bot && !bot.exit) await bot.kill();
    ledger?.close();
    await standin.close();
    rmSync(directory, { recursive: true, force: true });
  }
}

/** Days of standing notes that are due when the bot starts: two weekly ones, each with three days behind. */
function setUpStanding(directory: string): string[] {
  const now = Date.now();
  const opened = openLedger({ directory, now });
  if (opened.kind !== "open") throw new Error(`ledger ${opened.kind}`);
  const { ledger } = opened;
  const today = dayOfInstant(now, "America/Chicago");
  const first = addDays(today, -14);
  const what = { kind: "spend", what: "booth rent", category: "fees" } as const;
  const income = { kind: "income", stream: "ads" } as const;
  ledger.transaction(() => {
    const owner = ledger.members.add({ user: String(OWNER.id), name: "Robin", role: "owner", joined: now });
    const note = ledger.addNote({
      chat: String(OWNER.id),
      message: "set:up",
      text: "",
      author: owner,
      said: now,
      handled: now,
    });
    const facts = [what, income].map((of) => ({
      kind: "repeat" as const,
      day: first,
      pieces: [],
      amount: 4_500,
      data: { every: "week" as const, first, note: of },
    }));
    ledger.record({ note, author: owner, facts });
  });
  ledger.close();
  return [what, income]
    .flatMap(({ kind }) => [0, 7, 14].map((days) => `${kind} ${addDays(first, days)}`))
    .sort();
}

/** A look into the ledger beside the bot, opened once for the round: to open it anew each time costs more than the bot. */
interface Looking {
  rows(query: string): Record<string, unknown>[];
  /** All replies are out, and all that was due by itself is recorded. */
  isDone(): boolean;
  standingProblems(): string[];
  close(): void;
}

function look(directory: string, due: readonly string[]): Looking {
  const sqlite = new Database(ledgerPath(directory), { readonly: true });
  const rows = (query: string) => sqlite.prepare(query).all() as Record<string, unknown>[];
  /** Every standing fact that a standing note recorded, as its kind and day. */
  const standingDays = () =>
    rows("select kind, day from facts where repeat is not null and id not in (select fact from voids)")
      .map(({ kind, day }) => `${String(kind)} ${String(day)}`)
      .sort();
  return {
    rows,
    isDone: () =>
      rows("select id from outbox where sent is null and gave_up is null").length === 0 &&
      standingDays().length >= due.length,
    standingProblems() {
      const got = standingDays();
      return JSON.stringify(got) === JSON.stringify(due) ? [] : [`recorded by itself: ${got.join(", ")}`];
    },
    close: () => sqlite.close(),
  };
}

/** Feeds messages until the process has died at its step, or has lived through all there was to do. */
async function endOf(
  bot: BotProcess,
  standin: Standin,
  { ledger, sayNext }: { ledger: Looking; sayNext: () => void },
): Promise<void> {
  const deadline = Date.now() + HANGING_MS;
  const before = standin.calls.length;
  let calls = before;
  let idleSince = Date.now();
  while (!bot.exit && Date.now() < deadline) {
    const isPolling = standin.calls.length > before && standin.calls.at(-1)?.method === "getUpdates";
    const isNew = standin.calls.length !== calls;
    calls = standin.calls.length;
    if (isPolling && standin.waiting === 0) sayNext();
    if (isNew || !isPolling || !standin.isPolled || standin.waiting > 0 || !ledger.isDone())
      idleSince = Date.now();
    else if (Date.now() - idleSince >= IDLE_MS) return;
    await pause(LOOK_MS);
  }
}

/** Until every message is confirmed, every reply sent, and nothing more comes. */
async function settled(
  bot: BotProcess,
  standin: Standin,
  { ledger, messages }: { ledger: Looking; messages: readonly number[] },
): Promise<void> {
  const deadline = Date.now() + HANGING_MS;
  const isDone = () =>
    standin.waiting === 0 &&
    ledger.isDone() &&
    ledger.rows("select id from notes where message not glob '*:*'").length >= messages.length;
  while (!isDone()) {
    if (bot.exit) throw new Error("it ended by itself");
    if (Date.now() > deadline)
      throw new Error(
        `${standin.waiting} updates and ${JSON.stringify(ledger.rows("select * from outbox where sent is null"))} wait`,
      );
    await pause(LOOK_MS);
  }
}

function pause(milliseconds: number): Promise<void> {
  return new Promise((resolve) => setTimeout(resolve, milliseconds));
}

function problemsOf(
  directory: string,
  { rows }: Looking,
  standin: Standin,
  messages: readonly number[],
): string[] {
  const problems = (examine(directory)?.findings ?? [{ check: "file", detail: "no ledger" }]).map(
    ({ check, detail }) => `${check}: ${detail}`,
  );
  const notes = rows("select id, message, state, text from notes order by id");
  const facts = rows("select kind, amount, note from facts where id not in (select fact from voids)");
  messages.forEach((message, index) => {
    const line = SCRIPT[index]!;
    const own = notes.filter((note) => note["message"] === String(message));
    if (own.length !== 1) problems.push(`"${line.text}" is there ${own.length} times`);
    const note = own[0];
    const made = facts.filter((fact) => fact["note"] === note?.["id"]);
    const expected = line.fact ? [{ kind: line.fact.kind, amount: line.fact.amount }] : [];
    const got = made.map(({ kind, amount }) => ({ kind, amount }));
    if (JSON.stringify(got) !== JSON.stringify(expected)) {
      problems.push(`"${line.text}" made ${JSON.stringify(got)} (${String(note?.["state"])})`);
    }
    // By itself, or told in another row together with others.
    const replies = rows(`select told.message from outbox own join outbox told
         on told.id = own.id or own.gave_up = 'told in row ' || told.id
         where own.note = ${Number(note?.["id"])} and told.sent is not null`);
    const isAnswered = replies.some(({ message: id }) =>
      standin.sent().some((sent) => String(sent.message) === id),
    );
    if (!isAnswered) problems.push(`"${line.text}" was never answered`);
  });
  const known = new Set(rows("select message from outbox").map(({ message }) => String(message)));
  const texts = new Set(rows("select body from outbox").flatMap(({ body }) => textsIn(String(body))));
  for (const { message, text, chat } of standin.sent()) {
    if (chat !== OWNER.id) problems.push(`said to ${chat}: ${text}`);
    // A message whose sending was not marked before the crash has no row of its own, but its words have.
    if (!known.has(String(message)) && !texts.has(text)) problems.push(`said without a row: ${text}`);
  }
  return problems;
}

/** What a row says, and what it said before it was told together with others. */
function textsIn(body: string): string[] {
  const { reply, joined } = JSON.parse(body) as { reply?: { text: string }; joined?: string };
  return [reply?.text, joined].flatMap((text) => text?.trimEnd() ?? []);
}

/** A plan drawn by chance: where the process dies, how often, and what the network does meanwhile. */
export function drawPlan(random: Random): RoundPlan {
  // A start takes about 30 steps, a message 15: the first death comes within the script, later ones may not.
  const crashes = Array.from({ length: 1 + random.below(3) }, (_, index) => {
    const from = random.below(4) === 0 ? ("start" as const) : ("updates" as const);
    return { from, step: 1 + random.below(index === 0 ? 80 : 40) };
  });
  const troubles: ((standin: Standin) => void)[] = [
    () => {},
    (standin) => standin.fail("sendMessage", { kind: "lost" }, 1 + random.below(2)),
    (standin) => standin.fail("sendMessage", { kind: "status", code: 429, retryAfter: 1 }),
    (standin) => standin.fail("sendMessage", { kind: "status", code: 502 }, 2),
    (standin) => standin.fail("getUpdates", { kind: "lost" }),
    (standin) => standin.fail("getUpdates", { kind: "dropped" }),
  ];
  const trouble = troubles[random.below(troubles.length)]!;
  return { crashes, trouble, backlog: random.below(2) === 0 };
}
