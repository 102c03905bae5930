import { DAY_MS, type Instant } from "../core/calendar.ts";
import type { Invitations } from "../db/invitations.ts";
import type { Member, Members, Role } from "../db/members.ts";
import type { Outbox } from "../db/outbox.ts";
import type { Questions } from "../db/questions.ts";
import type { Settings } from "../db/settings.ts";

/** The part of the ledger that says who may write. */
interface Household {
  members: Members;
  invitations: Invitations;
  settings: Settings;
}

/** The household with what has to be settled when somebody leaves it. */
interface HouseholdInUse extends Household {
  questions: Pick<Questions, "allOpen" | "close">;
  outbox: Pick<Outbox, "queue">;
}

/** Who types at the machine itself, and the chat there: no id that Telegram gives out. */
export const TERMINAL_USER = "terminal";

const PAIRING_DAYS = 30;
const NAME_LENGTH_MAX = 40;

/** A one-time invitation, valid for a day, in words for the owner to pass on. */
export function inviteMember(household: Household, now: Instant): string {
  const link = household.settings.get("inviteLink");
  if (!link) return "Invitations go out by Telegram: start the bot there once, then ask again.";
  const code = household.invitations.invite({ role: "member", expires: now + DAY_MS });
  const what = link.startsWith("http") ? "Send this link on" : "Have them send this to the bot";
  return `${what}. It works once, until this time tomorrow:\n${link}${code}`;
}

/** The members in the order they joined, with the number that "remove" takes. */
export function membersText(household: Household): string {
  const lines = household.members
    .list()
    .map(({ id, name, role }) => `${id}. ${name}${role === "owner" ? " (owner)" : ""}`);
  return lines.length === 0
    ? "Nobody has joined yet. To let someone in: invite"
    : `${lines.join("\n")}\nTo let someone in: invite\nTo take someone out:\nremove member and the number`;
}

/** The members that a name (whatever it is made of) or a number may mean. */
export function membersCalled({ members }: Pick<Household, "members">, nameOrNumber: string): Member[] {
  const asked = plainName(nameOrNumber);
  const number = asked.replace(/^#/, "");
  return members.list().filter(({ id, name }) => String(id) === number || plainName(name) === asked);
}

/** Letters and signs as they are read: capitals, spaces and the ways to write the same sign do not count. */
function plainName(name: string): string {
  return nameOf([name.normalize("NFC")]).toLowerCase();
}

/** Removes the member of this name or number; what they recorded stays. Says what came of it. */
export function removeMember(household: HouseholdInUse, nameOrNumber: string, now: Instant): string {
  const fits = membersCalled(household, nameOrNumber);
  const [member] = fits;
  if (!member) return `Nobody here is called "${nameOrNumber.trim()}".\n${membersText(household)}`;
  if (fits.length > 1) return `Which one? Say remove member and the number.\n${membersText(household)}`;
  if (member.role === "owner") return "The owner cannot be removed.";
  const dropped = takeOut(household, member, now);
  const out = `${member.name} is out and can record nothing more. What they recorded stays.`;
  return dropped.length === 0 ? out : `${out}\nDropped, it was still open: ${dropped.join(", ")}`;
}

/** Takes a person out, with what was still asked of them; gives those notes as typed. */
function takeOut({ members, questions }: HouseholdInUse, { id }: Member, now: Instant): string[] {
  members.remove(id, now);
  return questions.allOpen(id).flatMap((question) => {
    questions.close(question.id, now);
    const { reading, waiting, after = [] } = question.matter;
    return [reading, ...waiting, ...after.map(({ matter }) => matter.reading)].map(({ text }) => text);
  });
}

/** The owner who talks through Telegram, whose user ids are digits; null before anyone has paired. */
export function telegramOwner(household: Household): Member | null {
  return household.members.list().find(isTelegramOwner) ?? null;
}

function isTelegramOwner({ role, user }: Member): boolean {
  return role === "owner" && /^\d+$/.test(user);
}

/** Whoever sits at the machine that holds the ledger is its owner, the same one as on Telegram. Gives the member id. */
export function ownerAtMachine({ members, settings }: Household, now: Instant): number {
  if (settings.get("ownerChat") === null) settings.set("ownerChat", TERMINAL_USER);
  const known = members.list().find(isTelegramOwner) ?? members.owner();
  return known?.id ?? members.add({ user: TERMINAL_USER, name: "you", role: "owner", joined: now });
}

/** The owner who tried the bot at the machine first and now comes by Telegram is one person: their notes stay theirs. */
function takeOverFromMachine({ members }: Household, user: string, now: Instant): void {
  const atMachine = members.byUser(TERMINAL_USER);
  if (!atMachine || atMachine.removed !== null) return;
  if (members.byUser(user)) members.remove(atMachine.id, now);
  else members.rename(atMachine.id, user);
}

/** Makes the person with this id the owner, as the settings say; an owner before is out, and both are told. */
export function appointOwner(household: HouseholdInUse, user: string, now: Instant): void {
  takeOverFromMachine(household, user, now);
  for (const member of household.members.list()) {
    const isFormer = isTelegramOwner(member) && member.user !== user;
    if (isFormer) takeOver(household, member, { user, now });
  }
  const before = household.members.byUser(user);
  const isInPlace = before?.role === "owner" && before.removed === null;
  // "you" is the machine's word for its owner; among members it is replaced by the name that Telegram knows.
  const isNamed = before !== null && before.name !== "you";
  const name = isNamed ? before.name : "owner";
  if (!isInPlace || name !== before.name) household.members.add({ user, name, role: "owner", joined: now });
  household.invitations.withdraw("owner");
  household.settings.set("ownerChat", user);
}

function takeOver(
  household: HouseholdInUse,
  former: Member,
  { user, now }: { user: string; now: Instant },
): void {
  const dropped = takeOut(household, former, now);
  const say = (chat: string, text: string) =>
    household.outbox.queue({ chat, body: { kind: "text", reply: { text } } });
  const open = dropped.length === 0 ? "" : `\nDropped, it was still open: ${dropped.join(", ")}`;
  say(former.user, "You are no longer the owner of these books: OWNER_ID names somebody else now.");
  say(
    user,
    `You are the owner now. ${former.name}, the owner before, is out; what they recorded stays.\nTo let them in: invite${open}`,
  );
}

/** A fresh pairing code; one made before is worth nothing from now on, since only its hash was kept. */
export function pairingCode(household: Household, now: Instant): string {
  household.invitations.withdraw("owner");
  return household.invitations.invite({ role: "owner", expires: now + PAIRING_DAYS * DAY_MS });
}

/** Lets a person in by a code and says as what; null where the code is wrong, late or used. */
export function join(
  household: HouseholdInUse,
  person: { user: string; name: string },
  code: string,
  now: Instant,
): Role | null {
  const role = household.invitations.redeem(code, now);
  if (!role) return null;
  if (role === "owner") appointOwner(household, person.user, now);
  household.members.add({ ...person, role, joined: now });
  return role;
}

/** A person's name as a chat gives it, fit for one line of text. */
export function nameOf(parts: readonly (string | undefined)[]): string {
  const name = parts
    .filter((part) => part !== undefined)
    .join(" ")
    .replace(/[\p{C}\s]+/gu, " ")
    .trim();
  return name === "" ? "someone" : [...name].slice(0, NAME_LENGTH_MAX).join("");
}
