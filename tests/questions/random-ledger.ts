import { addDays, type Day } from "../../core/calendar.ts";

/*
 * Random histories as notes, for the queries to be asked over: the same seed, the same ledger. Every note is one that
 * stands by itself, with its day, so that typing them in order asks nothing back.
 */

/** Random numbers that a seed settles. */
class Dice {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0 || 1;
  }

  /** A whole number from 0 up to, and without, `below`. */
  below(below: number): number {
    this.#state = (Math.imul(this.#state, 1_664_525) + 1_013_904_223) >>> 0;
    return Math.floor((this.#state / 2 ** 32) * below);
  }

  of<T>(values: readonly T[]): T {
    return values[this.below(values.length)]!;
  }

  /** In `percent` of a hundred cases. */
  in(percent: number): boolean {
    return this.below(100) < percent;
  }

  money(least: number, most: number): string {
    const cents = this.in(60) ? this.of([0, 25, 50, 75]) : this.below(100);
    return `${least + this.below(most - least)}${cents === 0 ? "" : `.${String(cents).padStart(2, "0")}`}`;
  }
}

const KINDS = ["dresser", "nightstand", "lamp", "bench", "desk", "hutch", "bookcase", "chair"] as const;
const TRAITS = ["", "", "oak ", "black ", "small ", "walnut "] as const;
const SOURCES = ["", " from yard sale", " from thrift store", " from church sale", " from uncle"] as const;
const SUPPLIES = ["paint", "stain", "wax", "knobs", "sandpaper", "hinges"] as const;
const METHODS = ["", " cash", " cash", " card", " check"] as const;
const BUYERS = ["", "", " to neighbor", " to coworker", " to student"] as const;

type Stage = "bought" | "finished" | "listed" | "held" | "sold" | "gone";

interface Owned {
  number: number;
  stage: Stage;
  /** What is asked, in whole units, and what the last sale brought. */
  price: number;
  brought: string;
}

/** What happens next to a piece, as a note; null where nothing more can. */
function nextOf(piece: Owned, dice: Dice): string | null {
  const on = `#${piece.number}`;
  switch (piece.stage) {
    case "bought":
      if (dice.in(10)) {
        piece.stage = "gone";
        return `${dice.of(["trashed", "keeping", "donated"])} ${on}`;
      }
      if (dice.in(10)) return `drove ${5 + dice.below(30)} miles for ${on}`;
      if (dice.in(60))
        return dice.in(60)
          ? `${dice.of(SUPPLIES)} ${dice.money(3, 20)}${dice.of(METHODS)} for ${on}`
          : `${dice.of([30, 45, 60, 90, 150])} min on ${on}`;
      piece.stage = "finished";
      return `finished ${on}`;
    case "finished":
      piece.stage = "listed";
      piece.price = 250 + 5 * dice.below(40);
      return `listed ${on} ${piece.price} on ${dice.of(["board", "noticeboard"])}`;
    case "listed":
      if (dice.in(20)) {
        piece.price -= 5;
        return `dropped ${on} to ${piece.price}`;
      }
      if (dice.in(15)) {
        piece.stage = "held";
        return `deposit 15 on ${on}${dice.of([" from neighbor", ""])}`;
      }
      return saleOf(piece, dice, dice.of(BUYERS));
    case "held":
      if (dice.in(50)) return saleOf(piece, dice, "");
      piece.stage = "listed";
      return `buyer backed out of ${on}, ${dice.of(["refunded", "kept"])} 15`;
    case "sold":
      if (dice.in(96)) return null;
      piece.stage = "finished";
      return `${on} came back, gave back ${piece.brought}`;
    default:
      return null;
  }
}

/** Sold for what was asked or a little less: neither under its cost nor so low that a deposit could be left out of it. */
function saleOf(piece: Owned, dice: Dice, buyer: string): string {
  piece.stage = "sold";
  piece.brought = `${piece.price - dice.of([0, 5, 10])}.${dice.of(["00", "50", "25", "99"])}`;
  return `sold #${piece.number} ${piece.brought}${dice.of(METHODS)}${dice.in(25) ? " fee 2.75" : ""}${buyer}`;
}

/** What belongs to no piece. */
function shopNote(dice: Dice): string {
  return dice.of([
    `gas ${dice.money(20, 50)}`,
    `${dice.of(SUPPLIES)} ${dice.money(5, 30)}`,
    `storage unit ${dice.money(60, 80)}`,
    `tips ${dice.money(10, 50)}`,
    `workshop ${dice.money(60, 120)}`,
    `drove ${5 + dice.below(40)}.${dice.below(10)} miles`,
  ]);
}

/** Notes of a made-up history from one day up to another. */
export function randomLedger(seed: number, from: Day, to: Day): string[] {
  const dice = new Dice(seed);
  const owned: Owned[] = [];
  const lines: string[] = [];
  for (let day = from; day <= to; day = addDays(day, 1)) {
    const said: string[] = [];
    if (dice.in(16)) {
      const name = `${dice.of(TRAITS)}${dice.of(KINDS)}`;
      const price = dice.in(10) ? null : dice.money(5, 70);
      const bought = price === null ? `free ${name} off the curb` : `bought ${name} ${price}`;
      said.push(price === null ? bought : `${bought}${dice.of(METHODS)}${dice.of(SOURCES)}`);
      owned.push({ number: owned.length + 1, stage: "bought", price: 0, brought: "" });
    }
    const here = owned.filter(({ stage }) => stage !== "gone" && (stage !== "sold" || dice.in(10)));
    const next = here.length > 0 && dice.in(85) ? nextOf(dice.of(here), dice) : null;
    if (next) said.push(next);
    if (dice.in(20)) said.push(shopNote(dice));
    lines.push(...said.map((note) => `${note} ${day}`));
  }
  return lines;
}
