import type { Clause, Tok } from "../clause.ts";
import type { Draft } from "../interpreting/draft.ts";
import { bears, language } from "../verbs.ts";
import { BEFORE_WRITER, WRITES } from "../words/chatter.ts";
import { ALL_OF_THEM } from "../words/links.ts";
import { opensDay, saysToday } from "./days-ahead.ts";

/** Fields said once at the end of several buys or several sales, and meant for all of them. */
const SHARED = ["date", "source", "method", "buyer"] as const;
/**
 * "bought from gran: rocker 12, rack 5": what is said before the first thing holds for all that share its verb; before the
 * verb ("at estate sale bought desk 20, bought lamp 5") for those with one of their own as well.
 */
function saidAhead(drafts: readonly Draft[]): void {
  let from: Draft | undefined;
  for (const draft of drafts) {
    const meant = meantBy(draft);
    const { head } = draft.clause;
    if (!from || opensDay(draft) || from.kind !== meant.kind) {
      from = bears(meant.kind, "one end for several") ? meant : undefined;
      continue;
    }
    const { head: verb, tokens } = from.clause;
    const isSharing = draft.repeats || !head || !verb;
    const end = isSharing ? tokens.findIndex(({ kind }) => kind === "piece") : tokens.indexOf(verb);
    const ahead = saidUpTo(from.clause, end);
    for (const field of SHARED) {
      const value = from.fields[field];
      if (typeof value === "string" && ahead.includes(value)) meant.fields[field] ??= value;
    }
  }
}

/** What a clause says before one of its tokens. */
const saidUpTo = ({ line, spans, tokens }: Clause, end: number): string =>
  end > 0 ? line.slice(spans[tokens[0]!.from]!.start, spans[tokens[end]!.from]!.start).toLowerCase() : "";

/** "20 down on the desk, 15 down on the lamp, both cash": the day and the method of all, whatever their verbs. */
function ofAll(drafts: readonly Draft[]): void {
  const last = drafts.at(-1)!;
  if (!last.clause.tokens.some(({ text }) => ALL_OF_THEM.has(text))) return;
  const { method, date } = last.fields;
  for (const draft of drafts) {
    if (method !== undefined && takesMethod(draft)) draft.fields["method"] ??= method;
    if (date !== undefined && draft.dated) draft.fields["date"] ??= date;
  }
}

const takesMethod = ({ kind }: Draft): boolean =>
  language()
    .grammars.get(kind)
    ?.fields.some(({ name }) => name === "method") === true;

/** "paint 12 and wax 8 for it": a pronoun behind the last cost is of all of them. */
function withPronounOfAll(run: readonly Draft[]): void {
  const last = run.at(-1)!;
  if (last.kind !== "spend" || !last.takesBefore || run.some(({ fields }) => fields["pieces"])) return;
  for (const draft of run) draft.takesBefore = true;
}

/** "uncle here. sold the trunk 65 and bought a rug 10": who writes did all of it. */
function leadingWriter(drafts: readonly Draft[]): void {
  const [first] = drafts;
  const by = first?.fields["by"];
  if (by === undefined || !first!.clause.tokens.some(tellsWhoWrites)) return;
  for (const draft of drafts)
    for (const each of [draft, ...draft.could]) if (each.dated) each.fields["by"] ??= by;
}

/** "uncle here", "its mom" */
function tellsWhoWrites({ roles, text }: Tok): boolean {
  if (roles.actor !== "ours") return false;
  const words = text.split(" ");
  return WRITES.has(words.at(-1)!) || BEFORE_WRITER.has(words[0]!);
}

/** What a clause is, or would be where only a word too many of it is asked about. */
const meantBy = (draft: Draft): Draft =>
  draft.repeats && draft.trouble && draft.could.length === 1 ? draft.could[0]! : draft;

/** Runs of clauses of one kind, each at least two long. */
function runs(drafts: readonly Draft[]): Draft[][] {
  const found: Draft[][] = [];
  for (const draft of drafts.map(meantBy)) {
    const run = found.at(-1);
    if (run && run[0]!.kind === draft.kind && !opensDay(draft)) run.push(draft);
    else found.push([draft]);
  }
  return found.filter((run) => run.length > 1);
}

/** "started and finished the lamp": a verb alone is about the pieces of the next. */
function takeFromNext(draft: Draft, next: Draft | undefined): void {
  if (!next || !draft.wantsPieces || draft.kind === "buy" || !next.wantsPieces) return;
  if (Object.keys(draft.fields).length === 0 && next.fields["pieces"] !== undefined)
    draft.fields["pieces"] = next.fields["pieces"];
}

/** Hands what the last of several buys or sales says to those before it that do not say it themselves. */
export function sharedOver(drafts: readonly Draft[]): void {
  if (drafts.length < 2) return;
  leadingWriter(drafts);
  saidAhead(drafts);
  ofAll(drafts);
  takeFromNext(drafts[0]!, drafts[1]);
  for (const run of runs(drafts)) {
    withPronounOfAll(run);
    const kind = run[0]!.kind;
    const fields: readonly string[] = bears(kind, "one end for several")
      ? SHARED
      : kind === "spend"
        ? ["date", "pieces", "method"]
        : kind === "work"
          ? ["date", "pieces"]
          : ["date"];
    const last = run.at(-1)!;
    for (const field of fields) {
      const value = last.fields[field];
      if (value === undefined || run.slice(0, -1).some((draft) => draft.fields[field] !== undefined))
        continue;
      for (const draft of run) if (field !== "date" || !saysToday(draft)) draft.fields[field] = value;
    }
  }
}
