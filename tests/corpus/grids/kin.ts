import { type Cell, filled, HE, type Pronouns, SHE } from "./cells.ts";

/* Kin who act for the shop: each way to tell of it, by each of them, and with "he" or "she" for them. */

const TODAY = "2026-06-13";
const SHOP: readonly string[] = [
  "new loan 9000 at 5.5%",
  "bought dresser 35",
  "bought desk 50",
  "bought lamp 8",
  "listed dresser 150",
  "listed lamp 40",
];

const KIN: readonly (Pronouns & { said: string; by: string })[] = [
  { said: "mom", by: "mom", ...SHE },
  { said: "my mother", by: "mother", ...SHE },
  { said: "dad", by: "dad", ...HE },
  { said: "my wife", by: "wife", ...SHE },
  { said: "hubby", by: "hubby", ...HE },
  { said: "my son", by: "son", ...HE },
  { said: "brother in law", by: "brother in law", ...HE },
  { said: "my sister", by: "sister", ...SHE },
];

/** {H}: who; {he}, {him}, {his}: the pronouns for them. `by`: the fact says who did it. */
const TOLD: readonly { wants: Record<string, unknown>; by: boolean; forms: readonly string[] }[] = [
  {
    wants: { kind: "buy", pieces: [4], amount: "20.00", name: "bench" },
    by: true,
    forms: [
      "{H} bought a bench 20",
      "{H} picked up a bench for 20",
      "{H} got a bench, 20",
      "{H} found a bench 20 at a yard sale",
      "{H} found a bench at the church sale, 20, {he} paid cash",
      "{H} just called from the flea market, {he} bought us a bench for 20",
      "{H} got us a bench, 20",
      "{H} picked up a bench for me, 20 bucks",
      "{H} grabbed a bench for us 20 this morning",
      "{H} also got a bench for 20",
      "{H} is with me and {he} picked up a bench 20",
      "{H} called, {he} bought a bench 20",
      "{H} brought home a bench, {he} paid 20 for it",
      "bench 20, {H} bought it",
      "{H} went to an auction and got a bench for 20",
      "{H} snagged a bench 20 on {his} lunch break",
      "{H} paid 20 for a bench",
      "{H} was at an estate sale and got a bench for 20",
      "{H} texted, {he} found a bench for 20",
      "{H} bought a bench, 20, {he} loves it",
      "{H} scored a bench at the thrift store for 20 bucks",
      "a bench {H} found for 20",
      "{H} stopped at a yard sale and bought a bench for 20",
      "{H} got a bench off a coworker for 20",
    ],
  },
  {
    wants: { kind: "buy", pieces: [4], amount: "20.00", name: "bench" },
    by: false,
    forms: [
      "out with {H}, bought a bench 20",
      "{H} and i bought a bench 20",
      "me and {H} picked up a bench for 20",
      "went with {H} to a yard sale and got a bench, 20",
      "bought a bench 20 with {H}",
      "{H} helped me load it, bench 20 at a yard sale",
    ],
  },
  {
    wants: { kind: "buy", pieces: [4], amount: "0.00", name: "bench" },
    by: true,
    forms: [
      "{H} found a bench on the curb",
      "{H} got a free bench from a coworker",
      "{H} brought me a free bench",
    ],
  },
  {
    wants: { kind: "spend", pieces: [2], amount: "12.00" },
    by: true,
    forms: [
      "{H} bought paint 12 for the desk",
      "{H} got paint for the desk, 12",
      "{H} spent 12 on paint for the desk",
      "{H} paid for the desk paint, 12",
      "paint 12 for the desk, {H} got it",
      "{H} grabbed knobs for the desk while {he} was out, 12",
      "{H} picked up stain for the desk on {his} way home, 12",
    ],
  },
  {
    wants: { kind: "spend", pieces: [], amount: "12.00" },
    by: true,
    forms: ["{H} got brushes 12 at the hardware store", "{H} paid 12 at the dump"],
  },
  {
    wants: { kind: "work", pieces: [2], minutes: 120 },
    by: true,
    forms: [
      "{H} sanded the desk 2 hours",
      "{H} worked on the desk for 2 hours",
      "{H} spent 2 hours sanding the desk",
      "{H} sanded the desk, took {him} 2 hours",
      "{H} put in 2 hours on the desk",
      "{H} did 2 hours on the desk",
      "2 hours on the desk by {H}",
      "{H} stripped the desk for 2 hours",
      "{H} recovered the desk, 2 hours",
      "{H} painted the desk today, two hours",
      "{H} worked 2h on the desk while i was out",
      "{H} spent two hours on the desk drawers",
      "{H} took two hours to strip the desk",
      "{H} cleaned and waxed the desk, 2h",
      "{H} was at the desk for 2 hours",
      "{H} glued the desk back together, 2 hours",
      "{H} sanded the desk for 2 hours, {he} is a machine",
    ],
  },
  {
    wants: { kind: "work", pieces: [2], minutes: 120 },
    by: false,
    forms: [
      "{H} and i sanded the desk 2 hours",
      "2 hours on the desk with {H}",
      "sanded the desk with {H}, 2 hours",
    ],
  },
  {
    wants: { kind: "finish", pieces: [2] },
    by: false,
    forms: [
      "{H} finished the desk",
      "{H} got the desk done",
      "{H} just finished the desk",
      "{H} finished up the desk today",
      "desk is done, {H} finished it",
    ],
  },
  {
    wants: { kind: "list", pieces: [2], amount: "120.00" },
    by: true,
    forms: [
      "{H} listed the desk for 120",
      "{H} listed the desk 120",
      "{H} put the desk up for 120",
      "{H} posted the desk at 120",
      "{H} took pictures and listed the desk for 120",
      "{H} put the desk online, 120",
    ],
  },
  {
    wants: { kind: "reprice", pieces: [1], listPrice: "130.00" },
    by: true,
    forms: [
      "{H} dropped the dresser to 130",
      "{H} lowered the dresser to 130",
      "{H} cut the dresser to 130",
      "{H} marked the dresser down to 130",
    ],
  },
  {
    wants: { kind: "hold", pieces: [1], deposit: "20.00" },
    by: false,
    forms: [
      "{H} took a 20 deposit on the dresser",
      "{H} took 20 down on the dresser",
      "{H} got a 20 deposit on the dresser from amy",
      "{H} took a 20 deposit on the dresser while i was at work",
      "{H} collected a 20 deposit for the dresser",
    ],
  },
  {
    wants: { kind: "sell", pieces: [1], amount: "140.00" },
    by: true,
    forms: [
      "{H} sold the dresser 140",
      "{H} sold the dresser for 140 cash",
      "{H} sold the dresser 140 while i was at work",
      "{H} sold the dresser to a neighbor for 140",
      "{H} knew somebody, {he} sold the dresser for 140",
      "{H} just sold the dresser, 140",
      "{H} called, {he} sold the dresser for 140",
      "{H} let the dresser go for 140",
      "{H} got 140 for the dresser",
    ],
  },
  {
    wants: { kind: "drive", miles: "24" },
    by: true,
    forms: [
      "{H} drove 24 miles",
      "{H} drove 24 miles to get the desk",
      "{H} went 24 miles for the desk",
      "{H} put 24 miles on the truck",
    ],
  },
];

export function kin(): Cell[] {
  return TOLD.flatMap(({ wants, by, forms }) =>
    forms.flatMap((form) =>
      KIN.map(({ said, by: name, ...pronouns }) => ({
        id: `${form} | ${said}`,
        class: "kin who act",
        on: TODAY,
        before: [...SHOP],
        line: filled(form, { H: said, ...pronouns }),
        facts: [by ? { ...wants, by: name } : wants],
        ask: false as const,
      })),
    ),
  );
}
