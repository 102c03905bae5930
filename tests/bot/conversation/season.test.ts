import { afterAll, expect, test } from "vitest";
import { PHONE_COLUMNS, rowsOf } from "../../../core/phone.ts";
import { openChat, type Said } from "./chat.ts";

/*
 * What changes a reply changes the file beside this: `vitest -u` writes it anew, and its change is to be read line by
 * line like any other (the fact first, what it moved behind it, no line broken inside a figure).
 */

/** One season as it is typed, a day a block: notes, answers, presses ("[label]") and questions. */
const SEASON: readonly (readonly [day: string, ...said: string[]])[] = [
  ["2026-04-04", "start", "bought oak dresser 30 cash yard sale", "paint 12.50 for dresser", "sander 59"],
  ["2026-04-05", "14,600 at 5.8%", "[10 pieces a month]", "bought 2 chairs 22", "bought hope chest 15"],
  [
    "2026-04-08",
    "started dresser",
    "45 min on dresser",
    "finished dresser",
    "listed dresser 190",
    "unlisted",
  ],
  [
    "2026-04-10",
    "drove 24 miles for chairs",
    "listed the chairs 60",
    "deposit 45 on dresser transfer",
    "held",
  ],
  ["2026-04-12", "buyer backed out of dresser", "20", "dropped dresser to 160", "sold dresser 150 cash"],
  ["2026-04-13", "refunded 25 on the dresser", "undo", "undo", "month"],
  [
    "2026-04-15",
    "sold chair",
    "35",
    "sold chair 35, 10 still owed",
    "got the other 10 for the chair",
    "who owes me",
  ],
  ["2026-04-18", "bought desk 45", "bought lamp 8", "desk actually cost 40", "make that 42", "desk"],
  ["2026-04-20", "sold nightstand 60 cash", "12", "sold lamp 5", "yes", "pieces"],
  ["2026-04-22", "storage 60 every month", "ads 240", "paid loan 500", "loan?", "loan balance 14000"],
  [
    "2026-04-24",
    "traded the hope chest for a bookcase",
    "25",
    "donated the bookcase",
    "what did i spend on paint",
  ],
  ["2026-04-26", "set aside 20% for tax", "tax", "pace", "recap", "goal 800 a month", "best"],
  [
    "2026-04-28",
    "sold #1 99",
    "sold armoire",
    "never mind",
    "frobnicate the whatsit",
    "thanks",
    "bleach 6 for #40",
  ],
  ["2026-04-30", "split the profit on dresser with dad", "yes", "last 5 notes", "help", "settings"],
];

interface Told {
  typed: string;
  said: Said;
}

/** An answer to a question may be longer than one to a note, and yet no page. */
const ROWS_MAX = 16;

const chat = openChat({ start: "2026-04-04T15:00:00Z" });
// Else the lead asks for the zone on a machine that is in Chicago.
chat.ledger.settings.set("timeZone", "America/Chicago");
afterAll(() => chat.end());

function tell(typed: string): Said {
  const label = /^\[(.+)\]$/.exec(typed)?.[1];
  if (label === undefined) return chat.say(typed);
  return chat.press(label);
}

/** As a phone shows it: what was typed, the messages that came, and their buttons; lines over its width are marked. */
function printed({ typed, said }: Told): string {
  const lines = said.text
    .split("\n")
    .map((line) => `${[...line].length > PHONE_COLUMNS ? "!" : " "} ${line}`);
  const buttons =
    said.buttons.length > 0 ? [`  [${said.buttons.map(({ label }) => label).join("] [")}]`] : [];
  return [`> ${typed}`, ...lines, ...buttons].join("\n");
}

test("the replies of a season are those on file, word for word", async () => {
  const told: Told[] = [];
  const days: string[] = [];
  for (const [day, ...typed] of SEASON) {
    chat.at(`${day}T15:00:00Z`);
    const said = typed.map((each) => ({ typed: each, said: tell(each) }));
    told.push(...said);
    days.push(`# ${day}`, ...said.map(printed));
  }
  await expect(`${days.join("\n\n")}\n`).toMatchFileSnapshot("season.txt");
  const lines = told.flatMap(({ said }) => said.text.split("\n"));
  expect(lines.filter((line) => /undefined|null|NaN|\[object/.test(line))).toEqual([]);
  for (const { said } of told)
    for (const word of said.text.split(/\s+/)) expect([...word].length).toBeLessThanOrEqual(PHONE_COLUMNS);
  const rows = told.flatMap(({ said }) => said.texts.map(rowsOf));
  expect(Math.max(...rows)).toBeLessThanOrEqual(ROWS_MAX);
});
