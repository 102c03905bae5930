import { spawn } from "node:child_process";
import { mkdtempSync, readFileSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startOfBot, TOP } from "../programs.ts";
import { openBenchServer } from "./server.ts";
const n = Number(process.argv[2] ?? 330);
const extra = (process.env.EXTRA ?? "").split(" ").filter(Boolean);
const server = await openBenchServer();
const directory = mkdtempSync(join(tmpdir(), "tailgate-bench-"));
const { PATH, HOME } = process.env;
const argv = process.env.BARE ? [process.env.BARE] : startOfBot();
const child = spawn(process.execPath, [...extra, ...argv], { cwd: TOP, stdio: ["ignore", "inherit", "inherit"],
 env: { PATH, HOME, BOT_TOKEN: "100200300:AAbench_token_of_nobody_0123456789012", TELEGRAM_API_ROOT: server.root, OWNER_ID: "1001", DATA_DIR: directory, TIME_ZONE: "America/Chicago", LOG_LEVEL: "error" } });
await server.polled;
const st = (w: string) => { const s = readFileSync(`/proc/${child.pid}/status`, "utf8"); console.log(w, ...["VmHWM", "VmRSS", "RssAnon", "RssFile"].map((k) => k + " " + (Number(new RegExp(k + ":\\s+(\\d+)").exec(s)?.[1]) / 1024).toFixed(1))); };
st("polled");
await new Promise((r) => setTimeout(r, 1500));
st("warmed");
for (let i = 0; i < n; i++) { await server.say(`bought lamp ${i + 1} yard sale`); if (i % 50 === 0) st("note " + i); }
st("end");
child.kill("SIGKILL"); await server.close(); rmSync(directory, { recursive: true, force: true });
