import type { Tok } from "../clause.ts";
import { headingDayEnd } from "../cutting/day-ahead.ts";
import { headsOf } from "../heads.ts";
import { type Draft, unclearDraft } from "../interpreting/draft.ts";
import { SAYS_TODAY } from "../words/replies.ts";

/*
 * A day in front of several notes holds for each that names none: "yesterday bought …, drove …", "mon: …; tue: …"; one within
 * a note for those that share its verb: "bought lamp saturday 6, table 9". Where it could not be taken they are asked, and
 * never noted as of today.
 */

/** The clauses, each with the day in front of it. */
export function withDayAhead(drafts: readonly Draft[]): readonly Draft[] {
  let ahead: Draft | undefined;
  let within: Draft | undefined;
  return drafts.map((draft, at) => {
    if (at === 0 ? dayLeads(draft) : opensDay(draft)) ahead = draft;
    if (saysToday(draft)) {
      // "yesterday I sanded the desk 1h, today the bench 40 min, paint 11"
      ahead = within = undefined;
      return draft;
    }
    const goesOn = within !== undefined && goesOnFrom(within, draft);
    if (!goesOn) within = dayAt(draft) >= 0 && !dayLeads(draft) ? draft : undefined;
    const from = goesOn ? within : ahead;
    return from && from !== draft ? ofDay(draft, from) : draft;
  });
}

export const saysToday = ({ clause }: Draft): boolean =>
  clause.tokens.some(({ text }) => SAYS_TODAY.has(text));

/** "…; tuesday: …" */
export const opensDay = ({ clause }: Draft): boolean => headingDayEnd(clause.tokens, 0) > 0;

const dayAt = ({ clause }: Draft): number =>
  clause.tokens.findIndex(({ kind, roles }) => kind === "day" || roles.vagueTime === true);

/** A day stands before all that was done. */
function dayLeads(draft: Draft): boolean {
  const day = dayAt(draft);
  return (
    day >= 0 &&
    !draft.clause.tokens.slice(0, day).some((token) => isThing(token) || headsOf(token).length > 0)
  );
}

const isThing = ({ kind, roles }: Tok): boolean =>
  kind === "piece" ||
  kind === "amount" ||
  kind === "miles" ||
  kind === "duration" ||
  roles.supply !== undefined;

/** The same verb, or none beside another thing of the kind and behind a price of another day. */
function goesOnFrom(within: Draft, draft: Draft): boolean {
  if (dayAt(draft) >= 0) return false;
  if (draft.repeats) return true;
  const isPricedLater = within.clause.tokens.slice(dayAt(within)).some(({ kind }) => kind === "amount");
  return (
    isPricedLater &&
    !draft.clause.head &&
    (draft.trouble?.kind === "noVerb" || kindOf(draft) === kindOf(within))
  );
}

const kindOf = ({ kind, trouble, could }: Draft): string | undefined => (trouble ? could[0]?.kind : kind);

/** A clause of the day of another; asked about where that says a day and nobody knows which. */
function ofDay(draft: Draft, { fields, trouble, could }: Draft): Draft {
  const dates = new Set(trouble ? could.map((meant) => meant.fields["date"]) : [fields["date"]]);
  const [date, ...others] = dates;
  if (date !== undefined && others.length === 0) {
    for (const each of [draft, ...draft.could]) if (each.dated) each.fields["date"] ??= date;
    return draft;
  }
  if (!trouble || !draft.dated || draft.fields["date"] !== undefined) return draft;
  const meant = [...dates].map((day) => ({
    ...draft,
    fields: { ...draft.fields, ...(day === undefined ? {} : { date: day }) },
  }));
  return { ...unclearDraft(draft.clause, { kind: "whichDay" }, { could: meant }), repeats: draft.repeats };
}
