import { figuresOf } from "../core/answers/lines.ts";
import { signed } from "../core/answers/wording.ts";
import { type Day, dayOfInstant, type Instant } from "../core/calendar.ts";
import type { Ledger } from "../db/ledger.ts";
import type { OutboxBody, OutboxRow } from "../db/outbox.ts";
import { seesMoney } from "./conversation/sight.ts";
import { addedUp, talliedLine } from "./conversation/tally.ts";

/** Where at least so many messages wait for one chat, those that can be told together are. */
const WAITING_MIN = 5;
/** Looked at together; a longer queue is joined in several goes. */
const WAITING_MAX = 500;
/** Stays below what a chat takes in one message. */
const LENGTH_MAX = 3500;
const SAID_LENGTH_MAX = 40;

type TextBody = Extract<OutboxBody, { kind: "text" }>;
type TextRow = OutboxRow & { body: TextBody };
type Several = [TextRow, TextRow, ...TextRow[]];

/**
 * Gives the function that puts what waits for a chat into fewer messages, called before its oldest is sent: what
 * was recorded is told as numbers, plain answers one under the other. Whatever asks something or has a file
 * stays a message of its own, in its place after them. One transaction: the rows are told together or apart.
 */
export function createJoiner(deps: {
  ledger: Ledger;
  zone: () => string;
  now: () => Instant;
}): (chat: string, waiting: number) => void {
  const { ledger } = deps;
  return (chat, count) => {
    if (count < WAITING_MIN) return;
    const head = ledger.outbox.headOf(chat);
    if (!head || !isJoinable(head, new Set())) return;
    const waiting = ledger.outbox.waiting(chat, WAITING_MAX);
    const prompts = openPrompts(ledger);
    const rows = waiting.filter((row): row is TextRow => isJoinable(row, prompts));
    const first = rows[0];
    if (first?.id !== head.id) return;
    const alike = rows.filter((row) => isAlike(row, first));
    const bodyOf = first.body.tally ? talliedBody : listedBody;
    const { joined, body } = bodyOf(deps, alike, waiting.filter(({ id }) => prompts.has(id)).length);
    if (isSeveral(joined)) ledger.transaction(() => ledger.outbox.join(joined, body));
  };
}

function isSeveral(rows: readonly TextRow[]): rows is Several {
  return rows.length > 1;
}

/** The messages that ask what is still open: their buttons and their place are needed. */
function openPrompts(ledger: Ledger): ReadonlySet<number> {
  return new Set(ledger.questions.everyOpen().flatMap(({ prompt }) => prompt ?? []));
}

function isJoinable({ id, body, note }: OutboxRow, prompts: ReadonlySet<number>): boolean {
  if (body.kind !== "text" || prompts.has(id) || body.reply.text.length > LENGTH_MAX) return false;
  // What was joined may have been sent and its mark lost: it goes out again as it was.
  if (body.joined !== undefined) return false;
  return body.tally !== undefined || (note !== null && !body.reply.buttons?.length);
}

function isAlike({ body }: TextRow, { body: first }: TextRow): boolean {
  return (body.tally === undefined) === (first.tally === undefined);
}

type Joining = { joined: TextRow[]; body: TextBody };

/** "Recorded 58 notes: 58 bought", how many more ask something, and the totals once. */
function talliedBody(
  { ledger, zone, now }: Parameters<typeof createJoiner>[0],
  rows: readonly TextRow[],
  asking: number,
): Joining {
  const [first] = rows;
  const reader = first ? ledger.members.byUser(first.chat) : null;
  const month =
    reader && seesMoney(ledger, reader.id) ? [monthLine(ledger, dayOfInstant(now(), zone()))] : [];
  const of = addedUp(rows.map(({ body }) => body.tally?.of ?? {}));
  const asks = asking > 0 ? [`${asking} more ${asking === 1 ? "needs" : "need"} an answer, see below`] : [];
  const text = [talliedLine(of), ...asks, ...month].join("\n");
  return { joined: [...rows], body: { kind: "text", reply: { text }, tally: { of } } };
}

function monthLine({ books }: Ledger, today: Day): string {
  return `Month so far ${signed(figuresOf(books, today).flipProfit)}`;
}

/** Answers one under the other, each under the words that it answers, as many as one message takes. */
function listedBody({ ledger }: Parameters<typeof createJoiner>[0], rows: readonly TextRow[]): Joining {
  const joined: TextRow[] = [];
  const parts: string[] = [];
  let length = 0;
  for (const row of rows) {
    const part = `${saidBefore(ledger, row)}${row.body.reply.text}`;
    if (length + part.length > LENGTH_MAX && joined.length > 0) break;
    length += part.length + 2;
    joined.push(row);
    parts.push(part);
  }
  return { joined, body: { kind: "text", reply: { text: parts.join("\n\n") } } };
}

function saidBefore(ledger: Ledger, { note }: TextRow): string {
  const said = note === null ? null : ledger.note(note);
  if (!said || said.message.startsWith("press:")) return "";
  const line = said.text.replace(/\s+/g, " ").trim();
  return `"${line.length > SAID_LENGTH_MAX ? `${line.slice(0, SAID_LENGTH_MAX - 1)}…` : line}"\n`;
}
