import { afterEach, describe, expect, it } from "vitest";
import { createConversation } from "../../../bot/conversation/conversation.ts";
import { openLog } from "../../../bot/log.ts";
import { startSchedule } from "../../../bot/schedule/schedule.ts";
import { createCatchingUp } from "../../../bot/telegram/catching-up.ts";
import { signed } from "../../../core/answers/wording.ts";
import { buy, record, sell } from "../../db/ledgers.ts";
import { startStandin } from "../../standin/standin.ts";
import { local, ZONE } from "../schedule/simulation.ts";
import { openTestLedger, temporaryDirectory, workbenches } from "./workbench.ts";

const { bench, closeAll } = workbenches();
afterEach(closeAll);

describe("down over the end of a month", () => {
  it.each([2, 100, 130])(
    "%i notes sent before midnight are in the recap",
    async (count) => {
      const ledger = openTestLedger(temporaryDirectory());
      ledger.members.add({ user: "1001", name: "Robin", role: "owner", joined: 0 });
      record(ledger, buy(ledger, 1000, "2026-10-03", "stool"), sell(1, 2500, "2026-10-10"));
      const clock = { now: local("2026-11-01T09:30") };
      const standin = await startStandin();
      for (let index = 0; index < count; index++)
        standin.say(`paint ${index + 1}`, { date: local("2026-10-31T22:00") + index * 1000 });
      const deps = {
        ledger,
        currency: "USD",
        zone: () => ZONE,
        now: () => clock.now,
        log: openLog("silent"),
      };
      await bench({
        ...{ ledger, standin, now: deps.now, hears: createConversation(deps) },
        startSchedule: (of) => startSchedule({ ...deps, ...of }),
      });
      const told = await standin.waitForReply("October 2026", 60_000);
      const spent = (count * (count + 1)) / 2;
      expect(told.text).toContain(`October 2026: ${signed(1500 - spent * 100)}, 1 flipped`);
      await standin.close();
    },
    90_000,
  );
});

describe("whether all has been heard", () => {
  const start = () => {
    const clock = { now: 0 };
    let times = 0;
    const catchingUp = createCatchingUp(
      () => clock.now,
      () => {
        times++;
      },
    );
    return { clock, catchingUp, times: () => times };
  };

  it("is known once a batch that was not full is done", () => {
    const { catchingUp, times } = start();
    expect(catchingUp.isDone()).toBe(false);
    catchingUp.asking();
    catchingUp.answered(100);
    catchingUp.asking();
    expect(catchingUp.isDone()).toBe(false);
    catchingUp.answered(3);
    expect(catchingUp.isDone()).toBe(false);
    catchingUp.asking();
    expect(catchingUp.isDone()).toBe(true);
    expect(times()).toBe(1);
  });

  it("is unknown after a poll without an answer, and after a sleep", () => {
    const { catchingUp, clock } = start();
    catchingUp.asking();
    catchingUp.answered(0);
    expect(catchingUp.isDone()).toBe(true);
    clock.now += 36_000_000;
    expect(catchingUp.isDone()).toBe(false);
    catchingUp.answered(0);
    expect(catchingUp.isDone()).toBe(true);
    catchingUp.failed();
    catchingUp.asking();
    expect(catchingUp.isDone()).toBe(false);
  });
});
