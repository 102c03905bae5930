import { existsSync, readFileSync } from "node:fs";
import { afterEach, describe, expect, it } from "vitest";
import { workbenches } from "./workbench.ts";

const { talking: bench, closeAll } = workbenches();
afterEach(closeAll);

/**
 * How long the loop's own thread has been on a processor, in ms. A process's figure holds its collector and its
 * compiler too, which hold nobody up; only Linux tells the thread's (proc(5), schedstat: nanoseconds first).
 */
function busyMs(): number {
  const path = `/proc/self/task/${process.pid}/schedstat`;
  if (existsSync(path)) return Number(readFileSync(path, "utf8").split(" ")[0]) / 1e6;
  const { user, system } = process.cpuUsage();
  return (user + system) / 1000;
}

/** The most processor time, in ms, that the loop used between two of its turns, while something goes on. */
async function longestTurn(work: () => Promise<unknown>): Promise<number> {
  let longest = 0;
  let last = busyMs();
  const timer = setInterval(() => {
    const now = busyMs();
    longest = Math.max(longest, now - last);
    last = now;
  }, 1);
  await work();
  clearInterval(timer);
  return longest;
}

const lamps = (count: number) => Array.from({ length: count }, (_, index) => `bought lamp ${index + 1}`);

describe("a file of past pieces", () => {
  const HEADING = "name,bought on,price,materials,sold on,sold for";
  const rows = Array.from({ length: 1999 }, (_, index) => {
    const [month, day] = [1 + (index % 12), 1 + (index % 28)].map((part) => String(part).padStart(2, "0"));
    const sold = index % 5 ? `2025-01-${day},${90 + index}` : ",";
    return `${["oak dresser", "lamp", "2 chairs"][index % 3]},2024-${month}-${day},${index},12.50,${sold}`;
  });

  it("is offered, recorded and taken back, and nothing waits for longer than 200 ms meanwhile", async () => {
    const { standin, ledger } = await bench();
    standin.document("warm.csv", [HEADING, ...rows.slice(0, 40)].join("\n"));
    await standin.waitForReply("This would record");
    standin.say("yes");
    await standin.waitForReply("Recorded");
    const longest = await longestTurn(async () => {
      standin.document("past.csv", [HEADING, ...rows].join("\n"));
      await standin.waitForReply("Left out, recorded from a file before: 40 rows", 170_000);
      standin.say("yes");
      await standin.waitForReply("Recorded 2612 past pieces", 170_000);
    });
    expect(ledger.books.pieces.size).toBe(2665);
    expect(longest).toBeLessThan(200);
    const takingBack = await longestTurn(async () => {
      standin.say("undo");
      await standin.waitForReply("Take all of them back?");
      standin.say("yes");
      await standin.waitForReply("Taken back:");
    });
    expect(ledger.books.pieces.size).toBe(53);
    expect(takingBack).toBeLessThan(200);
  });
});

describe("an edit of a long message", () => {
  it("keeps nobody waiting for longer than 200 ms, the first after a start either", async () => {
    const { standin, ledger } = await bench();
    const wording = (more: number) =>
      Array.from({ length: 300 }, (_, index) => `got fan ${index + more}`).join("\n");
    const highest = () => Math.max(...[...ledger.books.pieces.values()].map(({ price }) => price));
    const message = standin.say(wording(1));
    await standin.waitForReply("Recorded 300 notes");
    for (const more of [2, 3]) {
      const longest = await longestTurn(async () => {
        standin.edit(message, wording(more));
        await standin.waitFor(() => highest() === (299 + more) * 100 || undefined);
      });
      expect(longest).toBeLessThan(200);
    }
    expect(ledger.books.pieces.size).toBe(300);
  });
});

describe("a file of many notes", () => {
  it("is recorded whole, and nothing waits for longer than 200 ms meanwhile", async () => {
    const { standin, ledger } = await bench();
    standin.document("warm.txt", lamps(60).join("\n"));
    await standin.waitForReply("Recorded 60 notes");
    const longest = await longestTurn(async () => {
      standin.document("years.txt", `${lamps(600).join("\n")}\n`);
      await standin.waitForReply("Recorded 600 notes: 600 bought", 170_000);
    });
    expect(ledger.books.pieces.size).toBe(660);
    expect(longest).toBeLessThan(200);
  });

  it("of one line two thousand times is no different", async () => {
    const { standin, ledger } = await bench();
    standin.document("warm.txt", lamps(60).join("\n"));
    await standin.waitForReply("Recorded 60 notes");
    const longest = await longestTurn(async () => {
      standin.document("same.txt", Array(2000).fill("bought lamp 3").join("\n"));
      await standin.waitForReply("Recorded 2000 notes: 2000 bought", 170_000);
    });
    expect(ledger.books.pieces.size).toBe(2060);
    expect(longest).toBeLessThan(200);
  });

  it("of 40,000 is sent back in plain words, as fast", async () => {
    const { standin, ledger } = await bench();
    const longest = await longestTurn(async () => {
      standin.document("all.txt", lamps(40_000).join("\n"));
      await standin.waitForReply("2,000 at a time");
    });
    expect(ledger.books.facts).toHaveLength(0);
    expect(longest).toBeLessThan(200);
  });

  it("or one word of 900 kB, as well", async () => {
    const { standin, ledger } = await bench();
    const before = process.memoryUsage().rss;
    const longest = await longestTurn(async () => {
      standin.document("word.txt", "x".repeat(900_000));
      await standin.waitForReply("900,000 letters long");
    });
    expect(ledger.books.facts).toHaveLength(0);
    expect(longest).toBeLessThan(200);
    expect(process.memoryUsage().rss - before).toBeLessThan(200_000_000);
  });

  it("keeps what goes on about the line before together, and tells what it could not record", async () => {
    const { standin, ledger } = await bench();
    const lines = [...lamps(30), "bought desk 30", "listed it at 90", ...Array(30).fill("sold armoire 90")];
    standin.document("mixed.txt", lines.join("\n"));
    const answer = await standin.waitForReply("Recorded 32 notes");
    expect(answer.text).toContain("I would have to ask about it");
    expect(answer.text).toContain("Not recorded either, lines ");
    expect(ledger.questions.everyOpen()).toHaveLength(10);
    expect([...ledger.books.pieces.values()].at(-1)).toMatchObject({ name: "desk", listPrice: 9000 });
  });

  it("sent twice within minutes counts once", async () => {
    const { standin, ledger } = await bench();
    standin.document("a.txt", lamps(40).join("\n"));
    await standin.waitForReply("Recorded 40 notes");
    standin.document("a.txt", lamps(40).join("\n"));
    await standin.waitForReply("it counts once");
    expect(ledger.books.pieces.size).toBe(40);
  });

  it("is gone on with where an earlier process stopped", async () => {
    const first = await bench();
    const { standin, ledger } = first;
    standin.document("years.txt", lamps(500).join("\n"));
    await standin.waitFor(() => (ledger.books.pieces.size > 50 ? true : undefined));
    await first.stop();
    const done = ledger.books.pieces.size;
    expect(done).toBeLessThan(500);
    const second = await bench({ ledger, standin });
    await standin.waitForReply(`The first ${done} lines were handled before`, 170_000);
    expect(ledger.books.pieces.size).toBe(500);
    expect(ledger.settings.get("longNotes")).toEqual({});
    await second.close();
  });

  it("pasted as a message is no different", async () => {
    const { standin, ledger } = await bench();
    standin.say(lamps(200).join("\n"));
    await standin.waitForReply("Recorded 200 notes: 200 bought");
    expect(ledger.books.pieces.size).toBe(200);
  });
});
