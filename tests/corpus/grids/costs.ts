import { type Cell, filled } from "./cells.ts";

/*
 * Costs and where they belong: each way to tell of one, for whom it was, how its sum came about, how it was paid, how it
 * is put right, and what only sounds like one. The desk is spoken of, or nothing is.
 */

export const TODAY = "2026-06-13";
export const DRESSER = 1;
export const DESK = 2;
export const BOUGHT = "2026-06-03";
const SHOP: readonly string[] = ["new loan 9000 at 5.5%", "bought dresser 35", "bought desk 50"];
/** Ten days later nothing is spoken of. */
export const QUIET: readonly string[] = [...SHOP, `@at ${TODAY}T15:00:00Z`];
/** The piece spoken of is the desk. */
const SPOKEN: readonly string[] = [...QUIET, "started the desk"];

const SCENES = { spoken: SPOKEN, quiet: QUIET } as const;
export type Scene = keyof typeof SCENES;

export function cell(about: string, scene: Scene, id: string, line: string, facts: Cell["facts"]): Cell {
  const before = [...SCENES[scene]];
  return { id, class: `costs: ${about}`, on: BOUGHT, before, line, facts, ask: false };
}

/** What was bought, with its category, and whether it is said of several. */
export interface Thing {
  thing: string;
  category: string;
  were?: true;
}

export const THINGS: readonly Thing[] = [
  { thing: "sandpaper", category: "materials" },
  { thing: "wood glue", category: "materials" },
  { thing: "brushes", category: "tools", were: true },
  { thing: "primer", category: "materials" },
  { thing: "knobs", category: "materials", were: true },
  { thing: "clamps", category: "tools", were: true },
  { thing: "paint", category: "materials" },
];

/** Ways to tell of a cost: {t} is the thing, {n} what it came to, {was} "was" or "were"; {w} for whom. */
const WAYS: readonly string[] = [
  "{t} {n}{w}",
  "{t}, {n}{w}",
  "{n} for {t}{w}",
  "{n} on {t}{w}",
  "spent {n} on {t}{w}",
  "bought {t}, {n}{w}",
  "bought {t} for {n}{w}",
  "picked up {t} {n}{w}",
  "got {t} {n}{w}",
  "got some {t} for {n}{w}",
  "grabbed {t}, {n}{w}",
  "{t} {was} {n}{w}",
  "{t} cost me {n}{w}",
  "{t} came to {n}{w}",
  "paid {n} for {t}{w}",
  "had to get {t}, {n}{w}",
  "ran out of {t} so got more, {n}{w}",
  "needed {t}, {n}{w}",
  "more {t} {n}{w}",
  "stopped for {t} on the way home, {n}{w}",
  "hardware store run, {t} {n}{w}",
  "just bought {t}{w}, {n}",
  "bought {t}{w}. {n}",
  "{t}{w} {n}",
  "ok so {t} {n}{w}",
  "ugh {t} {n}{w}",
];

/** For whom a cost was, and the pieces it goes to; none: the shop. */
interface Whom {
  said: string;
  pieces: readonly number[];
  /** Only at the end of what is said. */
  last?: true;
}

const WHOM: readonly Whom[] = [
  ...[
    " for the shop",
    ", for the shop",
    " for the garage",
    " for the workshop",
    ", general use",
    " for general use",
    ", not for any one piece",
    " to have on hand",
    " for stock",
    " for everything",
  ].map((said) => ({ said, pieces: [] })),
  ...[
    ", general shop stuff",
    ", shop supplies",
    ", restocking",
    ", just restocking the shop",
    ", shop expense",
    ", that's a shop cost",
    ", put it under shop",
    ", it's for the shop",
    ", thats just for the shop",
    ", not for the desk, for the shop",
    ", not for the desk",
    ", not for a particular piece",
    ", general supplies",
    ", goes to the shop",
    ", thats overhead",
    ", for the business",
    ", just stock",
    ". shop stuff",
    ". that one's for the shop",
    ", charge it to the shop",
    ", we were out",
  ].map((said) => ({ said, pieces: said.includes("we were out") ? [NaN] : [], last: true as const })),
  ...[" for the dresser", ", for the dresser", " for dresser"].map((said) => ({ said, pieces: [DRESSER] })),
  ...[
    ", that's for the dresser",
    ", it's for the dresser",
    ", all for the dresser",
    ", goes to the dresser",
    ", goes on the dresser",
    ", put it on the dresser",
    ", those are for the dresser",
    ", dresser",
    " (dresser)",
    ". thats for the dresser",
    ", not for the desk but the dresser",
    ", for the dresser drawers",
    ", for the top of the dresser",
    ", charge it to the dresser",
    ", put that toward the dresser",
    ", the dresser needed it",
  ].map((said) => ({ said, pieces: [DRESSER], last: true as const })),
  ...[" for the desk and dresser", " for the desk and the dresser", ", for the desk and the dresser"].map(
    (said) => ({ said, pieces: [DESK, DRESSER] }),
  ),
  ...[
    ", half for the desk half for the dresser",
    ", half of it for the desk and half for the dresser",
    ", split between the desk and the dresser",
    ", split it desk and dresser",
    ", desk and dresser",
    ", for the desk and also the dresser",
    ", half to the desk, half to the dresser",
  ].map((said) => ({ said, pieces: [DESK, DRESSER], last: true as const })),
  { said: "", pieces: [NaN] },
];

/** Of a cost for nobody in particular: the piece spoken of, where it is material. */
function piecesOf({ pieces }: Whom, { category }: Thing, scene: Scene): readonly number[] {
  if (!Number.isNaN(pieces[0] ?? 0)) return pieces;
  return scene === "spoken" && category === "materials" ? [DESK] : [];
}

export const AMOUNTS: readonly [said: string, amount: string][] = [
  ["21.35", "21.35"],
  ["17", "17.00"],
  ["$6.80", "6.80"],
  ["12 bucks", "12.00"],
];

/** Each way of telling with each for whom. */
export function costs(): Cell[] {
  const scenes: readonly Scene[] = ["spoken", "quiet"];
  return scenes.flatMap((scene, s) =>
    WAYS.flatMap((way, w) =>
      WHOM.flatMap((whom, h) => {
        const isWithin = !way.endsWith("{w}");
        if (isWithin && (whom.last || whom.said === "")) return [];
        const thing = THINGS[(w + h + s) % THINGS.length]!;
        const [n, amount] = AMOUNTS[(w + 2 * h) % AMOUNTS.length]!;
        const was = thing.were ? "were" : "was";
        // "more", "some", "it" are said of either.
        const line = filled(way, { t: thing.thing, n, was, w: whom.said });
        const pieces = piecesOf(whom, thing, scene);
        const id = `${scene} | ${way} | ${whom.said} | ${thing.thing}`;
        return [
          cell("for whom", scene, id, line, [{ kind: "spend", pieces, amount, category: thing.category }]),
        ];
      }),
    ),
  );
}

/** How it was paid, behind a cost. */
const PAID: readonly (readonly [said: string, method: string | null])[] = [
  [", put it on the card", "card"],
  [" put it on my card", "card"],
  [" on the card", "card"],
  [" on my card", "card"],
  [", card", "card"],
  [" with the debit card", "card"],
  [" on my debit", "card"],
  [" on debit", "card"],
  [", used my credit card", "card"],
  [", charged it", "card"],
  [", used the business card", "card"],
  [" on the business card", "card"],
  [", paid cash", "cash"],
  [" cash", "cash"],
  [" in cash", "cash"],
  [", had cash on me", "cash"],
  [", cash from my wallet", "cash"],
  [", i paid cash for it", "cash"],
  [", wrote a check", "check"],
  [" by check", "check"],
  [", paid by card this time", "card"],
  [", no receipt", null],
  [", got the receipt", null],
  [", receipt in the truck", null],
  [", out of pocket", null],
];
const PAID_WAYS: readonly string[] = [
  "{t} {n}{w}{p}",
  "bought {t}{w} for {n}{p}",
  "got {t}{w}, {n}{p}",
  "spent {n} on {t}{w}{p}",
  "{t}{w} {was} {n}{p}",
  "{n} for {t}{w}{p}",
  "{t} {n}{p}{w}",
];

export function paid(): Cell[] {
  return PAID_WAYS.flatMap((way, w) =>
    PAID.flatMap(([said, method], p) => {
      const thing = THINGS[(w + p) % THINGS.length]!;
      const whom = ["", " for the dresser", " for the shop"][(w + 2 * p) % 3]!;
      if (way.endsWith("{w}") && said.startsWith(",")) return [];
      const scene: Scene = (w + p) % 2 ? "quiet" : "spoken";
      const [n, amount] = AMOUNTS[(w + p) % AMOUNTS.length]!;
      const line = filled(way, { t: thing.thing, n, w: whom, p: said, was: thing.were ? "were" : "was" });
      const isBare = whom === "" && scene === "spoken" && thing.category === "materials";
      const pieces = whom === " for the dresser" ? [DRESSER] : isBare ? [DESK] : [];
      return [
        cell("how paid", scene, `${scene} | ${way} | ${said} | ${whom} | ${thing.thing}`, line, [
          { kind: "spend", pieces, amount, method },
        ]),
      ];
    }),
  );
}

/** Put right in the same breath: {o} was said first. */
const IN_BREATH: readonly string[] = [
  ", i mean for the {p}",
  " i mean for the {p}",
  ", i mean the {p}",
  ", no wait the {p}",
  ", no for the {p}",
  ", sorry the {p}",
  ", sorry for the {p}",
  ", actually for the {p}",
  ", actually the {p}",
  ", oops {p}",
  " no the {p}",
  ". i meant the {p}",
  " scratch that for the {p}",
  " wait no the {p}",
  ", i mean {p}",
];

export function inBreath(): Cell[] {
  return (["spoken", "quiet"] as const).flatMap((scene, s) =>
    [
      "primer 12 for the desk",
      "bought knobs for the desk 12",
      "12 for paint for the desk",
      "got hinges for the desk, 12",
    ].flatMap((note) =>
      IN_BREATH.flatMap((way) =>
        (["dresser", "shop"] as const).map((p) =>
          cell(
            "put right in a breath",
            scene,
            `${scene} | ${note} | ${way} | ${p} | ${s}`,
            note + filled(way, { p }),
            [{ kind: "spend", pieces: p === "shop" ? [] : [DRESSER], amount: "12.00" }],
          ),
        ),
      ),
    ),
  );
}

/** What else a side business pays for, with its category; beside the desk spoken of it is the shop's all the same. */
const OTHERS: readonly (readonly [
  note: string,
  category: string,
  amount: string,
  pieces?: readonly number[],
])[] = [
  ["listing fee 5 for the desk", "fees", "5.00", [DESK]],
  ["paid a 5 listing fee on the desk", "fees", "5.00", [DESK]],
  ["listing fee 5", "fees", "5.00"],
  ["listing fees were 5 this week", "fees", "5.00"],
  ["dump fee 15", "fees", "15.00"],
  ["dump fee was 15", "fees", "15.00"],
  ["paid 15 at the dump", "other", "15.00"],
  ["rented a truck 39.95", "vehicle", "39.95"],
  ["truck rental 39.95", "vehicle", "39.95"],
  ["rented a truck for 39.95", "vehicle", "39.95"],
  ["truck rental came to 39.95 with the insurance", "vehicle", "39.95"],
  ["rental van 45 for the day", "vehicle", "45.00"],
  ["parking 6", "vehicle", "6.00"],
  ["paid 6 to park", "vehicle", "6.00"],
  ["6 for parking downtown", "vehicle", "6.00"],
  ["parking meter 2.50", "vehicle", "2.50"],
  ["tolls 4.50", "vehicle", "4.50"],
  ["tolls both ways 4.50", "vehicle", "4.50"],
  ["4.50 in tolls", "vehicle", "4.50"],
  ["tolls were 4.50 today", "vehicle", "4.50"],
  ["gas 30", "vehicle", "30.00"],
  ["put 30 in the tank", "vehicle", "30.00"],
  ["filled up the van 42", "vehicle", "42.00"],
  ["filled up, 42", "vehicle", "42.00"],
  ["gas 30 on the card", "vehicle", "30.00"],
  ["got gas 30", "vehicle", "30.00"],
  ["stopped for gas, 30", "vehicle", "30.00"],
  ["storage 60", "storage", "60.00"],
  ["paid the storage unit 60", "storage", "60.00"],
  ["storage unit rent 60", "storage", "60.00"],
  ["storage was 60 this month", "storage", "60.00"],
  ["paid 60 for storage", "storage", "60.00"],
  ["booth rent 120", "fees", "120.00"],
  ["booth at the flea market 25", "fees", "25.00"],
  ["phone bill 45", "other", "45.00"],
  ["phone bill was 45", "other", "45.00"],
  ["paid the phone bill 45", "other", "45.00"],
  ["shop rent 300", "storage", "300.00"],
  ["rent 300 for the workshop", "storage", "300.00"],
  ["business cards 22", "other", "22.00"],
  ["price tags 8", "other", "8.00"],
  ["boosted the desk listing 5", "fees", "5.00", [DESK]],
  ["paid 5 to boost the desk", "fees", "5.00", [DESK]],
  ["boost 5 on the desk", "fees", "5.00", [DESK]],
  ["coffee and donuts for the helpers 14", "other", "14.00"],
  ["paid a kid 20 to help load", "help", "20.00"],
  ["gave my buddy 20 for helping move the desk", "help", "20.00", [DESK]],
  ["electric bill for the shop 38", "other", "38.00"],
  ["insurance 30 this month", "other", "30.00"],
];
const OTHER_TAILS: readonly string[] = [
  "",
  ", for the shop",
  ", paid cash",
  " yesterday",
  ", ugh",
  ", general shop expense",
  ", put it on the card",
];

export function others(): Cell[] {
  return OTHERS.flatMap(([note, category, amount, pieces = []], o) =>
    OTHER_TAILS.flatMap((tail, t) => {
      const scene: Scene = (o + t) % 2 ? "quiet" : "spoken";
      if (/shop/.test(tail) && (pieces.length > 0 || /workshop/.test(note))) return [];
      if (tail === " yesterday" && /month|week|today|for the day/.test(note)) return [];
      if (/card|cash/.test(tail) && /card$/.test(note)) return [];
      const more =
        tail === " yesterday"
          ? { day: "2026-06-12" }
          : /cash/.test(tail)
            ? { method: "cash" }
            : /card/.test(tail)
              ? { method: "card" }
              : {};
      return [
        cell("other costs", scene, `${scene} | ${note} | ${tail}`, note + tail, [
          { kind: "spend", pieces, amount, category, ...more },
        ]),
      ];
    }),
  );
}

/** What is no cost of ours, or none yet: nothing is recorded, whether asked or not. */
const NONE: readonly string[] = [
  "need to buy {t}, 21",
  "need {t}, about 21",
  "gonna get {t} tomorrow, 21",
  "thinking of getting {t} for 21",
  "{t} is 21 at the store",
  "{t} would be 21",
  "{t} costs 21 now, crazy",
  "saw {t} for 21",
  "didn't buy the {t}, 21 is too much",
  "the neighbor bought {t} for his desk, 21",
  "should i get {t} for 21 for the shop",
  "almost bought {t} for 21",
  "{t} 21 at the big store vs 18 online",
  "{t} was going to be 21 so i skipped it",
  "if i buy {t} its 21",
  "{t} 12 and change",
  "{t} was 12 something for the desk",
  "not buying {t} for the shop at 21",
  "put {t} on the list, 21",
  "will put the {t} on the card, 21",
  "half of the {t} was 21",
  "he paid 21 for {t}",
  "{t} for the shop",
  "{t} 2 for the desk 3 for the dresser",
  "took back the {t}, got 6 back",
  "returned the {t} for 21",
];

export function none(): Cell[] {
  return (["spoken", "quiet"] as const).flatMap((scene) =>
    NONE.flatMap((way, w) =>
      ["", ", for the shop", ", not for the desk"].map((tail, t) => {
        const { thing } = THINGS[(w + t) % THINGS.length]!;
        const line = filled(way, { t: thing }) + (/shop|desk|dresser/.test(way) ? "" : tail);
        return {
          ...cell("no cost", scene, `${scene} | ${way} | ${tail} | ${thing}`, line, []),
          ask: "either" as const,
        };
      }),
    ),
  );
}
