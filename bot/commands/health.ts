import { readEnvironment } from "../environment.ts";
import { healthIn } from "../health.ts";
import { readSettings } from "../settings.ts";

// Run by the image's health check: exits with 0 where the bot handles updates, else with 1 and the reason.
const read = readSettings({ DATA_DIR: readEnvironment()["DATA_DIR"] });
const health =
  read.kind === "settings"
    ? healthIn(read.settings.directory, Date.now())
    : { kind: "unwell" as const, why: read.problems.join("\n") };
console.log(health.kind === "well" ? "handling updates" : health.why);
process.exitCode = health.kind === "well" ? 0 : 1;
