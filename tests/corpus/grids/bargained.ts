import { type Cell, filled } from "./cells.ts";

/* Prices as they were bargained over, of pieces bought and of pieces sold: the fact is the deed, and the last price that stood. */

const TODAY = "2026-06-13";
const SHOP: readonly string[] = [
  "@at 2026-06-01T15:00:00Z",
  "bought dresser 35",
  "bought desk 50",
  "bought hutch 80",
  "listed desk 120",
  "listed hutch 240",
  `@at ${TODAY}T15:00:00Z`,
];

const OPENERS: readonly string[] = ["", "ok so ", "so ", "well, ", "yard sale: "];
const TAILS: readonly string[] = ["", " lol", ", not bad"];
const ANYBODY: readonly string[] = [
  "guy",
  "the guy",
  "he",
  "she",
  "the lady",
  "this old man",
  "they",
  "dude",
];

/** {who} asks {ask} for {x}, {bid} is named in between, and {price} is paid. */
const BOUGHT: readonly string[] = [
  "{who} wanted {ask} for the {x}, talked him down, paid {price}",
  "{who} was asking {ask} for the {x}, got it for {price}",
  "{who} had the {x} listed at {ask}, paid {price}",
  "{who} had a {x} marked {ask}, offered {price} and got it",
  "{who} started at {ask} for the {x}, ended up paying {price}",
  "bought a {x} {price}, {who} wanted {ask}",
  "bought a {x} for {price}, {who} was asking {ask}",
  "got the {x} for {price} down from {ask}",
  "{who} asked {ask} for the {x} i said {price} and he took it, so bought it",
  "paid {price} for a {x}, {who} wanted {ask} originally",
  "{who} said {ask} for the {x}. offered {price}. paid {price} cash",
  "haggled a {x} down from {ask} to {price}, bought it",
  "talked her down from {ask} to {price} on a {x} and bought it",
  "tag said {ask} on a {x} but i got it for {price}",
  "the {x} was marked {ask}, bought it for {price}",
  "{who} wouldn't go below {price} on the {x}, bought it at that",
  "{who} wanted {ask}, i offered {bid}, we met at {price}, bought the {x}",
  "{who} wanted {ask}, got the {x} for {price}",
  "they wanted {ask} for the {x}, managed to get it for {price}",
  "{who} wanted {ask} for the {x}. too much for me but talked it down and paid {price} in the end",
  "bought the {x}. wanted {ask}, paid {price}",
  "bought a {x} {price} (asking was {ask})",
  "{who} wanted {ask} for the {x}, paid {price}, had to haggle",
  "saw a {x} for {ask}, got it for {price}",
  "a {x} was {ask}, offered {price}, done, bought it",
  "knocked 10 off the {x} and paid {price}",
  "{who} let the {x} go for {price} even though he wanted {ask}",
  "went to look at a {x}, {who} wanted {ask}, paid {price}",
  "told her {bid} for the {x}, she said {ask}, paid {price}",
  "the seller came down to {price} on a {x} so i bought it",
];

/** {who} names {bid}, {ask} was asked, and {price} is paid for {x}. */
const SOLD: readonly string[] = [
  "{who} offered {bid} for the {x}, i said no, sold it for {price}",
  "{who} offered {bid} for the {x}, countered {ask}, we met at {price}, sold",
  "{who} wanted the {x} for {bid} but i got {price}, sold",
  "was asking {ask} for the {x} took {price} cash",
  "{who} talked me down to {price} on the {x}, sold",
  "{who} talked me down from {ask} to {price}, sold the {x}",
  "let the {x} go for {price}, {who} haggled",
  "sold the {x} for {price}, {who} wanted it for {bid}",
  "sold the {x} {price}, was asking {ask}",
  "sold the {x} for {price}, down from {ask}",
  "sold the {x} for {price} instead of {ask}",
  "{who} tried to get the {x} for {bid}, held firm, sold for {price}",
  "{who} tried to lowball me at {bid} but paid {price} for the {x} in the end",
  "{who} came for the {x}, offered {bid}, i said {price}, they paid {price}",
  "sold the {x}, {who} offered {bid} at first but paid {price}",
  "{who} paid {price} for the {x}, started at {bid}",
  "knocked 20 off the {x}, sold for {price}",
  "{x} sold {price} ({who} wanted it for {bid})",
  "{x} sold, wanted {ask}, got {price}",
  "{who} offered me {bid} for the {x}, talked him up to {price}, sold",
  "{who} asked if id take {bid} for the {x}, said {price}, he paid {price} and took it",
  "he only had {price} on him so i let the {x} go for {price}",
];

/** Nothing of it is done: asked, or passed by. */
const OPEN: readonly string[] = [
  "guy offered {bid} for the desk, told him no",
  "she wanted the desk for {bid}, i passed",
  "he wanted {ask} for a sideboard, walked away",
  "they want {ask} for the sideboard, thinking about it",
  "someone offered {bid} on the desk, countered {ask}, waiting",
  "he wouldn't go under {ask} for the trunk so i left",
  "marla offered {bid} for the desk but hasn't paid",
  "seller wants {ask}, ill offer {bid} tomorrow",
];

const PURCHASES = [
  { ask: 80, bid: 45, price: 55, x: "sideboard" },
  { ask: 120, bid: 70, price: 85, x: "rocking chair" },
  { ask: 45, bid: 20, price: 30, x: "trunk" },
];
const SALES = [
  { ask: 120, bid: 80, price: 100, x: "desk", number: 2 },
  { ask: 240, bid: 180, price: 215, x: "hutch", number: 3 },
];

interface Values {
  ask: number;
  bid: number;
  price: number;
  x: string;
}

/** Each form with each opener and tail, and everybody in turn. */
function cells(forms: readonly string[], values: Values, fact: Record<string, unknown>): Cell[] {
  const said = { ...values, ask: `${values.ask}`, bid: `${values.bid}`, price: `${values.price}` };
  return forms.flatMap((form, row) =>
    OPENERS.flatMap((opener, column) =>
      TAILS.map((tail, last) => {
        const who = ANYBODY[(row + column + last) % ANYBODY.length]!;
        const line = `${opener}${filled(form, { ...said, who })}${tail}`;
        return {
          id: `${form} | ${opener} | ${tail} | ${values.x} | ${line}`,
          class: "a price bargained over",
          on: TODAY,
          before: [...SHOP],
          line,
          facts: [fact],
          ask: false as const,
        };
      }),
    ),
  );
}

export function bargained(): Cell[] {
  const open = OPEN.map((form) => filled(form, { ask: "110", bid: "80" }));
  return [
    ...PURCHASES.flatMap((one) =>
      cells(BOUGHT, one, { kind: "buy", name: one.x, amount: `${one.price}.00`, pieces: [4] }),
    ),
    ...SALES.flatMap((one) =>
      cells(SOLD, one, { kind: "sell", pieces: [one.number], amount: `${one.price}.00` }),
    ),
    ...open.map((line) => ({
      ...{ id: `open | ${line}`, class: "a price not agreed on", on: TODAY, before: [...SHOP], line },
      facts: [],
      ask: "either" as const,
    })),
  ];
}
