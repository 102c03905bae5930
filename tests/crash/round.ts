import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { addDays, dayOfInstant } from "../../core/calendar.ts";
import { examine } from "../../db/doctor.ts";
import { openLedger, openReader } from "../../db/open.ts";
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

/** No call for this long: the bot has nothing left to do. The chat library waits three seconds after a failed poll. */
const QUIET_MS = 3500;
/** A look of the schedule that finds the network down leaves its work to one of the next, each 20 seconds later. */
const SETTLED_MS = 90_000;

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
  let bot: BotProcess | undefined;
  let deaths = 0;
  try {
    const due = setUpStanding(directory);
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
      await endOf(bot, standin, sayNext);
      if (bot.exit?.signal === "SIGKILL") deaths++;
      else await bot.kill();
      // A crash loses the confirmation of what was handled last, so it is delivered again.
      standin.redeliver();
    }
    bot = startBot(standin, directory);
    while (messages.length < SCRIPT.length) sayNext();
    await settled(standin, directory, messages, due);
    const { code } = await bot.stop();
    const atExit = code === 0 ? [] : [`exit code ${code}: ${bot.output}`];
    return {
      deaths,
      problems: [...atExit, ...problemsOf(directory, standin, messages), ...standingProblems(directory, due)],
    };
  } catch (error) {
    return { deaths, problems: [`${error instanceof Error ? error.message : error}\n${bot?.output ?? ""}`] };
  } finally {
    if (bot && !bot.exit) await bot.kill();
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

/** Every standing fact that a standing note recorded, as its kind and day. */
function standingDays(directory: string): string[] {
  const rows = readRows(
    directory,
    "select kind, day from facts where repeat is not null and id not in (select fact from voids)",
  );
  return rows.map(({ kind, day }) => `${String(kind)} ${String(day)}`).sort();
}

function standingProblems(directory: string, due: readonly string[]): string[] {
  const got = standingDays(directory);
  return JSON.stringify(got) === JSON.stringify(due) ? [] : [`recorded by itself: ${got.join(", ")}`];
}

/** Feeds messages until the process has died at its step, or has lived through all there was to do. */
async function endOf(bot: BotProcess, standin: Standin, sayNext: () => void): Promise<void> {
  const deadline = Date.now() + 30_000;
  let calls = standin.calls.length;
  let quietSince = Number.POSITIVE_INFINITY;
  while (!bot.exit && Date.now() < deadline && Date.now() - quietSince < QUIET_MS) {
    if (standin.calls.length !== calls) quietSince = Date.now();
    calls = standin.calls.length;
    const isPolling = standin.calls.at(-1)?.method === "getUpdates";
    if (isPolling && standin.waiting === 0) sayNext();
    await new Promise((resolve) => setTimeout(resolve, 15));
  }
}

/** Until every message is confirmed, every reply sent, and nothing more comes. */
async function settled(
  standin: Standin,
  directory: string,
  messages: readonly number[],
  due: readonly string[],
): Promise<void> {
  const isDone = () => {
    if (standin.waiting > 0) return undefined;
    const rows = readRows(directory, "select note, sent, gave_up from outbox");
    const notes = readRows(directory, "select id from notes where message not glob '*:*'");
    if (standingDays(directory).length < due.length) return undefined;
    const isSent = rows.every(({ sent, gave_up }) => sent !== null || gave_up !== null);
    return (isSent && notes.length >= messages.length) || undefined;
  };
  await standin.waitFor(
    isDone,
    SETTLED_MS,
    () =>
      `quiet; ${standin.waiting} updates and ${JSON.stringify(readRows(directory, "select * from outbox where sent is null"))} wait`,
  );
}

function problemsOf(directory: string, standin: Standin, messages: readonly number[]): string[] {
  const problems = (examine(directory)?.findings ?? [{ check: "file", detail: "no ledger" }]).map(
    ({ check, detail }) => `${check}: ${detail}`,
  );
  const notes = readRows(directory, "select id, message, state, text from notes order by id");
  const facts = readRows(
    directory,
    "select kind, amount, note from facts where id not in (select fact from voids)",
  );
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
    const replies = readRows(
      directory,
      `select told.message from outbox own join outbox told
         on told.id = own.id or own.gave_up = 'told in row ' || told.id
         where own.note = ${Number(note?.["id"])} and told.sent is not null`,
    );
    const isAnswered = replies.some(({ message: id }) =>
      standin.sent().some((sent) => String(sent.message) === id),
    );
    if (!isAnswered) problems.push(`"${line.text}" was never answered`);
  });
  const known = new Set(
    readRows(directory, "select message from outbox").map(({ message }) => String(message)),
  );
  const texts = new Set(
    readRows(directory, "select body from outbox").flatMap(({ body }) => textsIn(String(body))),
  );
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

function readRows(directory: string, query: string): Record<string, unknown>[] {
  const opened = openReader(directory);
  if (opened.kind !== "open") return [];
  try {
    return opened.reader.connection.sqlite.prepare(query).all() as Record<string, unknown>[];
  } finally {
    opened.reader.close();
  }
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
