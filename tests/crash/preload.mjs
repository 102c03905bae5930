/**
 * Loaded into the bot's process before its own code (node --import), so that the code under test knows nothing
 * of it. It counts the steps of handling and ends the process, as a power cut would, at the step asked for:
 *   CRASH_STEP=n     die at the n-th step; steps are each write, each commit (before and after), each call to
 *                    Telegram (before it and when its answer is in), each answer of a poll with updates
 *   CRASH_FROM=start count from the start of the process; otherwise from the first poll that brings updates
 *   FULL_DISK=path   while that file exists every write fails as on a full disk
 */
import { existsSync } from "node:fs";
import http from "node:http";
import Database from "better-sqlite3";

const crashStep = Number(process.env["CRASH_STEP"] ?? 0);
const fullDisk = process.env["FULL_DISK"];
let isCounting = process.env["CRASH_FROM"] === "start";
let steps = 0;

function step() {
  if (!isCounting) return;
  steps++;
  if (steps === crashStep) process.kill(process.pid, "SIGKILL");
}

function watchDatabase() {
  const memory = new Database(":memory:");
  const statements = Object.getPrototypeOf(memory.prepare("select 1"));
  memory.close();
  const run = statements.run;
  statements.run = function (...values) {
    const isCommit = /^COMMIT/i.test(this.source);
    const isWrite = /^\s*(?:insert|update|delete|replace)/i.test(this.source);
    if (isCommit || isWrite) step();
    if (isWrite && fullDisk && existsSync(fullDisk)) {
      throw new Database.SqliteError("database or disk is full", "SQLITE_FULL");
    }
    const result = run.apply(this, values);
    if (isCommit) step();
    return result;
  };
}

function watchCalls() {
  const request = http.request;
  http.request = (url, options) => {
    const isPoll = String(url).endsWith("/getUpdates");
    if (!isPoll) step();
    return request(url, options).prependOnceListener("response", (response) => watchAnswer(response, isPoll));
  };
}

/** The end of an answer is a step, where it is no poll without updates. */
function watchAnswer(response, isPoll) {
  const chunks = [];
  const push = response.push;
  response.push = (chunk, ...rest) => {
    if (chunk !== null) chunks.push(chunk);
    else if (!isPoll) step();
    else if (/"update_id"/.test(Buffer.concat(chunks).toString())) {
      isCounting = true;
      step();
    }
    return push.call(response, chunk, ...rest);
  };
}

watchDatabase();
watchCalls();
