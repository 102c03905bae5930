import { helpPageFor, helpText, pageNames } from "../../core/answers/help-pages.ts";
import { exampleQuestions } from "../../core/answers/list.ts";
import { counted } from "../../core/answers/wording.ts";
import { goalsInForce } from "../../core/books/goals.ts";
import { taxPercentOn } from "../../core/books/month.ts";
import type { Day } from "../../core/calendar.ts";
import { showDay, showTime } from "../../core/calendar.ts";
import { awaitedIn } from "../../core/decide/pieces/awaited.ts";
import { show } from "../../core/money.ts";
import { nudgeTime } from "../../db/settings.ts";
import { inviteMember, membersCalled, membersText, removeMember } from "../members.ts";
import { isZone, zoneNamed, zonesCalled } from "../zone.ts";
import { queueBackup, queueExport } from "./files.ts";
import { beginLead, pressLead } from "./leading.ts";
import { showBeforeAndAfter } from "./pictures.ts";
import { askAgain, closeQuestion, openQuestions, releaseAfter, textsOf } from "./questions.ts";
import { showReceipts } from "./receipts.ts";
import { isOwner, OWNER_ONLY } from "./rights.ts";
import { NOT_SHOWN, seesMoney } from "./sight.ts";
import { standingLines } from "./standing.ts";
import { wordsPassed } from "./talk.ts";
import type { Turn } from "./turn.ts";
import { waitingBehind } from "./waiting-piece.ts";

interface Command {
  /** The whole message, without a slash; what is captured is handed on. */
  says: RegExp;
  /** Only the owner may. */
  owner?: true;
  run(turn: Turn, said: string): void;
}

/** Words to the bot itself, taken only when they are the whole message. */
const commands: readonly Command[] = [
  { says: /^(?:start|hello|hi|hey)$/, run: greet },
  { says: /^help (?:with |on |about )?([a-z]{2,12})$/, run: tellHelp },
  { says: /^settings?$/, run: tellSettings },
  { says: /^no goals?(?: (?:for me|for now|please|thanks?|yet))?$/, run: tellNoGoal },
  { says: /^(?:what'?s )?(?:still )?waiting$/, run: askWaiting },
  {
    says: /^(?:clear (?:all|waiting|everything|what'?s waiting)|(?:never ?mind|nvm|forget|drop|cancel) (?:all|everything|it all|all of (?:it|them|those)|them all|those)|clear)$/,
    run: clearWaiting,
  },
  { says: /^(?:show|see)(?: me)? (\S[\S ]{0,60} before (?:and|&) after)$/, run: showBeforeAndAfter },
  { says: /^((?:show|find) (?:\S{1,40} ){0,8}receipts?(?: \S{1,40}){0,8})$/, run: showReceipts },
  { says: /^export$/, run: exportFor },
  { says: /^backup$/, owner: true, run: queueBackup },
  { says: /^members?$/, owner: true, run: (turn) => turn.spoken.push(membersText(turn.ledger)) },
  { says: /^invite$/, owner: true, run: (turn) => turn.spoken.push(inviteMember(turn.ledger, turn.now())) },
  { says: /^time ?zone$/, run: tellZone },
  { says: /^time ?zone (\S[\S ]{0,60})$/, owner: true, run: setZone },
  { says: /^mileage rate(?: ([\d. ]{1,20}))?$/, owner: true, run: setMileageRate },
  { says: /^tell me of members (on|off)$/, owner: true, run: setTellOwner },
  { says: /^members? see (money|pieces)(?: only)?$/, owner: true, run: setMembersSee },
];

/** Takes a message that is wholly a word to the bot; false where it is none. */
export function runCommand(turn: Turn, text: string): boolean {
  if (runRemoval(turn, text)) return true;
  const said = text
    .trim()
    .replace(/^\//, "")
    .replace(/[.!?]+$/, "");
  for (const command of commands) {
    const match = command.says.exec(said.toLowerCase());
    if (!match) continue;
    if (command.owner && !isOwner(turn)) turn.spoken.push(OWNER_ONLY);
    // Names and zones keep the capitals they were typed with.
    else command.run(turn, match[1] === undefined ? "" : said.slice(-match[1].length));
    return true;
  }
  return false;
}

/**
 * "remove member 2", or a member's name as it is, of whatever it is made: signs at its end are part of it. Without
 * "member" only a name that somebody here has counts: other things are removed, too.
 */
function runRemoval(turn: Turn, text: string): boolean {
  const [, plainly, name = ""] = /^\/?remove (member )?(.{1,200})$/isu.exec(text.trim()) ?? [];
  if (name === "" || (!plainly && membersCalled(turn.ledger, name).length === 0)) return false;
  turn.spoken.push(isOwner(turn) ? removeMember(turn.ledger, name, turn.now()) : OWNER_ONLY);
  return true;
}

function greet(turn: Turn): void {
  if (isOwner(turn)) beginLead(turn);
  turn.spoken.push(greetingFor(turn.zone()));
}

/** The first words to a newcomer: three notes to try, and whose days count. */
export function greetingFor(zone: string): string {
  return [
    "Text me what happens, I keep the books.",
    "Try these, one message each:",
    "bought dresser 30",
    "paint 12.50 for dresser",
    "sold dresser 190 cash",
    'Made a slip? "undo". More: "help".',
    `Your days go by ${zone} time.`,
  ].join("\n");
}

function tellHelp(turn: Turn, topic: string): void {
  const page = helpPageFor(`help ${topic}`);
  turn.spoken.push(
    page
      ? helpText(page, exampleQuestions())
      : `There is no page on ${topic}. There is one on ${pageNames()}.`,
  );
}

/** The newest question once more; the line at the end of the reply tells how many others wait. */
function askWaiting(turn: Turn): void {
  const [newest] = openQuestions(turn);
  if (!newest) turn.spoken.push("Nothing is waiting for an answer.");
  else {
    const behind = textsOf(waitingBehind(newest));
    turn.spoken.push(
      `About "${newest.matter.reading.text}":`,
      ...(behind ? [`Behind it waits: ${behind}`] : []),
    );
    askAgain(turn, newest);
    turn.tellsWaiting = true;
  }
}

function clearWaiting(turn: Turn): void {
  const open = openQuestions(turn);
  for (const question of open) {
    const { id, matter, note } = question;
    closeQuestion(turn, id);
    // What waited for a piece would only ask for it again.
    if (awaitedIn(question).length === 0) releaseAfter(turn, matter);
    turn.ledger.setNoteState(note, "refused");
  }
  const texts = textsOf(open.flatMap((each) => [each.matter.reading, ...waitingBehind(each)]));
  turn.spoken.push(open.length === 0 ? "Nothing is waiting for an answer." : `Dropped: ${texts}`);
}

function tellZone(turn: Turn): void {
  turn.spoken.push(`Your days go by ${turn.zone()} time.\nTo change it: time zone America/Chicago`);
}

export function setZone(turn: Turn, zone: string): void {
  const name = isZone(zone) && zone.includes("/") ? zoneNamed(zone) : zonesCalled(zone)[0];
  if (!name) {
    turn.spoken.push(`I know no time zone "${zone}".\nA big city will do: time zone Chicago`);
    return;
  }
  turn.ledger.settings.set("timeZone", name);
  const kept = turn.zone();
  turn.spoken.push(
    kept === name ? `Your days now go by ${name} time.` : `I was started with TIME_ZONE=${kept}: that holds.`,
  );
}

function setMileageRate(turn: Turn, said: string): void {
  const [, year, cents] = /^(\d{4}) (\d{1,3}(?:\.\d{1,3})?)$/.exec(said) ?? [];
  if (!year || !cents) {
    turn.spoken.push("The year and its cents a mile, like: mileage rate 2027 74");
    return;
  }
  const rates = turn.ledger.settings.get("mileageRates") ?? {};
  turn.ledger.settings.set("mileageRates", { ...rates, [year]: cents });
  turn.spoken.push(`Miles of ${year} count ${cents} cents each in the tax estimate.`);
}

/** The books hold the month and the loan, so they go only to who may see these. */
function exportFor(turn: Turn): void {
  if (seesMoney(turn.ledger, turn.person)) queueExport(turn);
  else turn.spoken.push(NOT_SHOWN);
}

function setMembersSee(turn: Turn, said: string): void {
  const isMoney = said.toLowerCase().startsWith("money");
  turn.ledger.settings.set("membersSeeMoney", isMoney);
  turn.spoken.push(
    isMoney ? "Members now see the month and the loan." : "Members see pieces, not the month nor the loan.",
  );
}

function setTellOwner(turn: Turn, said: string): void {
  turn.ledger.settings.set("tellOwner", said.toLowerCase() === "on");
  turn.spoken.push(
    said.toLowerCase() === "on"
      ? "Once a day I tell you what members noted."
      : "I no longer tell you what members note.",
  );
}

/** "No goal": the answer to the lead that asks for one, and true or not where nothing asked. */
function tellNoGoal(turn: Turn): void {
  const goals = goalsTold(turn);
  if (goals.length > 0) turn.spoken.push(`Goal: ${goals.join(", ")}\nTo take it out, text:\ndelete the goal`);
  else if (turn.ledger.settings.get("led")?.at(-1) === "goal") pressLead(turn, "l:goal");
  else turn.spoken.push("No goal is set. Any time, text:\ngoal 800 a month");
}

function goalsTold({ ledger: { books }, today }: Turn): string[] {
  return goalsInForce(books, today).map((goal) => {
    const what = goal.pieces === null ? show(goal.amount ?? 0) : counted(goal.pieces, "piece");
    return `${what} a ${goal.per}`;
  });
}

/** What is set, a line each; then how each is changed, as notes that work. */
function tellSettings(turn: Turn): void {
  const { settings, books } = turn.ledger;
  const { today } = turn;
  const percent = taxPercentOn(books, today);
  const goals = goalsTold(turn);
  const nudge = settings.get("nudgeOff") ? "off" : `at ${showTime(nudgeTime(settings))}`;
  const left = (settings.get("leftOutPieces") ?? []).map((piece) => `#${piece}`);
  const resting = Object.entries(settings.get("piecesWaiting") ?? {})
    .filter(([, until]) => until > today)
    .map(([piece, until]) => `#${piece} until ${showDay(until, today)}`);
  const rates = Object.entries(settings.get("mileageRates") ?? {}).map(
    ([year, cents]) => `${cents} in ${year}`,
  );
  const passed = wordsPassed(turn).map((name) => name.replace(/^(\S+) (.*)$/, '"$2" beside $1'));
  const lines = [
    `Time zone: ${turn.zone()}`,
    `Daily message: ${nudge}${snoozeWords(settings.get("snoozedUntil"), today)}`,
    ...(left.length > 0 ? [`Left out of it: ${left.join(", ")}`] : []),
    ...(resting.length > 0 ? [`Resting: ${resting.join(", ")}`] : []),
    `Tax set aside: ${percent}%`,
    `Goals: ${goals.join(", ") || "none"}`,
    ...(rates.length > 0 ? [`Cents a mile: ${rates.join(", ")}`] : []),
    ...standingLines(turn).map((line) => `By itself: ${line}`),
    `Members' notes: ${settings.get("tellOwner") === false ? "not told" : "told once a day"}`,
    `Members see: ${settings.get("membersSeeMoney") ? "pieces, month and loan" : "pieces only"}`,
    ...(passed.length > 0 ? [`Passed over: ${passed.join(", ")}`] : []),
    `Currency: ${turn.currency}`,
    "To change them, send:",
    "time zone America/Chicago",
    "nudge at 6pm · nudge off · snooze 3 days",
    "set aside 20% for tax",
    "goal 100 pieces this year",
    "mileage rate 2027 74",
    "tell me of members off",
    "members see money · members see pieces",
  ];
  turn.spoken.push(lines.join("\n"));
}

function snoozeWords(until: Day | null, today: Day): string {
  return until && until > today ? `, quiet until ${showDay(until, today)}` : "";
}
