import { existsSync, readdirSync, readFileSync, statSync } from "node:fs";
import { join } from "node:path";
import { afterAll, describe, expect, it } from "vitest";
import { workbenches } from "./workbench.ts";

const { talking: bench, closeAll } = workbenches();
afterAll(closeAll);

const PICTURE = Buffer.from("the bytes of a receipt");
const kept = (directory: string) => {
  const folder = join(directory, "receipts");
  return existsSync(folder) ? readdirSync(folder) : [];
};

// Each has a bot of its own and mostly waits until that has nothing else to do.
describe.concurrent("the picture of a receipt", () => {
  it("is kept beside the ledger, privately; a piece's picture stays in the chat", async () => {
    const { standin, directory } = await bench();
    standin.photo("piece", { caption: "bought dresser 30", bytes: Buffer.from("a dresser") });
    standin.photo("paid", { caption: "paint 12.50", bytes: PICTURE });
    await standin.waitForReply("Paint 12.50");
    const path = join(directory, "receipts", "paid-1280.jpg");
    await standin.waitFor(() => existsSync(path) || undefined, 10_000);
    expect(readFileSync(path)).toEqual(PICTURE);
    expect(statSync(path).mode & 0o777).toBe(0o600);
    expect(kept(directory)).toEqual(["paid-1280.jpg"]);
  });

  it("that cannot be fetched is fetched later, and no note waits for it", async () => {
    const { standin, directory, logged } = await bench();
    standin.fail("getFile", { kind: "dropped" });
    standin.photo("paid", { caption: "paint 12.50", bytes: PICTURE });
    await standin.waitForReply("Paint 12.50");
    await standin.waitFor(
      () => logged.some((line) => line.includes("receipt not kept")) || undefined,
      10_000,
    );
    expect(kept(directory)).toEqual([]);
    standin.say("gas 20");
    await standin.waitFor(() => kept(directory).length === 1 || undefined, 10_000);
    expect(logged.join("")).not.toContain(standin.token);
  });

  it("that is too large stays in the chat, and the others are kept all the same", async () => {
    const { standin, directory } = await bench();
    standin.photo("huge", { caption: "paint 12.50", bytes: Buffer.alloc(10_000_001) });
    standin.photo("paid", { caption: "gas 20", bytes: PICTURE });
    await standin.waitFor(() => kept(directory).length === 1 || undefined, 15_000);
    expect(kept(directory)).toEqual(["paid-1280.jpg"]);
  });
});
