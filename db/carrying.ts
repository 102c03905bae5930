import type { Day, Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { LedgerOnFile } from "./ledger-on-file.ts";
import { type Member, ownersChat } from "./members.ts";

/** What the replaced ledger knew and the copy does not: said to whoever restores, and carried over where it must be. */
export interface Carried {
  /** Names of those who were taken out after the copy: they stay out. */
  out: string[];
  /** Names of those who joined after the copy, and are not in it. */
  joined: string[];
  /** Invitations of the copy that were used or withdrawn since: they stay worth nothing. */
  invitations: number;
  /** Notes of the replaced ledger that the copy does not hold, and when the first of them was handled. */
  lost: { notes: number; since: Instant } | null;
}

/**
 * Brings into a copy what must not be forgotten with a later ledger: who is out, which invitations are used up,
 * what was sent already. The owner is told, and asked whether those who are out may come back. Where there is no
 * later ledger to ask (`replaced` null), every open invitation of the copy is withdrawn and `out` is unknown.
 */
export function carryOver(
  copy: Connection,
  replaced: Connection | null,
  { now, today }: { now: Instant; today: Day },
): Carried | null {
  const ledger = new LedgerOnFile(copy);
  return ledger.transaction(() => {
    ledger.settings.set("restoredOn", today);
    const invitations = closeInvitations(copy, replaced);
    if (!replaced) return null;
    keepSent(copy, replaced);
    const { out, joined } = membersSince(ledger, replaced);
    for (const member of out) ledger.members.remove(member.id, now);
    tellOwner(ledger, out);
    const names = (members: readonly Named[]) => members.map(({ name }) => name);
    return { out: names(out), joined: names(joined), invitations, lost: lostNotes(copy, replaced) };
  });
}

type Named = Pick<Member, "user" | "name">;

/** Who is in the copy and no more in the later ledger, and the other way round, by the chat's own user id. */
function membersSince(ledger: LedgerOnFile, replaced: Connection): { out: Member[]; joined: Named[] } {
  const before = ledger.members.list();
  const later = replaced.sqlite
    .prepare("select user, name from members where removed is null order by id")
    .all() as Named[];
  const isIn = (members: readonly Named[], { user }: Named) => members.some((other) => other.user === user);
  return {
    // Whoever sits at the machine is never shut out of it, and goes by another id once they come by a chat.
    out: before.filter((member) => !isIn(later, member) && /^-?\d+$/.test(member.user)),
    joined: later.filter((member) => !isIn(before, member)),
  };
}

/** Withdraws what is open in the copy and not in the later ledger; gives how many that were. */
function closeInvitations(copy: Connection, replaced: Connection | null): number {
  const open = "select hash from invitations where used is null and expires > 0";
  const still = new Set(replaced ? replaced.sqlite.prepare(open).pluck().all() : []);
  const closed = (copy.sqlite.prepare(open).pluck().all() as string[]).filter((hash) => !still.has(hash));
  const withdraw = copy.sqlite.prepare("update invitations set expires = 0 where hash = ?");
  for (const hash of closed) withdraw.run(hash);
  return closed.length;
}

/** Messages that wait in the copy and went out since do not go out again. */
function keepSent(copy: Connection, replaced: Connection): void {
  const waiting = copy.sqlite
    .prepare("select id, chat, body from outbox where sent is null and gave_up is null")
    .all() as { id: number; chat: string; body: string }[];
  const sentAs = replaced.sqlite.prepare(
    "select sent, message from outbox where id = ? and chat = ? and body = ? and sent is not null",
  );
  const mark = copy.sqlite.prepare("update outbox set sent = ?, message = ? where id = ?");
  for (const { id, chat, body } of waiting) {
    const row = sentAs.get(id, chat, body) as { sent: number; message: string | null } | undefined;
    if (row) mark.run(row.sent, row.message, id);
  }
}

function tellOwner(ledger: LedgerOnFile, out: readonly Member[]): void {
  const chat = ownersChat(ledger);
  if (out.length === 0 || chat === null) return;
  const names = out.map(({ name }) => name).join(", ");
  const was = out.length === 1 ? "was" : "were";
  const text = `The ledger was restored from a copy. ${names} ${was} taken out after it and ${out.length === 1 ? "stays" : "stay"} out. Keep it so?`;
  const buttons = out.map(({ id, name }) => [{ label: `Let ${name} back in`, press: `mb:${id}` }]);
  ledger.outbox.queue({ chat, body: { kind: "text", reply: { text, buttons } } });
}

/** Notes of the later ledger that the copy does not hold. */
function lostNotes(copy: Connection, replaced: Connection): Carried["lost"] {
  const all = "select chat, message, revision, handled from notes order by id";
  type Row = { chat: string; message: string; revision: number; handled: number };
  const keyOf = ({ chat, message, revision }: Row) => JSON.stringify([chat, message, revision]);
  const held = new Set((copy.sqlite.prepare(all).all() as Row[]).map(keyOf));
  const lost = (replaced.sqlite.prepare(all).all() as Row[]).filter((row) => !held.has(keyOf(row)));
  const [first] = lost;
  return first ? { notes: lost.length, since: first.handled } : null;
}
