import fc from "fast-check";
import type { Fact, FactKind } from "../../core/books/facts.ts";
import { addDays } from "../../core/calendar.ts";
import type { Category, DaysInYear, RetireHow } from "../../core/notes/reading.ts";

/** One thing that a person does to the ledger. Plain numbers and choices, so that a failing history shrinks. */
export interface Step {
  does: "add" | "void" | "amend" | "redate";
  kind: FactKind;
  /** Days after the step before. */
  gap: number;
  /** Days that the fact is dated back. */
  back: number;
  /** Which of the pieces so far it names (by position, from the newest), or how many a buy makes. */
  picks: number[];
  /** Cents. */
  amount: number;
  /** Which standing fact a void, an amended or a redated note is about, from the newest. */
  which: number;
  /** Which of the kind's variants. */
  variant: number;
}

const FIRST_DAY = "2023-11-20";
const LOANS = ["loan", "grad", "car"];
/** Which earlier kind of fact makes a kind likely to stand. */
const FOLLOWS: Partial<Record<FactKind, FactKind>> = {
  fallthrough: "hold",
  refund: "sell",
  reprice: "list",
  collect: "sell",
};
const RATES = ["0", "5.5", "6.8", "6.53", "0.125", "5.5"];
const CATEGORIES: Category[] = ["materials", "fees", "vehicle", "other"];
const HOW: RetireHow[] = ["kept", "given", "scrapped"];
const DAYS: DaysInYear[] = ["365", "365.25", "actual"];
const MILES = ["24", "10", "31.5", "0.7"];

/** More of the kinds whose rules lean on one another. */
const KINDS: FactKind[] = [
  ...([
    "buy",
    "spend",
    "spend",
    "work",
    "start",
    "finish",
    "list",
    "list",
    "list",
    "list",
    "reprice",
  ] as const),
  ...([
    "hold",
    "hold",
    "hold",
    "fallthrough",
    "fallthrough",
    "sell",
    "sell",
    "sell",
    "sell",
    "refund",
  ] as const),
  ...([
    "refund",
    "refund",
    "refund",
    "reprice",
    "reprice",
    "retire",
    "income",
    "pay",
    "pay",
    "pay",
    "pay",
  ] as const),
  ...(["collect", "collect", "collect", "trade", "trade", "repeat", "spend", "pay"] as const),
  ...(["loan", "terms", "terms", "statement", "statement", "drive", "goal", "taxrate", "sent"] as const),
];

const amounts = fc.oneof(
  { weight: 1, arbitrary: fc.constantFrom(0, 1, 2) },
  { weight: 3, arbitrary: fc.nat(100) },
  { weight: 6, arbitrary: fc.nat(30_000) },
);

function stepOf(kind: fc.Arbitrary<FactKind>): fc.Arbitrary<Step> {
  return fc.record<Step>({
    does: fc.oneof(
      { weight: 12, arbitrary: fc.constant("add" as const) },
      { weight: 3, arbitrary: fc.constantFrom("void", "amend", "redate") },
    ),
    kind,
    gap: fc.oneof(fc.constant(0), fc.nat(3), fc.nat(45)),
    back: fc.oneof({ weight: 7, arbitrary: fc.constant(0) }, { weight: 1, arbitrary: fc.nat(60) }),
    picks: fc.oneof(
      { weight: 3, arbitrary: fc.nat(3).map((pick) => [pick]) },
      { weight: 1, arbitrary: fc.uniqueArray(fc.nat(4), { minLength: 2, maxLength: 3 }) },
    ),
    amount: amounts,
    which: fc.nat(12),
    variant: fc.nat(11),
  });
}

const anySteps = stepOf(fc.constantFrom(...KINDS));

/** A few buys and loans to begin with, then anything at all; most of them long. */
export const histories = fc
  .tuple(
    fc.array(stepOf(fc.constantFrom("buy", "loan", "buy")), { minLength: 2, maxLength: 5, size: "max" }),
    fc.oneof(
      { weight: 1, arbitrary: fc.array(anySteps, { maxLength: 20, size: "max" }) },
      { weight: 3, arbitrary: fc.array(anySteps, { minLength: 20, maxLength: 60, size: "max" }) },
    ),
  )
  .map(([first, rest]) => [...first, ...rest]);

/** Amounts of a kind's own size, so that a refund is often less than a sale and a payment than a loan. */
function sized({ kind, amount, variant }: Step): number {
  if (kind === "loan" || kind === "statement") return amount * 40;
  if (kind === "refund" || kind === "fallthrough" || kind === "reprice")
    return variant > 4 ? amount % 900 : amount;
  return kind === "hold" || (kind === "pay" && variant % 2) ? amount % 6_000 : amount;
}

/** Turns steps into facts one after another; whether a fact may stand is for the caller to say. */
export class Teller {
  #id = 0;
  #nextPiece = 1;
  #pieces: number[] = [];
  #today = FIRST_DAY;

  /** The facts that stand if the step is done to those that stand now: null where there is nothing to do. */
  tell(step: Step, standing: readonly Fact[]): { facts: Fact[]; added: Fact | null } | null {
    this.#today = addDays(this.#today, step.gap);
    if (step.does === "add") {
      const fact = this.#fact(step, standing);
      if (!fact) return null;
      return { facts: [...standing, fact], added: fact };
    }
    const target = standing.at(-1 - step.which);
    if (!target) return null;
    const rest = standing.filter((fact) => fact !== target);
    if (step.does === "void") return { facts: rest, added: null };
    const fact = this.#replaced(target, step);
    return { facts: [...rest, fact], added: fact };
  }

  get today(): string {
    return this.#today;
  }

  /** The same note said otherwise: it keeps its place; another count of pieces keeps the numbers that match. */
  #replaced(target: Fact, step: Step): Fact {
    this.#id += 1;
    const day =
      step.does === "redate" ? addDays(target.day, step.gap % 2 ? -step.back : step.back) : target.day;
    const amended = { ...target, id: this.#id, root: target.root, day };
    if (step.does === "amend" && target.amount !== undefined) amended.amount = step.amount;
    if (target.kind !== "buy" || step.variant < 8) return amended as Fact;
    const count = step.picks.length;
    const pieces = Array.from({ length: count }, (_, index) => target.pieces[index] ?? this.#newPiece());
    const made = pieces.map((_, index) => target.data.made[index] ?? { name: "stool", traits: ["oak"] });
    return { ...amended, kind: "buy", pieces, data: { ...target.data, made } } as Fact;
  }

  /** The place of a standing note set up earlier, or a place at which none was. */
  #standingNote(which: number): number {
    return this.#standing[which % (this.#standing.length + 1)] ?? 1;
  }

  readonly #standing: number[] = [];

  #newPiece(): number {
    this.#pieces.push(this.#nextPiece);
    return this.#nextPiece++;
  }

  /** Pieces to choose from, the latest first: now and then any, else those that the kind is likely to fit. */
  #candidates({ kind, variant }: Step, standing: readonly Fact[]): number[] {
    const all = [...this.#pieces].reverse();
    const earlier = FOLLOWS[kind];
    if (earlier === undefined || variant > 9) return all;
    const named = standing.filter((fact) => fact.kind === earlier).flatMap((fact) => fact.pieces);
    return [...new Set(named.reverse())];
  }

  #fact(step: Step, standing: readonly Fact[]): Fact | null {
    const { kind, variant } = step;
    const candidates = this.#candidates(step, standing);
    const picked = step.picks.flatMap((pick) => candidates[pick % candidates.length] ?? []);
    const named = [...new Set(picked)];
    const takesPieces = ["spend", "work", "drive"].includes(kind) && variant >= 9 ? [] : named;
    const opened = standing.flatMap((fact) => (fact.kind === "loan" ? [fact.data.loan] : []));
    const names = kind === "loan" || variant > 9 || opened.length === 0 ? LOANS : opened;
    const shape = this.#shape(step, takesPieces, names[variant % names.length]!);
    if (!shape) return null;
    this.#id += 1;
    const id = this.#id;
    if (kind === "repeat" && variant % 3 > 0) this.#standing.push(id);
    const day = addDays(this.#today, -step.back);
    const repeats = standing.filter((fact) => fact.kind === "repeat" && "note" in fact.data);
    const instance =
      ["spend", "pay", "income"].includes(kind) && variant % 3 === 1 ? repeats.at(-1) : undefined;
    return {
      id,
      kind,
      day,
      place: id,
      author: 1,
      note: id,
      root: id,
      ...(instance && { repeat: instance.place }),
      ...shape(sized(step)),
    } as unknown as Fact;
  }

  /** Data, pieces and amount of a new fact of the step's kind. */
  #shape(step: Step, named: number[], loan: string): ((amount: number) => Partial<Fact>) | null {
    const { kind, variant, picks } = step;
    const onPieces = (data: object, withAmount = true) =>
      named.length === 0 && !["spend", "work", "drive"].includes(kind)
        ? null
        : (amount: number) => ({ pieces: named, data, ...(withAmount && { amount }) }) as Partial<Fact>;
    const on =
      (data: object, withAmount = true) =>
      (amount: number) =>
        ({ pieces: [], data, ...(withAmount && { amount }) }) as Partial<Fact>;
    switch (kind) {
      case "buy": {
        const made = picks.map((pick) => ({
          name: ["chair", "desk"][pick % 2]!,
          traits: pick > 2 ? ["tall"] : [],
        }));
        const pieces = made.map(() => this.#newPiece());
        return (amount) =>
          ({ pieces, amount, data: { made, ...(variant > 8 && { set: true }) } }) as Partial<Fact>;
      }
      case "spend":
        return onPieces({ what: "paint", category: CATEGORIES[variant % 4]! });
      case "work":
        return onPieces({ minutes: step.amount % 400 }, false);
      case "drive":
        return onPieces({ miles: MILES[variant % 4]! }, false);
      case "start":
      case "finish":
        return onPieces({}, false);
      case "list":
        return onPieces({});
      case "reprice":
        return onPieces(variant % 2 ? { cut: true } : {});
      case "hold":
        return onPieces(
          {
            ...(variant % 4 === 1 && { buyer: "ann" }),
            ...(variant % 4 === 2 && { buyer: "ben" }),
            ...(variant > 4 && { agreed: 1 + step.amount }),
          },
          variant % 3 > 0,
        );
      case "fallthrough":
        return onPieces(variant % 3 === 0 ? { kept: true } : {}, variant % 4 > 0);
      case "sell": {
        const deposit = [undefined, "applied", "refunded", "kept"][variant % 4];
        const owed = picks.length > 1 || variant % 2 ? { owed: (step.amount * 7) % 9_000 } : {};
        return onPieces({
          ...(deposit && { deposit }),
          ...(variant > 6 && { fee: step.amount % 700 }),
          ...owed,
        });
      }
      case "refund":
        if (variant % 3 === 0) return onPieces({ unpaid: true }, variant > 3);
        return onPieces(variant % 2 ? { returned: true } : {});
      case "collect":
        return onPieces(variant % 2 ? { method: "cash" } : {});
      case "trade": {
        if (named.length === 0) return null;
        const made = picks.map(() => ({ name: "bench", traits: [] }));
        const cash = step.amount % 4_000;
        const data = {
          made,
          ...(variant % 3 === 1 && { paid: cash }),
          ...(variant % 3 === 2 && { received: cash }),
        };
        const pieces = [...named, ...made.map(() => this.#newPiece())];
        return (amount) => ({ pieces, amount, data }) as Partial<Fact>;
      }
      case "repeat":
        return on(
          variant % 3 === 0
            ? { of: this.#standingNote(step.which), from: this.#today, ...(variant > 6 && { stop: true }) }
            : { every: "month", first: this.#today, note: { kind: "pay" } },
        );
      case "retire":
        return onPieces({ how: HOW[variant % 3]! }, false);
      case "income":
        return on({ stream: "ads" });
      case "loan":
        return on({ loan, rate: RATES[variant % 6]! });
      case "pay":
        return on(variant > 5 ? { loan } : {});
      case "statement":
        return on({ loan });
      case "terms":
        return on(termsOf(variant, loan), false);
      case "goal":
        return on({ per: variant % 2 ? "month" : "year" });
      case "taxrate":
        return on({ percent: ["20", "0", "33.3", "12.5"][variant % 4]! }, false);
      case "sent":
        return on({});
      default:
        // A kind that moves neither money nor a piece's state has nothing for the model to disagree on.
        return null;
    }
  }
}

function termsOf(variant: number, loan: string): object {
  if (variant < 3) return { loan, rate: RATES[(variant * 2 + 1) % 6]! };
  if (variant < 7) return { loan, days: DAYS[variant % 3]! };
  if (variant < 9) return { order: "prorata" };
  return variant === 9 ? { order: "highest" } : { loan, rate: "4.2", days: "actual", order: "prorata" };
}
