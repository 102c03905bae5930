import { type ChildProcess, spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { programPath, startOfBot } from "../../programs.ts";
import type { Standin } from "../../standin/standin.ts";

export interface Program {
  child: ChildProcess;
  output(): string;
  /** Types lines, whether their questions have come or not. */
  type(...lines: string[]): void;
  saying(words: string | RegExp): Promise<string>;
  exit(): Promise<number | null>;
}

/** An empty home folder in which programs of the project are started, with nothing but the server's address set. */
export class Home {
  readonly folder = mkdtempSync(join(tmpdir(), "tailgate-home-"));
  readonly #programs: Program[] = [];
  readonly #standin: Standin;

  constructor(standin: Standin) {
    this.#standin = standin;
  }

  starts(name: string, args: string[] = []): Program {
    const program = name === "main" ? startOfBot() : [programPath(name)];
    const child = spawn(process.execPath, [...program, ...args], {
      cwd: this.folder,
      env: { PATH: process.env["PATH"], HOME: this.folder, TELEGRAM_API_ROOT: this.#standin.root },
      stdio: ["pipe", "pipe", "pipe"],
    });
    let output = "";
    for (const stream of [child.stdout, child.stderr]) {
      stream.on("data", (chunk) => {
        output += String(chunk);
      });
    }
    const ended = new Promise<number | null>((done) => child.on("close", done));
    const found = (words: string | RegExp) =>
      words instanceof RegExp ? words.exec(output)?.[0] : output.includes(words) ? output : undefined;
    const started: Program = {
      child,
      output: () => output,
      type: (...lines) => void child.stdin.write(lines.map((line) => `${line}\n`).join("")),
      saying: (words) =>
        this.#standin.waitFor(
          () => found(words),
          30_000,
          () => `"${words}" in: ${output}`,
        ),
      exit: () => ended,
    };
    this.#programs.push(started);
    return started;
  }

  end(): void {
    for (const { child } of this.#programs) if (child.exitCode === null) child.kill("SIGKILL");
    rmSync(this.folder, { recursive: true, force: true });
  }
}
