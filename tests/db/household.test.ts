import { afterEach, describe, expect, test } from "vitest";
import { addNote, buy, clearLedgers, ledgerWithOwner, opensLedger, record } from "./ledgers.ts";

afterEach(clearLedgers);

describe("members", () => {
  test("come, go and come back as the same person", () => {
    const { ledger } = ledgerWithOwner();
    const { members } = ledger;
    const sam = members.add({ user: "1002", name: "Sam", role: "member", joined: 5 });
    expect(members.list().map(({ name }) => name)).toEqual(["Robin", "Sam"]);
    members.remove(sam, 9);
    expect(members.list().map(({ name }) => name)).toEqual(["Robin"]);
    expect(members.byUser("1002")?.removed).toBe(9);
    expect(members.add({ user: "1002", name: "Sammy", role: "member", joined: 12 })).toBe(sam);
    expect(members.byId(sam)).toMatchObject({ name: "Sammy", removed: null, joined: 12 });
    expect(members.owner()?.name).toBe("Robin");
    expect(members.byUser("9999")).toBeNull();
  });
});

describe("invitations", () => {
  test("work once, before they expire, and are kept as hashes", () => {
    const { ledger } = ledgerWithOwner();
    const code = ledger.invitations.invite({ role: "member", expires: 100 });
    expect(code).toMatch(/^[\w-]{32}$/);
    expect(JSON.stringify(ledger.connection.sqlite.prepare("select * from invitations").all())).not.toContain(
      code,
    );
    expect(ledger.invitations.redeem(`${code.slice(0, -1)}!`, 50)).toBeNull();
    expect(ledger.invitations.redeem(code, 50)).toBe("member");
    expect(ledger.invitations.redeem(code, 51)).toBeNull();
    const late = ledger.invitations.invite({ role: "member", expires: 100 });
    expect(ledger.invitations.redeem(late, 100)).toBeNull();
    const withdrawn = ledger.invitations.invite({ role: "owner", expires: 100 });
    ledger.invitations.withdraw("owner");
    expect(ledger.invitations.redeem(withdrawn, 50)).toBeNull();
  });

  test("are not used up by any number of wrong codes", () => {
    const { ledger } = ledgerWithOwner();
    const code = ledger.invitations.invite({ role: "owner", expires: 100 });
    for (let tries = 0; tries < 50; tries += 1)
      expect(ledger.invitations.redeem(`wrong ${tries}`, 1)).toBeNull();
    expect(ledger.invitations.redeem(code, 1)).toBe("owner");
  });

  test("strangers are a count", () => {
    const { ledger } = ledgerWithOwner();
    expect(ledger.invitations.strangersCount()).toBe(0);
    ledger.invitations.countStranger();
    ledger.invitations.countStranger();
    expect(ledger.invitations.strangersCount()).toBe(2);
  });
});

describe("settings", () => {
  test("are kept, typed and can be unset", () => {
    const { ledger, directory } = ledgerWithOwner();
    ledger.settings.set("nudgeAt", "18:30");
    ledger.settings.set("leftOutPieces", [3, 4]);
    expect(() => ledger.settings.set("nudgeAt", "25:00")).toThrow();
    expect(() => ledger.settings.set("snoozedUntil", "2026-02-30")).toThrow();
    ledger.close();
    const { settings } = opensLedger(directory);
    expect(settings.get("nudgeAt")).toBe("18:30");
    expect(settings.get("leftOutPieces")).toEqual([3, 4]);
    settings.unset("nudgeAt");
    expect(settings.get("nudgeAt")).toBeNull();
  });
});

test("a delivery is claimed once, and not at all where its transaction is rolled back", () => {
  const { ledger } = ledgerWithOwner();
  const fails = () => {
    ledger.claimUpdate("update 7");
    throw new Error("no");
  };
  expect(() => ledger.transaction(fails)).toThrow("no");
  expect(ledger.transaction(() => ledger.claimUpdate("update 7"))).toBe(true);
  expect(ledger.transaction(() => ledger.claimUpdate("update 7"))).toBe(false);
});

test("a local day is claimed once for each kind of reminder", () => {
  const { ledger } = ledgerWithOwner();
  expect(ledger.reminders.claim("2026-05-09", "nudge", 1)).toBe(true);
  expect(ledger.reminders.claim("2026-05-09", "nudge", 2)).toBe(false);
  expect(ledger.reminders.claim("2026-05-09", "recap", 2)).toBe(true);
  expect(ledger.reminders.claim("2026-05-10", "nudge", 3)).toBe(true);
});

test("a picture belongs to the piece it names, or else to the pieces that its note stands for", () => {
  const { ledger } = ledgerWithOwner();
  record(ledger, buy(ledger, 3000));
  record(ledger, buy(ledger, 500));
  const later = ledger.transaction(() => addNote(ledger));
  ledger.pictures.add({ note: later, piece: 1, file: "after", uniqueFile: "u2", taken: 20 });
  ledger.pictures.add({ note: 1, file: "before", uniqueFile: "u1", taken: 10 });
  ledger.pictures.add({ note: 1, file: "before", uniqueFile: "u1", taken: 10 });
  expect(ledger.pictures.ofPiece(1).map(({ file }) => file)).toEqual(["before", "after"]);
  expect(ledger.pictures.ofPiece(2)).toEqual([]);
  ledger.transaction(() => ledger.amend({ note: addNote(ledger), author: 1, voids: [1], facts: [] }));
  expect(ledger.pictures.ofPiece(1).map(({ file }) => file)).toEqual(["after"]);
});
