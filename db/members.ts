import { asc, eq, isNull, sql } from "drizzle-orm";
import type { Instant } from "../core/calendar.ts";
import type { Connection } from "./connection.ts";
import { createMemory } from "./memory.ts";
import { members } from "./schema.ts";
import type { SettingsReader } from "./settings.ts";
import { onceAsked } from "./statements.ts";

export type Member = typeof members.$inferSelect;
export type Role = Member["role"];

export interface Members {
  /** Anyone ever let in, removed ones included; null for a stranger. `user` is the chat's own user id. */
  byUser(user: string): Member | null;
  byId(id: number): Member | null;
  /** The earliest owner that was not removed. */
  owner(): Member | null;
  /** Those not removed, in the order they joined. */
  list(): Member[];
  /** Lets a person in; one removed before is the same member again. Gives the member id. */
  add(member: { user: string; name: string; role: Role; joined: Instant }): number;
  remove(id: number, now: Instant): void;
  /** The same person under another id of the chat's; throws where that id is a member's already. */
  rename(id: number, user: string): void;
}

/** Where the owner is told of things; null before there is one. */
export function ownersChat({
  settings,
  members,
}: {
  settings: SettingsReader;
  members: Pick<Members, "owner">;
}): string | null {
  return settings.get("ownerChat") ?? members.owner()?.user ?? null;
}

/** Who may write, and who was ever let in. */
export function openMembers({ db }: Connection, isKept = false): Members & { forget(): void } {
  const ofId = onceAsked(() =>
    db
      .select()
      .from(members)
      .where(eq(members.id, sql.placeholder("id")))
      .prepare(),
  );
  const present = onceAsked(() =>
    db.select().from(members).where(isNull(members.removed)).orderBy(asc(members.id)).prepare(),
  );
  const byUser = createMemory(
    (user: string): Member | null => db.select().from(members).where(eq(members.user, user)).get() ?? null,
    isKept,
  );
  const byId = createMemory((id: number): Member | null => ofId().get({ id }) ?? null, isKept);
  const forget = () => {
    byUser.forget();
    byId.forget();
  };
  const list = (): Member[] => present().all();
  return {
    forget,
    byUser: byUser.get,
    byId: byId.get,
    owner: () => list().find((member) => member.role === "owner") ?? null,
    list,
    add({ user, name, role, joined }) {
      forget();
      const back = { name, role, joined, removed: null };
      const row = db
        .insert(members)
        .values({ user, ...back })
        .onConflictDoUpdate({ target: members.user, set: back })
        .returning({ id: members.id })
        .get();
      return row.id;
    },
    rename(id, user) {
      forget();
      db.update(members).set({ user }).where(eq(members.id, id)).run();
    },
    remove(id, now) {
      forget();
      db.update(members).set({ removed: now }).where(eq(members.id, id)).run();
    },
  };
}
