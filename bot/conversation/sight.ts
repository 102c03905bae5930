import type { Question } from "../../core/notes/reading.ts";
import type { Ledger } from "../../db/ledger.ts";

/** Questions whose answer is the month, the loan or the money due to it. */
const MONEY: ReadonlySet<Question> = new Set(["month", "year", "recap", "loan", "pace", "tax"]);

/** Said where a member asks for what the owner keeps. */
export const NOT_SHOWN = "The month and the loan are the owner's to tell.";

/** Whether a person sees the month, the loan and what is due to it: the owner, and members if the owner says so. */
export function seesMoney(
  { members, settings }: Pick<Ledger, "members" | "settings">,
  person: number,
): boolean {
  return members.byId(person)?.role === "owner" || settings.get("membersSeeMoney") === true;
}

export function isAboutMoney(about: Question | undefined): boolean {
  return about !== undefined && MONEY.has(about);
}
