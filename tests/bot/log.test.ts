import { describe, expect, it } from "vitest";
import { failureText, openLog, readable } from "../../bot/log.ts";

const TOKEN = "100200300:AAlog_token_of_the_tests_0123456789";

describe("the log", () => {
  it("writes JSON lines with a level, and blanks the token wherever it stands", () => {
    const lines: string[] = [];
    const log = openLog("info", ["short:1"], { write: (line) => void lines.push(line) });
    log.debug("not written");
    log.info("polling", { bot: "yard_ledger_bot", url: `http://127.0.0.1/bot${TOKEN}/getMe` });
    log.error(`failed at short:1`, { why: "see /botshort%3A1/getMe", row: 4 });
    expect(lines.map((line) => JSON.parse(line) as unknown)).toMatchObject([
      { level: 30, msg: "polling", bot: "yard_ledger_bot", url: "http://127.0.0.1/bot[token]/getMe" },
      { level: 50, msg: "failed at [token]", why: "see /bot[token]/getMe", row: 4 },
    ]);
  });

  it("in a terminal a line is for people: the clock, how bad, the event, its fields", () => {
    const lines: string[] = [];
    const log = openLog("info", [], { write: (line) => void lines.push(readable(line)) });
    log.warn("Telegram cannot be reached", { tries: 2, why: "fetch failed" });
    log.error("note failed", { why: "disk full", stack: "Error\n    at somewhere" });
    expect(lines[0]).toMatch(
      /^\d\d:\d\d:\d\d warning: Telegram cannot be reached · tries 2 · why fetch failed\n$/,
    );
    expect(lines[1]).toMatch(/^\d\d:\d\d:\d\d error: note failed · why disk full\n$/);
  });

  it("an error is one line with its causes, without a stack", () => {
    const cause = new Error(`connect to /bot${TOKEN}/getMe`);
    const text = failureText(new TypeError("fetch failed", { cause }));
    expect(text).toBe("TypeError: fetch failed (Error: connect to /bot[token]/getMe)");
    expect(failureText("words")).toBe("words");
  });
});
