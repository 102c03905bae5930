import { chmodSync, existsSync, readFileSync, renameSync, writeFileSync } from "node:fs";

/**
 * Sets values in a private settings file and leaves its other lines as they are. The file is replaced whole, or
 * not at all, and only its owner can read it. Values are those of our settings: no quotes, no line ends.
 */
export function writeEnvironmentFile(path: string, values: Readonly<Record<string, string>>): void {
  const before = existsSync(path) ? readFileSync(path, "utf8").split(/\r?\n/) : [];
  const isReplaced = (line: string) => /^\s*(?:export\s+)?(\w+)\s*=/.exec(line)?.[1] ?? "";
  const kept = before.filter((line) => line.trim() !== "" && !(isReplaced(line) in values));
  const lines = [...kept, ...Object.entries(values).map(([name, value]) => `${name}=${value}`)];
  writeFileSync(`${path}.new`, `${lines.join("\n")}\n`, { mode: 0o600 });
  // A file left over from a broken-off run keeps its own mode: it is set, whichever it was.
  chmodSync(`${path}.new`, 0o600);
  renameSync(`${path}.new`, path);
}
