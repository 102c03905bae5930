import type { Tok } from "../clause.ts";
import { headingDayEnd } from "../cutting/day-ahead.ts";
import { headsOf } from "../heads.ts";
import { type Draft, unclearDraft } from "../interpreting/draft.ts";

/*
 * A day in front of several notes holds for each that names none: "yesterday bought …, drove …", "mon: …; tue: …",
 * "bought on saturday: lamp 6, table 9". Where it could not be taken they are asked, and never noted as of today.
 */

/** The clauses, each with the day in front of it. */
export function withDayAhead(drafts: readonly Draft[]): readonly Draft[] {
  let ahead: Draft | undefined;
  let verb: Draft | undefined;
  return drafts.map((draft, at) => {
    if (at === 0 ? dayLeads(draft) : opensDay(draft)) ahead = draft;
    const goesOn = verb !== undefined && goesOnFrom(verb, draft);
    if (!goesOn) verb = dayLeads(draft, true) ? draft : undefined;
    const from = goesOn ? verb : ahead;
    return from && from !== draft ? ofDay(draft, from) : draft;
  });
}

/** "…; tuesday: …" */
export const opensDay = ({ clause }: Draft): boolean => headingDayEnd(clause.tokens, 0) > 0;

/** A day stands before all that was done, or only behind its verb: "bought on saturday at a sale: lamp 6". */
function dayLeads({ clause: { tokens } }: Draft, isBehindVerb = false): boolean {
  const day = tokens.findIndex(({ kind, roles }) => kind === "day" || roles.vagueTime === true);
  const before = tokens.slice(0, Math.max(day, 0));
  return (
    day >= 0 && !before.some(isThing) && before.some((token) => headsOf(token).length > 0) === isBehindVerb
  );
}

const isThing = ({ kind, roles }: Tok): boolean =>
  kind === "piece" ||
  kind === "amount" ||
  kind === "miles" ||
  kind === "duration" ||
  roles.supply !== undefined;

/** The same verb, or none, beside another thing of the kind. */
const goesOnFrom = (verb: Draft, draft: Draft): boolean =>
  draft.repeats || (!draft.clause.head && kindOf(draft) === kindOf(verb));

const kindOf = ({ kind, trouble, could }: Draft): string | undefined => (trouble ? could[0]?.kind : kind);

/** A clause of the day of another; asked about where that says a day and nobody knows which. */
function ofDay(draft: Draft, { fields, trouble, could }: Draft): Draft {
  const dates = new Set(trouble ? could.map((meant) => meant.fields["date"]) : [fields["date"]]);
  const [date, ...others] = dates;
  if (date !== undefined && others.length === 0) {
    for (const each of [draft, ...draft.could]) if (each.dated) each.fields["date"] ??= date;
    return draft;
  }
  if (!draft.dated || draft.fields["date"] !== undefined) return draft;
  const meant = [...dates].map((day) => ({
    ...draft,
    fields: { ...draft.fields, ...(day === undefined ? {} : { date: day }) },
  }));
  return { ...unclearDraft(draft.clause, { kind: "whichDay" }, { could: meant }), repeats: draft.repeats };
}
