import type { User } from "grammy/types";
import type { Instant } from "../../core/calendar.ts";
import type { Ledger } from "../../db/ledger.ts";
import type { Member } from "../../db/members.ts";
import { failureText, type Log } from "../log.ts";
import { join, nameOf, telegramOwner } from "../members.ts";
import { startCode } from "./commands.ts";
import type { DirectTalk } from "./direct.ts";
import { NOTHING_STORED } from "./unheard.ts";

const HOUR_MS = 3_600_000;
/** Wrong codes that are answered in an hour: of one person, and of all strangers together. */
const TRIES_OF_ONE_MAX = 5;
const TRIES_OF_ALL_MAX = 30;
/** Strangers remembered at once; past it no further stranger is answered. */
const STRANGERS_MAX = 10_000;

const NOT_A_MEMBER = "This is a private bookkeeping bot. If you were invited, open the link you were sent.";
const WRONG_CODE = "That code does not work: a code is good once, for a day. Ask for a new one.";
const NO_OWNER_YET =
  "I have no owner yet. Started me yourself? The link that makes you the owner is in the window where I run: open it on this phone.";
const OLD_LINK =
  "That link is used or out of date. The one that works is in the window where I run; starting me again shows a new one.";
const NOT_HERE = "I keep books in a private chat only. Please message me there.";

export interface Gate {
  /** The member that a private chat's user is, perhaps by the code in `text`; null: a stranger, and seen to. */
  admit(user: User, text: string): Member | null;
  /** Says once that groups are not served, then leaves. */
  decline(chat: number): void;
}

/** Who may talk to the bot. Of strangers nothing is stored but their count; who was told is kept in memory. */
export function createGate(deps: {
  ledger: Ledger;
  direct: DirectTalk;
  leave: (chat: number) => Promise<unknown>;
  onPaired: (name: string) => void;
  now: () => Instant;
  log: Log;
}): Gate {
  const { ledger, direct, leave, onPaired, now, log } = deps;
  const told = new Set<number>();
  const tries = createTries(now);

  function enter(user: User, code: string): Member | null {
    const id = String(user.id);
    const name = nameOf([user.first_name, user.last_name]);
    return ledger.transaction(() => {
      const role = join(ledger, { user: id, name }, code, now());
      if (!role) return null;
      log.info("joined", { role });
      if (role === "owner") onPaired(name);
      const owner = telegramOwner(ledger);
      if (role === "member" && owner) {
        const text = `${name} joined. To take them out: remove member ${ledger.members.byUser(id)?.id}`;
        ledger.outbox.queue({ chat: owner.user, body: { kind: "text", reply: { text } } });
      }
      return ledger.members.byUser(id);
    });
  }

  function turnAway(user: User, line: string | null): null {
    if (told.has(user.id) || told.size >= STRANGERS_MAX) return null;
    told.add(user.id);
    if (line !== null) direct.say(user.id, line);
    try {
      ledger.transaction(() => ledger.invitations.countStranger());
    } catch (error) {
      log.error("stranger not counted", { why: failureText(error) });
    }
    return null;
  }

  /** A wrong code gets its line whatever was said before, so many times an hour. */
  function refuseCode(user: User, line: string): null {
    if (tries.take(user.id)) direct.say(user.id, line);
    return turnAway(user, null);
  }

  return {
    admit(user, text) {
      const known = ledger.members.byUser(String(user.id));
      if (known && known.removed === null) return withName(ledger, known, user);
      const code = startCode(text);
      const isOwned = telegramOwner(ledger) !== null;
      if (code === null) return turnAway(user, isOwned ? NOT_A_MEMBER : NO_OWNER_YET);
      try {
        // The right code is let in first: it cannot be guessed, so no number of wrong ones may lock it out.
        return enter(user, code) ?? refuseCode(user, isOwned ? WRONG_CODE : OLD_LINK);
      } catch (error) {
        log.error("joining not stored", { why: failureText(error) });
        direct.say(user.id, NOTHING_STORED);
        return null;
      }
    },
    decline(chat) {
      const andLeave = () => leave(chat);
      if (told.has(chat)) return direct.once("leave", andLeave);
      if (told.size < STRANGERS_MAX) told.add(chat);
      direct.say(chat, NOT_HERE, andLeave);
    },
  };
}

/** An owner named by id in the settings gets the name that Telegram knows, once. */
function withName(ledger: Ledger, member: Member, user: User): Member {
  if (member.name !== "owner") return member;
  const name = nameOf([user.first_name, user.last_name]);
  ledger.transaction(() => ledger.members.add({ ...member, name }));
  return { ...member, name };
}

/** Counts answers to wrong codes by the hour; true while one more is allowed. */
function createTries(now: () => Instant): { take(user: number): boolean } {
  let hour = 0;
  let all = 0;
  const byUser = new Map<number, number>();
  return {
    take(user) {
      const current = Math.floor(now() / HOUR_MS);
      if (current !== hour) {
        hour = current;
        all = 0;
        byUser.clear();
      }
      const own = byUser.get(user) ?? 0;
      if (own >= TRIES_OF_ONE_MAX || all >= TRIES_OF_ALL_MAX) return false;
      byUser.set(user, own + 1);
      all++;
      return true;
    },
  };
}
