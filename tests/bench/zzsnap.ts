import { spawn } from "node:child_process";
import { mkdtempSync, rmSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { startOfBot, TOP } from "../programs.ts";
import { openBenchServer } from "./server.ts";
const server = await openBenchServer();
const directory = mkdtempSync(join(tmpdir(), "tailgate-bench-"));
const { PATH, HOME } = process.env;
const child = spawn(process.execPath, ["--heapsnapshot-signal=SIGUSR2", "--diagnostic-dir=/tmp/mem", ...startOfBot()], { cwd: TOP, stdio: ["ignore", "inherit", "inherit"],
 env: { PATH, HOME, BOT_TOKEN: "100200300:AAbench_token_of_nobody_0123456789012", TELEGRAM_API_ROOT: server.root, OWNER_ID: "1001", DATA_DIR: directory, TIME_ZONE: "America/Chicago", LOG_LEVEL: "error" } });
await server.polled;
await new Promise((r) => setTimeout(r, 1500));
for (let i = 0; i < Number(process.argv[2] ?? 60); i++) await server.say(`bought lamp ${i + 1} yard sale`);
child.kill("SIGUSR2");
await new Promise((r) => setTimeout(r, 15000));
child.kill("SIGKILL"); await server.close(); rmSync(directory, { recursive: true, force: true });
