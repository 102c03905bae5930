import { readFileSync } from "node:fs";
import { join } from "node:path";
import { fileURLToPath } from "node:url";

const TOP = fileURLToPath(new URL("..", import.meta.url));

/** What the lock file installs, by name: exact version, licence as declared, and whether the bot itself needs it. */
export function packages() {
  const lock = JSON.parse(readFileSync(join(TOP, "package-lock.json"), "utf8"));
  return Object.entries(lock.packages)
    .filter(([path]) => path !== "")
    .map(([path, { version, license, dev, optional, devOptional }]) => ({
      name: path.slice(path.lastIndexOf("node_modules/") + "node_modules/".length),
      version,
      licence: license ?? "not declared",
      isOfBot: !dev && !devOptional,
      isOptional: optional === true,
    }))
    .sort((a, b) => a.name.localeCompare(b.name, "en") || a.version.localeCompare(b.version, "en"));
}

/** One line a package: what the bot runs on, or with "all" what it is built and tested with, too. */
function print(all) {
  for (const { name, version, licence, isOfBot, isOptional } of packages()) {
    if (!all && !isOfBot) continue;
    const notes = [...(isOfBot ? [] : ["development"]), ...(isOptional ? ["optional"] : [])];
    console.log([name, version, licence, ...notes].join("\t"));
  }
}

if (process.argv[1] === fileURLToPath(import.meta.url)) print(process.argv.includes("all"));
