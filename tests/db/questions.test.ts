import { afterEach, describe, expect, test } from "vitest";
import type { Ask, Matter } from "../../core/decide/decision.ts";
import type { Ledger } from "../../db/ledger.ts";
import { addNote, clearLedgers, ledgerWithOwner, opensLedger } from "./ledgers.ts";

afterEach(clearLedgers);

const matter = (text: string): Matter => ({
  reading: { kind: "buy", pieces: [{ name: "dresser", count: 1 }], missing: ["price"], text, line: 0 },
  said: "2026-05-09",
  confirmed: [],
  waiting: [],
});
const ask: Ask = {
  prompt: "What did it cost?",
  wants: "price",
  choices: [{ label: "Never mind", words: ["never mind"], effect: { kind: "drop" } }],
};

function open(ledger: Ledger, text: string, person = 1): { id: number; token: string } {
  return ledger.transaction(() => {
    const note = addNote(ledger, text, person);
    return ledger.questions.open({ person, chat: "home", note, matter: matter(text), ask, asked: 3 });
  });
}

describe("open questions", () => {
  test("outlive a restart, whole", () => {
    const { ledger, directory } = ledgerWithOwner();
    const { id, token } = open(ledger, "bought dresser");
    ledger.close();
    const again = opensLedger(directory);
    expect(again.questions.allOpen(1)[0]).toEqual({
      id,
      token,
      person: 1,
      chat: "home",
      note: 1,
      matter: matter("bought dresser"),
      ask,
      asked: 3,
      closed: null,
      prompt: null,
    });
  });

  test("are a queue for each person", () => {
    const { ledger } = ledgerWithOwner();
    ledger.transaction(() => ledger.members.add({ user: "1002", name: "Sam", role: "member", joined: 0 }));
    const [one, two, other] = [open(ledger, "one"), open(ledger, "two"), open(ledger, "three", 2)];
    expect(ledger.questions.allOpen(1).map(({ id }) => id)).toEqual([one.id, two.id]);
    ledger.questions.close(two.id, 9);
    expect(ledger.questions.allOpen(1).map(({ id }) => id)).toEqual([one.id]);
    expect(ledger.questions.everyOpen().map(({ id }) => id)).toEqual([one.id, other.id]);
  });

  test("are found by the token of their buttons, closed ones too", () => {
    const { ledger } = ledgerWithOwner();
    const { id, token } = open(ledger, "one");
    expect(token).toMatch(/^[\w-]{8}$/);
    ledger.questions.close(id, 9);
    expect(ledger.questions.byToken(token)).toMatchObject({ id, closed: 9 });
    expect(ledger.questions.byToken("nothing1")).toBeNull();
  });

  test("keep which message asked them", () => {
    const { ledger } = ledgerWithOwner();
    const first = open(ledger, "one");
    const prompt = ledger.transaction(() =>
      ledger.outbox.queue({ chat: "home", body: { kind: "text", reply: { text: "?" } } }),
    );
    ledger.questions.setPrompt(first.id, prompt!);
    expect(ledger.questions.byToken(first.token)?.prompt).toBe(prompt);
  });
});
