import type { Clause } from "../clause.ts";
import { claim } from "../clause.ts";
import type { Trouble } from "../grammar.ts";
import type { ReadingFields } from "../reading.ts";
import { SHARES } from "../words/deals.ts";

/** Who shares the profit and how much of it: half where nothing is said. */
export function judgeShare(fields: ReadingFields["share"], { tokens }: Clause): Trouble | null {
  const marked = tokens.findIndex(({ text }) => text === "with" || text === "w" || text === "to");
  const named = tokens[marked + 1]?.roles.filler ? tokens[marked + 2] : tokens[marked + 1];
  const who = marked >= 0 ? named : tokens.find(({ roles, claimed }) => roles.person === true && !claimed);
  if (who?.kind === "word") {
    fields.with = who.text;
    claim(who);
  }
  const share = tokens.find(({ text, claimed }) => SHARES[text] !== undefined && !claimed);
  if (share) claim(share);
  fields.percent ??= share ? SHARES[share.text]! : "50";
  return fields.with === undefined ? { kind: "anotherPerson" } : null;
}
