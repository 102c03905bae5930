import { type Cell, filled } from "./cells.ts";
import { cell, DESK, type Scene, type Thing } from "./costs.ts";

/* How the sum of a cost came about. */

/** How a sum came about, all of them 13.00 unless said. */
const SUMS: readonly (string | [said: string, amount: string])[] = [
  "12 plus tax so 13",
  "12 plus tax, 13 total",
  "12 plus tax came to 13",
  "12 and with tax 13",
  "12, 13 with tax",
  "12 + tax = 13",
  "12 plus 1 tax",
  "12 + 1 tax",
  "12 plus 1.00 in tax",
  "12 and 1 tax so 13",
  "13 with tax",
  "13 after tax",
  "13 tax included",
  "13 incl tax",
  "13 including tax",
  "13 all in",
  "13 total",
  "13 total with tax",
  "13 out the door",
  "13 even",
  "a total of 13",
  "6.50 and 6.50 so 13",
  "6.50 + 6.50",
  "6.50 plus 6.50 so 13 total",
  "2 at 6.50 so 13",
  "2 at 6.50 each",
  "two at six fifty each so 13 total",
  "two at 6.50 each, 13 total",
  "2 x 6.50",
  "2x6.50",
  "6.50 x 2",
  "6.50 each and i got 2 so 13",
  "6.50 each, got two, 13",
  "2 of them at 6.50 each so 13",
  "2 packs at 6.50 each",
  "2 packs at 6.50 each so 13",
  "2 packs, 13",
  "2 packs for 13",
  "two for 13",
  "3 for 13",
  "was 18 but had a 5 off coupon so 13",
  "18 but had a 5 off coupon so 13",
  "18 minus a 5 dollar coupon so 13",
  "18 less 5 for the coupon, 13",
  "18 with 5 off so 13",
  "18, after the coupon 13",
  "after the discount 13",
  "after coupon 13",
  "13 after the discount",
  "13 after my coupon",
  "13 with a coupon",
  "13 with the member discount",
  "on sale for 13",
  "on sale, 13",
  "13 on sale",
  "13 on clearance",
  "13, they were on sale",
  "marked down from 18 to 13",
  "13, was 18",
  "13, normally 18",
  "13 down from 18",
  "regularly 18, got it for 13",
  "normally 18 but i paid 13",
  "half price so 13",
  "half off so 13",
  "half off, 13",
  "20 percent off so 13",
  "20% off, 13",
  "13 with 20% off",
  "13, saved 5",
  "13 saved me 5",
  "13 (18 minus 5 coupon)",
  "13 before tax, 14.04 after",
  "13 at checkout",
  "only 13",
  "just 13",
  "13 not bad",
  "13 ouch",
  "13 which is nuts",
].map((one) => (one === "13 before tax, 14.04 after" ? [one, "14.04"] : one));

const SUM_WAYS: readonly string[] = [
  "{t} {s}{w}",
  "{t}, {s}{w}",
  "bought {t}{w}, {s}",
  "got {t}, {s}{w}",
  "{t}{w} {was} {s}",
  "{t}{w} {s}",
];

/** Things that are counted; "two" of them are no amount. */
const COUNTED: readonly Thing[] = [
  { thing: "hinges", category: "materials", were: true },
  { thing: "drop cloths", category: "materials", were: true },
  { thing: "brushes", category: "tools", were: true },
];

export function sums(): Cell[] {
  return SUM_WAYS.flatMap((way, w) =>
    SUMS.flatMap((sum, s) => {
      const [said, amount] = typeof sum === "string" ? [sum, "13.00"] : sum;
      if (way.includes("{was}") && /^(was|on|marked|after|regularly|normally|gave)/.test(said)) return [];
      return ["", " for the desk", " for the shop"].flatMap((whom, h) => {
        const { thing, category } = COUNTED[(s + h) % COUNTED.length]!;
        const scene: Scene = (w + s) % 2 ? "quiet" : "spoken";
        const line = filled(way, { t: thing, s: said, was: "were", w: whom });
        const isBare = whom === "" && scene === "spoken" && category === "materials";
        const pieces = whom === " for the desk" || isBare ? [DESK] : [];
        return [
          cell("sums", scene, `${scene} | ${way} | ${said} | ${whom} | ${thing}`, line, [
            { kind: "spend", pieces, amount, category },
          ]),
        ];
      });
    }),
  );
}
