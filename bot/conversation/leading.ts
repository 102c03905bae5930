import { goalsInForce } from "../../core/books/goals.ts";
import { newMatter } from "../../core/decide/decision.ts";
import { readBareLoan } from "../../core/notes/bare.ts";
import { readMessage } from "../../core/notes/read.ts";
import type { Reading } from "../../core/notes/reading.ts";
import type { Button, Reply } from "../../core/reply.ts";
import { isMachines } from "../zone.ts";
import type { SaidNow } from "./answering.ts";
import { setZone } from "./commands.ts";
import { decideAll } from "./recording.ts";
import { isOwner } from "./rights.ts";
import type { Turn } from "./turn.ts";

/** What a newcomer is led to, in this order, once the first notes are on the books. */
const STEPS = ["loan", "zone", "goal", "asleep"] as const;
export type LeadStep = (typeof STEPS)[number];

/** The lead begins when so many notes are recorded: the three of the greeting. */
const NOTES_FIRST = 3;

/** The zones of the contiguous United States, by what people there call them. */
const ZONES: readonly Button[] = [
  { label: "Eastern", press: "z:America/New_York" },
  { label: "Central", press: "z:America/Chicago" },
  { label: "Mountain", press: "z:America/Denver" },
  { label: "Pacific", press: "z:America/Los_Angeles" },
];

/** Begins to lead whoever has just been greeted, unless that was begun before. */
export function beginLead({ ledger }: Pick<Turn, "ledger">): void {
  if (ledger.settings.get("led") === null) ledger.settings.set("led", []);
}

/**
 * The next thing to lead the owner to, as a message of its own after the reply: one for each note that records
 * something. What is settled already is passed over; null where nothing is left.
 */
export function nextLead(turn: Turn): Reply | null {
  const { settings, books } = turn.ledger;
  const led = settings.get("led");
  const isTime = turn.recorded.length > 0 || turn.leadOn;
  if (led === null || !isTime || books.facts.length < NOTES_FIRST) return null;
  if (turn.asked.length > 0 || !isOwner(turn)) return null;
  const step = STEPS.find((each) => !led.includes(each) && !isSettled(turn, each));
  if (!step) return null;
  settings.set("led", [...led, step]);
  return leadTo(turn, step);
}

function isSettled({ ledger, today, chat, zone }: Turn, step: LeadStep): boolean {
  const { books, settings } = ledger;
  switch (step) {
    case "loan":
      return books.loans.size > 0;
    case "zone":
      // One that the bot was started with stands above what is stored.
      return settings.get("timeZone") !== null || !isMachines(zone());
    case "goal":
      return goalsInForce(books, today).length > 0;
    case "asleep":
      return !/^\d+$/.test(chat);
  }
}

function leadTo(turn: Turn, step: LeadStep): Reply {
  switch (step) {
    case "loan":
      return {
        text: "Which loan does the profit go to?\nText me what is owed and its rate, like:\nloan 14,600 at 5.8%",
        buttons: [[{ label: "No loan", press: "l:loan" }]],
      };
    case "zone":
      return {
        text: `Your days go by ${turn.zone()} time.\nRight? Else tap yours, or text me, like:\ntime zone Europe/Lisbon`,
        buttons: [
          [{ label: "That is right", press: `z:${turn.zone()}` }],
          ZONES.slice(0, 2),
          ZONES.slice(2),
        ].map((row) => row.filter(({ press }, index) => index === 0 || press !== `z:${turn.zone()}`)),
      };
    case "goal":
      return {
        text: "A goal to work toward?\nTap one, or text me, like:\ngoal 800 a month",
        buttons: [
          [5, 10, 20].map((pieces) => ({ label: `${pieces} pieces a month`, press: `g:${pieces}` })),
          [{ label: "No goal", press: "l:goal" }],
        ],
      };
    case "asleep":
      return {
        text: [
          "One thing to know: I answer while the",
          "computer I run on is on and awake.",
          "Text me all the same: I catch up when it",
          "wakes. After a whole day asleep, notes",
          "may be lost, and I say so.",
        ].join("\n"),
      };
  }
}

/** What a bare answer to the last lead means: "14,600 at 5.8%", "800 a month"; null where it is none. */
export function readLed(turn: Turn, { text, today, readings }: SaidNow): Reading[] | null {
  const step = turn.ledger.settings.get("led")?.at(-1);
  const isOpen = turn.lines === 1 && isOwner(turn) && readings.every(({ kind }) => kind === "unclear");
  if (!step || !isOpen || isSettled(turn, step)) return null;
  if (step === "loan") {
    const loan = readBareLoan(text);
    return loan && [{ kind: "loan", ...loan, text, line: 0 }];
  }
  const [goal, ...more] = step === "goal" ? readMessage(`goal ${text}`, today) : [];
  const isWhole = goal?.kind === "goal" && more.length === 0 && (goal.missing ?? []).length === 0;
  return isWhole ? [{ ...goal, text }] : null;
}

/** A press under a lead; false where it is none. */
export function pressLead(turn: Turn, press: string): boolean {
  const [kind, what = ""] = press.split(":");
  if (kind === "z") setZone(turn, what);
  else if (kind === "g") setGoal(turn, Number(what));
  else if (kind === "l" && what === "loan")
    turn.spoken.push("No loan, then. Any time you have one, text:\nloan 14,600 at 5.8%");
  else if (kind === "l" && what === "goal")
    turn.spoken.push("No goal, then. Any time, text:\ngoal 800 a month");
  else return false;
  turn.leadOn = true;
  return true;
}

function setGoal(turn: Turn, pieces: number): void {
  const text = `goal ${pieces} pieces a month`;
  const reading = { kind: "goal" as const, pieces, per: "month" as const, text, line: 0 };
  decideAll(turn, [newMatter(reading, turn.today)], { root: turn.note });
}
