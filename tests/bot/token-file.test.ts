import { mkdtempSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { afterAll, describe, expect, test } from "vitest";
import { withToken } from "../../bot/environment.ts";
import { readSettings } from "../../bot/settings.ts";
import { ended, runsProgram } from "../db/ledgers.ts";

const folder = mkdtempSync(join(tmpdir(), "tailgate-token-"));
afterAll(() => rmSync(folder, { recursive: true, force: true }));

const TOKEN = "100200300:AAtoken_file_of_the_tests_0123456789";

function fileOf(content: string): string {
  const path = join(folder, `token-${content.length}`);
  writeFileSync(path, content);
  return path;
}

describe("the token in a file of its own", () => {
  test("is read without the line end, and starts the bot on Telegram", () => {
    const found = withToken({ BOT_TOKEN_FILE: fileOf(`${TOKEN}\n`), DATA_DIR: "x" });
    if ("problem" in found) throw new Error(found.problem);
    expect(readSettings(found.environment)).toMatchObject({ settings: { mode: "telegram", token: TOKEN } });
  });

  test("gives way to BOT_TOKEN itself; an empty name counts as none", () => {
    const set = { BOT_TOKEN: TOKEN, BOT_TOKEN_FILE: join(folder, "nowhere") };
    expect(withToken(set)).toEqual({ environment: set });
    expect(withToken({ BOT_TOKEN_FILE: " " })).toEqual({ environment: { BOT_TOKEN_FILE: " " } });
  });

  test.each([
    [join(folder, "nowhere"), "cannot be read"],
    [folder, "cannot be read"],
    [fileOf(" \n"), "nothing in it"],
  ])("%s: refused in a sentence at start", async (file, words) => {
    const directory = join(folder, "data");
    const { code, err } = await ended(runsProgram("main", [], { BOT_TOKEN_FILE: file, DATA_DIR: directory }));
    expect(code).toBe(1);
    expect(err).toContain(words);
    expect(err).not.toContain("    at ");
  });
});
