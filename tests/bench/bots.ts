import { type ChildProcess, spawn, spawnSync } from "node:child_process";
import {
  copyFileSync,
  existsSync,
  mkdtempSync,
  readFileSync,
  rmSync,
  symlinkSync,
  writeFileSync,
} from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startOfBot, TOP } from "../programs.ts";
import { medianOf } from "./notes.ts";
import { type BenchServer, openBenchServer } from "./server.ts";

const TOKEN = "100200300:AAbench_token_of_nobody_0123456789012";
const NOTES = 300;
const WARM_UP_NOTES = 30;
const STARTS = 5;

/** One kind of bot: how it is started by itself, and as a person starts it. */
interface Kind {
  name: "ours" | "bare";
  node: string[];
  npm: { folder: string };
}

/** Figures of one kind of bot. Milliseconds; megabytes at the most, null where the system does not tell. */
interface BotFigures {
  median: number;
  p99: number;
  firstNote: number;
  memory: number | null;
  readyByNpm: number;
}

interface Running {
  server: BenchServer;
  child: ChildProcess;
  directory: string;
  started: number;
}

/** Both kinds of bot beside each other, note by note in turn, so that a busy machine slows down either. */
export async function benchBots(): Promise<{ ours: BotFigures; bare: BotFigures }> {
  const folder = bareFolder();
  const kinds: [Kind, Kind] = [
    { name: "ours", node: startOfBot(), npm: { folder: TOP } },
    { name: "bare", node: [join(folder, "bare-bot.mjs")], npm: { folder } },
  ];
  try {
    const ready = await readyByNpm(kinds);
    const [ours, bare] = await inTurn(kinds);
    return { ours: { ...ours, readyByNpm: ready.ours }, bare: { ...bare, readyByNpm: ready.bare } };
  } finally {
    rmSync(folder, { recursive: true, force: true });
  }
}

/** The bare bot as a package of its own, on this project's packages. */
function bareFolder(): string {
  const folder = mkdtempSync(join(tmpdir(), "tailgate-bare-"));
  copyFileSync(join(TOP, "tests/bench/bare-bot.mjs"), join(folder, "bare-bot.mjs"));
  symlinkSync(join(TOP, "node_modules"), join(folder, "node_modules"));
  writeFileSync(join(folder, "package.json"), JSON.stringify({ scripts: { start: "node bare-bot.mjs" } }));
  return folder;
}

async function start(command: string, args: string[], folder: string): Promise<Running> {
  const server = await openBenchServer();
  const directory = mkdtempSync(join(tmpdir(), "tailgate-bench-"));
  const { PATH, HOME } = process.env;
  const env = {
    ...{ PATH, HOME, BOT_TOKEN: TOKEN, TELEGRAM_API_ROOT: server.root, OWNER_ID: "1001" },
    ...{ DATA_DIR: directory, TIME_ZONE: "America/Chicago", LOG_LEVEL: "error" },
  };
  const started = performance.now();
  // A group of its own, since npm does not always pass a signal on.
  const child = spawn(command, args, {
    cwd: folder,
    env,
    stdio: ["ignore", "ignore", "inherit"],
    detached: true,
  });
  return { server, child, directory, started };
}

async function stop({ server, child, directory }: Running): Promise<void> {
  const exited = new Promise((resolve) => child.once("exit", resolve));
  process.kill(-child.pid!, "SIGKILL");
  await exited;
  await server.close();
  rmSync(directory, { recursive: true, force: true, maxRetries: 5 });
}

async function readyByNpm(kinds: readonly Kind[]): Promise<Record<Kind["name"], number>> {
  const times: Record<Kind["name"], number[]> = { ours: [], bare: [] };
  for (let turn = 0; turn < STARTS; turn += 1) {
    for (const { name, npm } of kinds) {
      const running = await start("npm", ["start", "--silent"], npm.folder);
      times[name].push((await running.server.polled) - running.started);
      await stop(running);
    }
  }
  return { ours: medianOf(times.ours), bare: medianOf(times.bare) };
}

type Talked = Omit<BotFigures, "readyByNpm">;

async function inTurn(kinds: [Kind, Kind]): Promise<[Talked, Talked]> {
  const bots = await Promise.all(kinds.map(({ node }) => start(process.execPath, node, TOP)));
  await Promise.all(bots.map(({ server }) => server.polled));
  // A person does not type in the first moment.
  await new Promise((resolve) => setTimeout(resolve, 1500));
  const times: number[][] = bots.map(() => []);
  for (let note = 0; note < WARM_UP_NOTES + NOTES; note += 1) {
    for (const [index, { server }] of bots.entries()) times[index]!.push(await server.say(textOf(note)));
  }
  const figures = bots.map(({ child }, index): Talked => {
    const warm = times[index]!.slice(WARM_UP_NOTES);
    const sorted = [...warm].sort((a, b) => a - b);
    return {
      median: medianOf(warm),
      p99: sorted[Math.floor(sorted.length * 0.99)]!,
      firstNote: times[index]![0]!,
      memory: peakMegabytes(child.pid!),
    };
  });
  for (const bot of bots) await stop(bot);
  return figures as [Talked, Talked];
}

/** Different words each time: the same ones would be asked about. */
function textOf(note: number): string {
  return `bought lamp ${note + 1} yard sale`;
}

function peakMegabytes(pid: number): number | null {
  const path = `/proc/${pid}/status`;
  if (!existsSync(path)) return null;
  const kilobytes = /VmHWM:\s+(\d+)/.exec(readFileSync(path, "utf8"))?.[1];
  return kilobytes === undefined ? null : Number(kilobytes) / 1024;
}

/** Compiles where the sources are newer, as any start does. */
export function ensureCompiled(): void {
  spawnSync(process.execPath, [join(TOP, ".ci/start.cjs"), "health"], {
    env: { ...process.env, DATA_DIR: tmpdir() },
  });
}
