import { type Fact, type NewFact, newPiecesOf, recordedInPlaceOf } from "../books/facts.ts";
import { foldFacts, rulesOf } from "../books/fold.ts";
import { labelOf } from "../books/label.ts";
import { problemWords } from "../books/problem.ts";
import { showDay } from "../calendar.ts";
import {
  type Ask,
  type Choice,
  confirmation,
  type Decision,
  type Desk,
  type Looking,
  NEVER_MIND,
} from "../decide/decision.ts";
import { dayWords } from "../decide/echo.ts";
import { byNumbers } from "../decide/pieces/mentioned.ts";
import { type Cents, show } from "../money.ts";
import type { Reading, ReadingOf } from "../notes/reading.ts";
import { couldOf, isFor } from "../notes/unclear.ts";
import { BALANCE, DEPOSIT, HOLD } from "../notes/words/mending.ts";
import { saysAny } from "../notes/words/words.ts";
import { changed } from "./changed.ts";
import { canMend, mendFieldsOf } from "./fields.ts";
import { factsMeant, isMeant, likeliest, ofItsOwn } from "./meant.ts";
import { type Amendment, withoutPieces } from "./mistake.ts";
import { asMeasure, untilThat } from "./newest.ts";
import type { Past } from "./past.ts";

type MendReading = ReadingOf<"mend">;

/** More facts than this are not offered one by one. */
const OFFERED_MAX = 3;
/** More lines than this of what goes along do not fit a question. */
const SHOWN_MAX = 5;

/** What a correction does to the books: it changes or takes out the fact it speaks of, or asks which one that is. */
export function decideMend(said: MendReading, desk: Desk): Decision {
  const { past } = desk;
  const reading = asMeasure(said, desk);
  if (!past)
    return { kind: "refuse", why: "That corrects an earlier note, so it cannot stand in a note's place." };
  const { to = {}, removed } = reading;
  // "the balance should be 8950" right behind a statement: of that, and not what the loan began with.
  const isOfBalance =
    reading.of?.kind === "loan" && past.before()?.kind === "statement" && saysAny(reading.text, BALANCE);
  const of = isOfBalance ? { ...reading.of, kind: "statement" as const } : (reading.of ?? {});
  if (
    removed &&
    of.number !== undefined &&
    of.kind === undefined &&
    of.what === undefined &&
    of.amount === undefined
  )
    return takeOut(reading, [of.number], desk, past);
  const named = factsMeant(of, desk, past);
  // "the bench was paid by card" of one that is not sold: how we paid for it.
  const isBought = named.length === 0 && of.kind === "sell" && to.method !== undefined;
  const meant = isBought ? factsMeant({ ...of, kind: "buy" }, desk, past) : named;
  const able = removed ? meant : meant.filter(({ kind }) => canMend(kind, to));
  const fitting =
    to.amount === undefined
      ? able
      : likeliest(ofItsOwn(able, of, to.amount, past), to.amount, past, reading.text);
  const isThat =
    of.pieces?.every(({ it, count }) => it && count === undefined) && fitting[0] === past.before();
  const [only, ...others] = isThat || isOfJustNow(reading, fitting, past) ? fitting.slice(0, 1) : fitting;
  if (!only) {
    const told = meant.length === 0 ? (asNewDrive(reading) ?? asNewPiece(reading)) : null;
    return told ? { kind: "ask", ask: told } : { kind: "refuse", why: noneWords(meant, past) };
  }
  if (others.length > 0) return { kind: "ask", ask: whichOne(reading, fitting, desk, past) };
  if (reading.isWrong && !desk.confirmed.includes("wrong"))
    return { kind: "ask", ask: whatInstead(reading, only, past) };
  if (removed) return remove(reading, only, desk, past);
  if (only.kind === "trade" && of.kind === "buy" && to.amount !== undefined)
    return { kind: "ask", ask: worthOrCash(reading, only, to.amount) };
  if (isOfItsShare(reading, only, desk) && !desk.confirmed.includes("in all")) {
    const prompt = `${past.echo(only)}. Is ${show(to.amount!)} what all of it cost?`;
    return {
      kind: "ask",
      ask: confirmation(prompt, { label: `${show(to.amount!)} in all`, confirm: "in all" }),
    };
  }
  // "sunday, not friday" of a hold: until when it is kept.
  const kept = untilThat(only, to, reading.text, desk.today);
  return change(kept ? { ...reading, to: kept } : reading, only, desk, past);
}

/**
 * "the deposit was thursday", "the desk, not the hutch" right behind the one note of it that was told today: that one, and none of
 * another day. What something cost may be of any.
 */
function isOfJustNow(
  { of = {}, to = {} }: MendReading,
  [first, ...others]: readonly Fact[],
  past: Past,
): boolean {
  const changes = Object.keys(to).join();
  const isPlain =
    changes === "date" || changes === "pieces" || (changes === "amount" && of.kind !== undefined);
  if (!first || !isPlain || first.root !== past.touched() || !past.isToday(first)) return false;
  return !others.some((other) => past.isToday(other));
}

/** "lamp was 10" of two chairs and a lamp bought for one price: what the lamp cost of it, as likely as not. */
function isOfItsShare({ of = {}, to = {} }: MendReading, fact: Fact, { books }: Desk): boolean {
  const { pieces: named = [] } = of;
  if (fact.kind !== "buy" || to.amount === undefined || of.amount !== undefined || of.fact !== undefined)
    return false;
  const isNamed = (number: number) => named.some((mention) => isMeant(mention, books.pieces.get(number)!));
  return named.length > 0 && named.every(({ it }) => !it) && !fact.pieces.every(isNamed);
}

/** Whether the books have a note that a correction may be about. */
export const meansAny = ({ of = {} }: MendReading, desk: Looking): boolean =>
  desk.past !== undefined && factsMeant(of, { ...desk, confirmed: [] }, desk.past).length > 0;

/** "wait, bench was sold to dana" of the one bench there is, sold already: no second sale of it; null where there may be one. */
export function mendOfGone(reading: Reading, desk: Looking): MendReading | null {
  const [mend, sale] = isFor(reading, "newOrOld") ? couldOf(reading) : [];
  if (mend?.kind !== "mend" || sale?.kind !== "sell" || !desk.past) return null;
  const facts = factsMeant(mend.of ?? {}, { ...desk, confirmed: [] }, desk.past);
  const isHere = [...desk.books.pieces.values()].some(
    (piece) => piece.gone === null && mend.of?.pieces?.some((mention) => isMeant(mention, piece)),
  );
  return facts.length === 1 && !isHere ? mend : null;
}

/** "and the drive was 42 miles" where none was noted: it may be told only now. */
function asNewDrive({ of = {}, to = {}, text, line }: MendReading): Ask | null {
  if (of.kind !== "drive" || to.miles === undefined) return null;
  const drive: ReadingOf<"drive"> = { kind: "drive", miles: to.miles, text, line };
  return asNew("I find no drive like that. A new one?", `Note ${to.miles} miles`, drive);
}

/** "hutch cost 65" of one that is not on the books. */
function asNewPiece({ of = {}, to = {}, text, line }: MendReading): Ask | null {
  const [piece, ...others] = of.pieces ?? [];
  const { kind = "buy", amount, date, ...rest } = of;
  const isOfBuy = kind === "buy" && amount === undefined && Object.keys(rest).length === 1;
  if (!piece?.name || piece.number !== undefined || others.length > 0 || !isOfBuy || to.amount === undefined)
    return null;
  const bought = { kind: "buy", pieces: [piece], price: to.amount, ...(date ? { date } : {}), text, line };
  const name = [...(piece.traits ?? []), piece.name].join(" ");
  const prompt = `No ${name} on the books. Was it bought for that?`;
  return asNew(prompt, `Bought ${name} ${show(to.amount)}`, bought as ReadingOf<"buy">);
}

function asNew(prompt: string, label: string, reading: ReadingOf<"drive" | "buy">): Ask {
  const effect: Choice["effect"] = { kind: "instead", readings: [reading] };
  return { prompt, wants: "choice", choices: [{ label, words: ["yes"], effect }, NEVER_MIND] };
}

function noneWords(meant: readonly Fact[], past: Past): string {
  const [first] = meant;
  if (first) return `That cannot be changed there: ${past.echo(first)}`;
  return 'I find no note like that. "last 5 notes" shows what I have.';
}

/** "The paint is wrong": what it should be, or that it goes. */
function whatInstead({ text, line }: MendReading, fact: Fact, past: Past): Ask {
  const wants = (["amount", "minutes", "miles", "percent"] as const).find((field) =>
    mendFieldsOf(fact.kind).includes(field),
  );
  const out: Choice = {
    label: "Take it out",
    words: ["take it out", "delete it", "remove it"],
    effect: { kind: "settle", confirm: "wrong" },
  };
  const prompt = `${past.echo(fact)}. ${wants ? "What should it be?" : "Take it out?"}`;
  if (!wants) return { prompt, wants: "choice", choices: [out, NEVER_MIND] };
  return {
    prompt,
    wants,
    choices: [out, NEVER_MIND],
    first: [{ kind: "fix", fact: fact.id, missing: [wants], text, line }],
  };
}

/** A button each, the newest first. */
function whichOne(reading: MendReading, facts: readonly Fact[], { today }: Desk, past: Past): Ask {
  const shown = facts.slice(0, OFFERED_MAX);
  const choices = shown.map(
    (fact): Choice => ({
      label: `${past.echo(fact)}${past.echo(fact).includes(showDay(fact.day, today)) ? "" : dayWords(fact, today)}`,
      effect: { kind: "settle", change: { of: { ...reading.of, fact: fact.id } } },
    }),
  );
  const more = facts.length - shown.length;
  const prompt = `Which one?${more > 0 ? ` ${more} older ones fit as well: say the day or the amount.` : ""}`;
  return { prompt, wants: "choice", choices: [...choices, { ...NEVER_MIND, label: "None of these" }] };
}

function remove(reading: MendReading, fact: Fact, desk: Desk, past: Past): Decision {
  const isOfDeposit = saysAny(reading.text, DEPOSIT) && !saysAny(reading.text, HOLD);
  if (isOfDeposit && isHeldAnyway(fact) && !desk.confirmed.includes("hold too"))
    return { kind: "ask", ask: depositOrHold(reading, fact, past) };
  const made = newPiecesOf(fact);
  const hasMore = made.some((number) => (desk.books.story.get(number) ?? []).length > 1);
  if (hasMore) return takeOut(reading, made, desk, past);
  return amend(reading, { voids: [fact], facts: [] }, desk, past);
}

/** On hold for somebody, or until a day, whatever was put down on it. */
const isHeldAnyway = (fact: Fact): boolean =>
  fact.kind === "hold" && !!fact.amount && (fact.data.buyer ?? fact.data.until) !== undefined;

/** "scratch the deposit": the money alone, or the hold with it? */
function depositOrHold({ text, line }: MendReading, fact: Fact, past: Past): Ask {
  const without: MendReading = { kind: "mend", of: { fact: fact.id }, to: { amount: 0 }, text, line };
  return {
    prompt: `${past.echo(fact)}. Only the deposit?`,
    wants: "choice",
    choices: [
      {
        label: "No deposit, still on hold",
        words: ["deposit", "only the deposit", "yes"],
        effect: { kind: "instead", readings: [without] },
      },
      {
        label: "Take the hold out too",
        words: ["hold too", "both"],
        effect: { kind: "settle", confirm: "hold too" },
      },
      NEVER_MIND,
    ],
  };
}

/** "#8 was a mistake": the piece goes and all that is on it, shown first where that is more than its purchase. */
function takeOut(reading: MendReading, numbers: readonly number[], desk: Desk, past: Past): Decision {
  const missing = numbers.find((number) => !desk.books.pieces.has(number));
  if (missing !== undefined) return { kind: "refuse", why: `There is no #${missing} on the books.` };
  const amendment = withoutPieces(numbers, desk);
  if (amendment.voids.length > 1 && !desk.confirmed.includes("take out")) {
    const lines = amendment.voids.map((fact) => lineOf(fact, amendment, past));
    const more = lines.length > SHOWN_MAX ? [`and ${lines.length - SHOWN_MAX} more`] : [];
    const prompt = [`With ${labelOf(desk.books, numbers)} goes:`, ...lines.slice(0, SHOWN_MAX), ...more].join(
      "\n",
    );
    return {
      kind: "ask",
      ask: confirmation(prompt, { label: `Take out all ${lines.length}`, confirm: "take out" }),
    };
  }
  return amend(reading, amendment, desk, past);
}

function lineOf(fact: Fact, { facts }: Amendment, past: Past): string {
  return `${past.echo(fact)}${facts.some(({ replaces }) => replaces === fact.id) ? " (its share)" : ""}`;
}

function change(reading: MendReading, fact: Fact, desk: Desk, past: Past): Decision {
  const { of = {}, to = {} } = reading;
  const next = changed(fact, to, of, desk);
  if ("why" in next) return { kind: "refuse", why: next.why };
  if ("several" in next) return { kind: "ask", ask: whichPieces(reading, next.several, desk) };
  if (isAsBefore(fact, next.fact)) return { kind: "refuse", why: `So it stands: ${past.echo(fact)}.` };
  return amend(reading, { voids: [fact], facts: [{ fact: next.fact, replaces: fact.id }] }, desk, past);
}

/** The same correction a second time changes nothing. */
function isAsBefore(before: Fact, after: NewFact): boolean {
  const said = ({ day, pieces, amount, data, by }: Fact | NewFact): string =>
    JSON.stringify([day, pieces, amount ?? null, Object.entries(data).sort(), by ?? null]);
  return before.kind === after.kind && said(before) === said(after);
}

function whichPieces(reading: MendReading, groups: readonly number[][], { books }: Desk): Ask {
  const choices = groups.map((numbers): Choice => {
    const pieces = byNumbers(numbers);
    return {
      label: labelOf(books, numbers),
      effect: { kind: "settle", change: { to: { ...reading.to, pieces } } },
    };
  });
  return { prompt: "Which of them?", wants: "choice", choices: [...choices, NEVER_MIND] };
}

/** What was got in a trade cost the worth of what was given and the cash: which of them was wrong? */
function worthOrCash(
  reading: MendReading,
  { amount = 0, data }: Extract<Fact, { kind: "trade" }>,
  cost: Cents,
): Ask {
  const cash = (data.paid ?? 0) - (data.received ?? 0);
  const worth = cost - cash;
  const other = cost - amount;
  const choice = (label: string, to: MendReading["to"]): Choice => ({
    label,
    effect: { kind: "settle", change: { of: { ...reading.of, kind: "trade" }, to } as Partial<MendReading> },
  });
  const words = other >= 0 ? `${show(other)} was paid on top` : `${show(-other)} came back`;
  const choices = [
    ...(worth >= 0 ? [choice(`What I gave was worth ${show(worth)}`, { amount: worth })] : []),
    choice(words, { paid: Math.max(0, other), received: Math.max(0, -other) }),
  ];
  return {
    prompt: "That came in a trade. What was wrong?",
    wants: "choice",
    choices: [...choices, NEVER_MIND],
  };
}

/** Checked against all that stands; what is somebody else's is shown first. */
function amend(reading: MendReading, amendment: Amendment, desk: Desk, past: Past): Decision {
  const { voids, facts } = amendment;
  const theirs = voids.find((fact) => fact.author !== past.person);
  if (theirs && !desk.confirmed.includes("theirs")) {
    const prompt = `${past.nameOf(theirs.author)} noted that: ${past.echo(theirs)}. Change it?`;
    return { kind: "ask", ask: confirmation(prompt, { label: "Yes, change it", confirm: "theirs" }) };
  }
  const odd = facts.some(({ fact }) => !rulesOf(fact.kind).data.safeParse(fact.data).success);
  if (odd) return { kind: "refuse", why: "That does not go together with the rest of that note." };
  const folded = foldFacts(standingAfter(amendment, desk));
  const done = (made: Amendment["facts"]): Decision => ({
    kind: "act",
    effect: { kind: "amend", voids: voids.map(({ id }) => id), facts: made },
  });
  if (folded.kind === "folded") return done(facts);
  // "those hinges were for the bench", which was bought later that day.
  const later = facts.map((each) => ({ ...each, fact: { ...each.fact, last: true as const } }));
  if (
    folded.problem.kind === "not bought yet" &&
    foldFacts(standingAfter({ ...amendment, facts: later }, desk)).kind === "folded"
  )
    return done(later);
  const why = problemWords(folded.problem, desk.books, desk.today);
  const inTheWay = desk.books.facts.find(({ id }) => id === folded.fact.id);
  if (!inTheWay) return { kind: "refuse", why };
  return { kind: "ask", ask: wayOut(reading, inTheWay, why, past) };
}

function standingAfter({ voids, facts }: Amendment, { books }: Desk): Fact[] {
  const kept = books.facts.filter((fact) => !voids.includes(fact));
  const next = facts.map(({ fact, replaces }, index) => {
    const before = voids.find(({ id }) => id === replaces)!;
    const id = Number.MAX_SAFE_INTEGER - facts.length + index;
    return recordedInPlaceOf(before, fact, { id, author: before.author, note: before.note });
  });
  return [...kept, ...next];
}

/** A later fact that would become impossible is named, with the way to take it back first. */
function wayOut(reading: MendReading, fact: Fact, why: string, past: Past): Ask {
  const { text, line } = reading;
  const first: MendReading = { kind: "mend", of: { fact: fact.id }, removed: true, text, line };
  const choices: Choice[] = [
    { label: `Take that back first`, effect: { kind: "instead", readings: [first, reading] } },
    NEVER_MIND,
  ];
  return { prompt: `In the way: ${past.echo(fact)}\n${why}`, wants: "choice", choices };
}
