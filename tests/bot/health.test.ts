import { statSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { describe, expect, it } from "vitest";
import { beat, healthIn } from "../../bot/health.ts";
import { temporaryDirectory } from "./telegram/workbench.ts";

describe("health", () => {
  const directory = temporaryDirectory();

  it("without a sign of life, or with half of one, the bot is unwell", () => {
    expect(healthIn(directory, 0)).toMatchObject({ kind: "unwell" });
    writeFileSync(join(directory, "heartbeat.json"), '{"polled":');
    expect(healthIn(directory, 0)).toMatchObject({ kind: "unwell" });
  });

  it("a bot that polls and stores is well for two minutes after each poll", () => {
    beat(directory, { polled: 1_000_000, troubleSince: null });
    expect(healthIn(directory, 1_000_000 + 119_000)).toEqual({ kind: "well" });
    expect(healthIn(directory, 1_000_000 + 121_000)).toMatchObject({ kind: "unwell", why: /121 seconds/ });
  });

  it("a bot that polls and cannot store is unwell after two minutes of it", () => {
    beat(directory, { polled: 1_000_000, troubleSince: 1_000_000 - 119_000 });
    expect(healthIn(directory, 1_000_000)).toEqual({ kind: "well" });
    beat(directory, { polled: 1_000_000, troubleSince: 1_000_000 - 121_000 });
    expect(healthIn(directory, 1_000_000)).toMatchObject({ kind: "unwell", why: /cannot be stored/ });
  });

  it("the sign of life is for its owner only", () => {
    expect(statSync(join(directory, "heartbeat.json")).mode & 0o777).toBe(0o600);
  });
});
