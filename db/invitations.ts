import { createHash, randomBytes, timingSafeEqual } from "node:crypto";
import { and, eq, gt, isNull, sql } from "drizzle-orm";
import type { Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import type { Role } from "./members.ts";
import { invitations, strangers } from "./schema.ts";

export interface Invitations {
  /** Makes a one-time code of 32 characters (192 bits, not to be guessed); only its hash is kept. */
  invite(invitation: { role: Role; expires: Instant }): string;
  /** Uses a code up and says what it makes of the person; null where it is wrong, late or used. */
  redeem(code: string, now: Instant): Role | null;
  /** Withdraws every unused invitation to a role. */
  withdraw(role: Role): void;
  countStranger(): void;
  strangersCount(): number;
}

/** The invitations of a ledger, and the count of strangers who came without one. */
export function openInvitations({ db }: Connection): Invitations {
  const open = (now: Instant) =>
    db
      .select()
      .from(invitations)
      .where(and(isNull(invitations.used), gt(invitations.expires, now)))
      .all();
  return {
    invite({ role, expires }) {
      const code = randomBytes(24).toString("base64url");
      db.insert(invitations)
        .values({ hash: hashOf(code).toString("hex"), role, expires })
        .run();
      return code;
    },
    redeem(code, now) {
      const hash = hashOf(code);
      // Every open one is compared, in constant time each, so that timing tells nothing of any.
      const matches = open(now).filter((row) => timingSafeEqual(Buffer.from(row.hash, "hex"), hash));
      const [match] = matches;
      if (!match) return null;
      db.update(invitations).set({ used: now }).where(eq(invitations.hash, match.hash)).run();
      return match.role;
    },
    withdraw(role) {
      const unused = and(isNull(invitations.used), eq(invitations.role, role));
      db.update(invitations).set({ expires: 0 }).where(unused).run();
    },
    countStranger() {
      const count = sql`${strangers.count} + 1`;
      db.insert(strangers)
        .values({ id: 1, count: 1 })
        .onConflictDoUpdate({ target: strangers.id, set: { count } })
        .run();
    },
    strangersCount: () => db.select().from(strangers).get()?.count ?? 0,
  };
}

function hashOf(code: string): Buffer {
  return createHash("sha256").update(code).digest();
}
