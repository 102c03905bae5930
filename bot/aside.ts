import { setPriority } from "node:os";
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import * as z from "zod";
import type { Day } from "../core/calendar.ts";
import type { BackupResult } from "../db/backup.ts";
import type { Make } from "./files/bodies.ts";
import type { MadeFile } from "./files/make.ts";

/** What a process beside the bot is asked for: it reads the ledger and never writes it. */
export type Task = { what: "copy"; today: Day } | { what: "make"; make: Make };

/** Ahead of the bytes of a file, in a line of its own. */
const answerShape = z.discriminatedUnion("kind", [
  z.object({ kind: z.literal("file"), name: z.string() }),
  z.object({ kind: z.literal("made"), backup: z.object({ day: z.string(), path: z.string() }) }),
  z.object({ kind: z.literal("failed"), why: z.string() }),
]);
export type Answer = z.infer<typeof answerShape>;

/** A copy of a hundred years is checked within a minute or two; what takes longer hangs. */
const MINUTES_MAX = 10;
const PRIORITY = 10;

export interface Aside {
  copy(today: Day): Promise<BackupResult>;
  /** Rejects where it cannot be made. */
  make(make: Make): Promise<MadeFile>;
}

/**
 * Long work on the ledger of a data directory, each in a process of its own that gives way to the bot: notes are
 * heard and answered meanwhile.
 */
export function createAside(directory: string, program = ownProgram()): Aside {
  return {
    async copy(today) {
      const { answer } = await run(program, directory, { what: "copy", today }).catch(failed);
      return answer.kind === "file" ? { kind: "failed", why: "the copy gave no word of itself" } : answer;
    },
    async make(make) {
      const { answer, bytes } = await run(program, directory, { what: "make", make });
      if (answer.kind !== "file")
        throw new Error(answer.kind === "failed" ? answer.why : "no file came of it");
      return { name: answer.name, bytes };
    },
  };
}

function failed(error: unknown): { answer: Answer } {
  return { answer: { kind: "failed", why: error instanceof Error ? error.message : String(error) } };
}

/** Where the program lies: beside this one where both are compiled, else among the sources. */
function ownProgram(): string[] {
  const own = fileURLToPath(import.meta.url);
  if (own.endsWith(".ts")) return ["--import", "tsx", join(dirname(own), "commands", "aside.ts")];
  return [join(dirname(own), "aside.js")];
}

async function run(
  program: string[],
  directory: string,
  task: Task,
): Promise<{ answer: Answer; bytes: Buffer }> {
  // Loaded with the first of such work, not with the start.
  const { spawn } = await import("node:child_process");
  const { BOT_TOKEN: _, ...env } = process.env;
  const child = spawn(process.execPath, [...program, directory, JSON.stringify(task)], {
    env,
    stdio: ["ignore", "pipe", "pipe"],
    timeout: MINUTES_MAX * 60_000,
  });
  if (child.pid !== undefined) setPriority(child.pid, PRIORITY);
  const end = () => child.kill();
  process.once("exit", end);
  const chunks: Buffer[] = [];
  let said = "";
  child.stdout.on("data", (chunk: Buffer) => chunks.push(chunk));
  child.stderr.on("data", (chunk: Buffer) => {
    said = `${said}${chunk}`.slice(-300);
  });
  const code = await new Promise<number | null>((resolve, reject) => {
    child.once("error", reject);
    child.once("close", resolve);
  }).finally(() => process.off("exit", end));
  if (code !== 0) throw new Error(`the process for it ended with ${code}: ${said.trim()}`);
  const whole = Buffer.concat(chunks);
  const line = whole.indexOf("\n");
  return {
    answer: answerShape.parse(JSON.parse(whole.subarray(0, line).toString())),
    bytes: whole.subarray(line + 1),
  };
}
