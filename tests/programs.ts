import { readFileSync } from "node:fs";
import { join, resolve } from "node:path";

/** The project's top folder. */
export const TOP = resolve(import.meta.dirname, "..");

/** A program of the project as `npm start` and the tools run it: compiled, which the run of the tests sees to. */
export function programPath(name: string): string {
  // The bot itself is in the older module form.
  return join(TOP, ".build", name === "main" ? "main.cjs" : `${name}.js`);
}

/** What Node is told to start the bot: the flags of `npm start`, which its kept code is good for, and the program. */
export function startOfBot(): string[] {
  const { scripts } = JSON.parse(readFileSync(join(TOP, "package.json"), "utf8")) as {
    scripts: Record<string, string>;
  };
  return [...(scripts["start"]?.match(/--\S+/g) ?? []), programPath("main")];
}
