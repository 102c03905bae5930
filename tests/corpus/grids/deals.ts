import { type Cell, filled, HE, type Pronouns, SHE, THEY } from "./cells.ts";

/*
 * Deals with buyers over several messages, told as people text them: each way with each of its tails, by one buyer after
 * the other. What must not turn stands below them.
 */

const TODAY = "2026-05-09";

/** Four listed pieces and a loan, told in March. */
const SHOP: readonly string[] = [
  "@at 2026-03-20T15:00:00Z",
  "bought desk 20",
  "bought hutch 40",
  "bought lamp 8",
  "bought trunk 15",
  "listed desk 120",
  "listed hutch 250",
  "listed lamp 45",
  "listed trunk 95",
  "new loan student 9000 5%",
  `@at ${TODAY}T15:00:00Z`,
];

interface Buyer extends Pronouns {
  /** In the subject's place, and as plainly as a note before them has it. */
  who: string;
  plain: string;
}

const BUYERS: readonly Buyer[] = [
  { who: "tom", plain: "tom", ...HE },
  { who: "lena", plain: "lena", ...SHE },
  { who: "a guy with a beard", plain: "guy with a beard", ...HE },
  { who: "the lady down the street", plain: "lady", ...SHE },
  { who: "a young couple", plain: "couple", ...THEY },
  { who: "some college kid", plain: "college kid", ...HE },
  { who: "lady with the twins", plain: "lady", ...SHE },
  { who: "the neighbor", plain: "neighbor", ...HE },
];

const MEMBERS: readonly string[] = ["my son", "my wife", "mom", "my brother in law", "dad"];

interface Row {
  class: string;
  /** What stands before, behind the shop. */
  before?: readonly string[];
  wants: Record<string, unknown>[];
  ways: readonly string[];
  openers?: readonly string[];
  tails?: readonly (string | { said: string; wants: Record<string, unknown> })[];
  ask?: Cell["ask"];
  or?: Record<string, unknown>[][];
}

const HELD = ["{plain} put 20 down on the desk"];
const OWES = ["sold hutch 230 to {plain}, 50 still owed"];
const SOLD = ["sold desk 110 to {plain}"];
const PLAIN_OPENERS = ["", "ok ", "update: ", "so "];
const WHY_BACK = [
  "wouldn't fit through {his} door",
  "wouldnt fit up the stairs",
  "too wide for {his} hallway",
  "{he} said the color was off",
  "a drawer kept sticking",
  "{he} didn't measure right",
];
const WHY_LESS = [
  "no bites in two weeks",
  "nobody's biting",
  "no messages all week",
  "crickets so far",
  "not a single call",
  "it's been sitting a month",
  "only lowballers",
];

const ROWS: readonly Row[] = [
  {
    class: "deposit",
    wants: [{ kind: "hold", pieces: [1], deposit: "20.00" }],
    ways: [
      "{who} left 20 on the desk",
      "{who} put 20 down on the desk",
      "{who} gave me 20 to hold the desk",
      "took a 20 deposit on the desk from {who}",
      "{who} sent 20 to hold the desk",
      "{who} loved the desk, {he} left me 20 as a deposit",
      "{who} wants the desk, gave me a 20 deposit",
    ],
    tails: [
      "",
      ", coming back with {his} car",
      ", {hes} coming back sunday with a truck",
      ", rest when {he} picks it up",
      ", {his} brother comes with a truck sunday",
      " while i was loading the van",
    ],
  },
  {
    class: "deposit by a member",
    wants: [{ kind: "hold", pieces: [1], deposit: "20.00" }],
    ways: [
      "{member} took a 20 deposit on the desk",
      "{member} got a 20 deposit on the desk from {who}",
      "{member} took 20 down on the desk",
      "{member} took a deposit of 20 for the desk",
      "{who} gave {member} 20 to hold the desk",
      "{who} left 20 with {member} for the desk, a deposit",
    ],
    tails: ["", " while i was at work", " this morning", " when i was out", ", i was at work"],
  },
  {
    class: "agreed and deposit",
    wants: [{ kind: "hold", pieces: [1], deposit: "20.00", agreed: "110.00" }],
    ways: [
      "{who} agreed on 110 for the desk and sent 20 to hold it",
      "agreed on 110 for the desk with {who}, {he} sent 20 deposit by transfer",
      "agreed on 110 for the desk with {who}, 20 down",
      "{who} and i agreed on 110 for the desk, {he} left 20 down",
      "{who} agreed to 110 for the desk, put 20 down",
      "settled on 110 for the desk with {who}, {he} gave me a 20 deposit",
      "{who} is taking the desk for 110, left a 20 deposit",
    ],
    tails: ["", ", rest at pickup", ", picking it up sunday"],
  },
  {
    class: "hold till",
    wants: [{ kind: "hold", pieces: [1], until: "2026-05-11", deposit: null }],
    ways: [
      "{who} wants the desk, holding it for {him} till monday",
      "holding the desk for {who} till monday",
      "{who} can't come till monday so i'm holding the desk until then",
      "{who} asked me to hold the desk till monday, so i am",
      "desk is on hold for {who} until monday",
    ],
    openers: ["", "ok ", "ok next person, ", "new buyer, "],
  },
  {
    class: "hold till later",
    before: HELD,
    wants: [{ kind: "hold", pieces: [1], until: "2026-05-14" }],
    or: [[{ mend: true, facts: [{ kind: "hold", pieces: [1], until: "2026-05-14", deposit: "20.00" }] }]],
    ways: [
      "{he} can't come till thursday so i'm holding it until then",
      "{he} can't make it before thursday, holding it till then",
      "{he} can only come thursday, still holding the desk",
      "holding the desk till thursday for {him} now",
      "{who} can't get it till thursday, so holding it till then",
    ],
    openers: ["", "ok ", "so "],
  },
  {
    class: "picked up, rest",
    before: HELD,
    wants: [{ kind: "sell", pieces: [1], amount: "120.00" }],
    ways: [
      "{hes} back, desk gone, another 100 cash from {him}",
      "{he} came back, desk gone, paid the other 100",
      "{who} came and got the desk, paid the other 100",
      "{who} picked up the desk and paid the remaining 100",
      "{who} came for the desk, gave me the other 100",
      "desk picked up, got the last 100 from {who}",
      "{who} showed up, paid the rest, desk's gone",
      "{who} just picked up the desk, 100 cash",
      "{he} came with {his} brother and got the desk, paid the 100 left",
      "{he} paid the other 100 and took it",
    ],
    openers: PLAIN_OPENERS,
  },
  {
    class: "paid more",
    before: HELD,
    wants: [{ kind: "hold", pieces: [1], deposit: "30.00" }],
    ways: [
      "{who} gave me another 30 toward the desk",
      "{who} put another 30 down on the desk",
      "another 30 from {who} on the desk, still holding it",
      "{he} dropped off 30 more toward the desk",
    ],
    tails: ["", ", rest next week", ", still owes 70"],
  },
  {
    class: "sold, some owed",
    wants: [{ kind: "sell", pieces: [1], amount: "110.00", owed: "30.00" }],
    ways: [
      "{who} took the desk for 110, paid 80, owes me 30",
      "sold the desk to {who} for 110, {he} still {owes} 30",
      "desk gone for 110, {who} paid 80 and owes me 30",
      "sold desk 110 to {who}, 80 now, 30 still owed",
    ],
    tails: ["", ", paying me friday", " till payday"],
  },
  {
    class: "owed comes in",
    before: OWES,
    wants: [{ kind: "collect", pieces: [2], amount: "50.00" }],
    ways: [
      "{who} finally paid the other 50 for the hutch",
      "got the last 50 for the hutch from {who}",
      "{he} came by with the 50 {he} owed me",
      "{who} brought over the 50 for the hutch",
      "{he} paid me the last 50",
      "{who} sent the 50 {he} still owed on the hutch",
    ],
    openers: ["", "finally, ", "ok "],
  },
  {
    class: "part of what is owed",
    before: OWES,
    wants: [{ kind: "collect", pieces: [2], amount: "20.00" }],
    ways: [
      "{who} paid 20 of the 50 {he} {owes} me",
      "{who} gave me 20 toward the hutch, still owes 30",
      "{he} paid 20 of what {he} {owes} for the hutch",
      "got 20 from {who} on the hutch, 30 to go",
    ],
  },
  {
    class: "never paid",
    before: OWES,
    wants: [{ kind: "refund", pieces: [2], amount: "50.00", unpaid: true }],
    ways: [
      "{hes} never gonna pay me that last 50 for the hutch, writing it off",
      "{who} is never going to pay the last 50, writing it off",
      "writing off the 50 for the hutch, {who} disappeared",
      "{who} never paid the last 50 for the hutch",
      "{who} isn't going to pay the other 50 on the hutch, giving up on it",
      "i'm never seeing that 50 for the hutch, writing it off",
    ],
    openers: ["", "ok ", "yeah "],
  },
  {
    class: "out, refunded",
    before: HELD,
    wants: [{ kind: "fallthrough", pieces: [1], refunded: "20.00" }],
    ways: [
      "{who} backed out of the desk, gave {him} the 20 back",
      "{who} changed {his} mind about the desk, returned {his} 20",
      "{who} found another desk, gave {him} {his} 20 back",
      "{he} doesn't want it anymore, sent {his} deposit back",
      "{who} can't take the desk after all, refunded the 20",
      "{he} bailed, gave {him} {his} money back",
      "desk fell through, {who} got {his} 20 back",
    ],
    openers: ["", "welp ", "ugh, "],
  },
  {
    class: "out, kept",
    before: HELD,
    wants: [{ kind: "fallthrough", pieces: [1], kept: "20.00" }],
    ways: [
      "{who} never showed for the desk, keeping the 20",
      "{who} no showed, keeping {his} deposit",
      "{he} ghosted me, i'm keeping the 20",
      "{who} backed out of the desk, kept {his} 20",
      "{who} stood me up on the desk, deposit stays with me",
      "{he} never came back, keeping the deposit",
    ],
    openers: ["", "welp ", "so "],
  },
  {
    class: "out, nothing held",
    before: ["holding the desk for {plain}"],
    wants: [{ kind: "fallthrough", pieces: [1] }],
    ways: [
      "{who} never showed for the desk",
      "{who} no showed",
      "{he} backed out",
      "{who} doesn't want the desk anymore",
      "{who} changed {his} mind about the desk",
    ],
    openers: ["", "welp ", "ok "],
  },
  {
    class: "came back",
    before: SOLD,
    wants: [{ kind: "refund", pieces: [1], amount: "110.00", returned: true }],
    ways: WHY_BACK.flatMap((why) => [
      `desk came back, ${why}. gave {him} the 110 back`,
      `desk came back, ${why}, refunded 110`,
      `{who} brought the desk back, ${why}, gave {him} {his} 110 back`,
      `had to take the desk back, ${why}, refunded {him} 110`,
    ]),
    openers: ["", "ugh "],
  },
  {
    class: "up again",
    before: [...SOLD, "desk came back, refunded 110"],
    wants: [{ kind: "list", pieces: [1], amount: "105.00" }],
    ways: [
      "relisted the desk 105",
      "relisted it at 105",
      "desk is back up for 105",
      "put the desk back up at 105",
      "listed the desk again, 105",
      "re-listed desk for 105",
    ],
  },
  {
    class: "less",
    wants: [{ kind: "reprice", pieces: [2], listPrice: "210.00" }],
    ways: WHY_LESS.flatMap((why) => [
      `${why} so hutch is now 210`,
      `${why} so i dropped the hutch to 210`,
      `${why}, hutch down to 210`,
      `hutch is 210 now, ${why}`,
      `dropped the hutch to 210, ${why}`,
    ]),
  },
  {
    class: "tip",
    before: SOLD,
    wants: [{ kind: "income", amount: "10.00" }],
    ways: [
      "desk people tipped me 10 for carrying it upstairs",
      "{who} tipped me 10 for loading it",
      "{who} gave me a 10 tip for carrying the desk up",
      "the desk buyer tipped me 10 for the delivery",
      "got a 10 tip from {who} for helping carry it",
      "10 tip from {who} for bringing it over",
    ],
    openers: ["", "oh and "],
  },
  {
    class: "brought by a member",
    wants: [{ kind: "sell", pieces: [1], amount: "110.00" }],
    ways: [
      "{member} delivered the desk and collected 110 cash",
      "{member} dropped off the desk at {plain}'s place, got 110 cash",
      "{member} took the desk over to {who} and got 110 cash for it",
      "{member} met {who} and sold the desk, 110",
      "{member} handed the desk over to {who}, 110 cash",
    ],
    tails: ["", " while i was at work", " this morning"],
  },
  {
    class: "straight trade",
    wants: [{ kind: "trade", pieces: [3], name: "stool", amount: "20.00" }],
    ways: [
      "traded the lamp for a stool straight across, each worth about 20",
      "straight trade, lamp for a stool, both worth 20",
      "swapped the lamp for a stool, each worth 20",
      "traded {who} the lamp for a stool, each worth about 20",
      "swapped {who} the lamp for a stool, even trade, worth 20 each",
      "even swap with {who}, the lamp for a stool, worth about 20",
    ],
  },
  {
    class: "loan out of a sale",
    before: SOLD,
    wants: [{ kind: "pay", amount: "100.00" }],
    ways: [
      "sent 100 to the loan out of the desk money",
      "put 100 of the desk money on the loan",
      "100 of the desk money went to the loan",
      "paid 100 on the loan from the desk money",
      "paid 100 to the loan with what i got for the desk",
      "sent 100 from the desk sale to the student loan",
      "out of the desk money i sent 100 to the loan",
    ],
    openers: ["", "ok "],
  },
  {
    class: "only looked",
    wants: [{ kind: "drive", miles: "34" }],
    ways: [
      "drove 34 miles to look at a dresser",
      "34 miles to see an armoire",
      "drove 34 miles to check out a vanity",
      "went to look at a dresser, 34 miles",
      "34 mi round trip to look at a buffet",
    ],
    tails: [
      "",
      ", didn't buy it",
      ", passed on it",
      ", it was junk",
      ", already sold when i got there",
      ", too rough",
    ],
  },
];

/** What looks alike and is no such deal: nothing of it is recorded at once. */
const NOT: readonly { before?: readonly string[]; ways: readonly string[] }[] = [
  {
    ways: [
      "{who} wants to put 20 down on the desk",
      "{who} might leave 20 on the desk",
      "told {who} to leave 20 on the desk",
      "{who} will leave 20 on the desk tomorrow",
      "{who} didn't leave a deposit on the desk",
      "if {who} puts 20 down i'll hold the desk till monday",
      "{who} asked if 20 would hold the desk",
      "{member} says {who} will send 20 to hold the desk",
      "{who} never agreed on 110 for the desk",
      "{who} and i couldn't agree on 110 for the desk",
      "{who} offered 110 for the desk, no deposit",
      "{member} wouldn't take a 20 deposit on the desk",
      "{who} asked would 110 for the desk be ok, 20 down",
      "maybe drop the hutch to 210 if no bites",
      "{who} says the hutch should be 210",
      "no bites on the hutch, thinking 210",
      "thinking of trading the lamp for a stool, each worth about 20",
      "{who} wants to trade a stool for the lamp, each worth about 20",
      "could send 100 to the loan out of the desk money",
      "{member} will deliver the desk and collect 110 cash",
    ],
  },
  {
    before: HELD,
    ways: [
      "{hes} not back yet with the other 100",
      "{who} will pay the other 100 when {he} picks up the desk",
      "{he} didn't come back for the desk today",
      "{who} wants {his} 20 back",
      "{who} still owes 100 on the desk",
    ],
  },
  {
    before: OWES,
    ways: [
      "{he} says {he}'ll pay the last 50 friday",
      "{who} hasn't paid the other 50 for the hutch yet",
      "do i write off the 50 for the hutch",
      "{he} promised to bring the 50",
    ],
  },
  {
    before: SOLD,
    ways: [
      "{who} wants to bring the desk back, wouldn't fit through {his} door",
      "{who} asked for {his} 110 back on the desk",
      "{who} didn't tip me for carrying it upstairs",
      "{who} might return the desk, too wide",
    ],
  },
];

function cellsOf({
  class: kind,
  before = [],
  wants,
  ways,
  openers = [""],
  tails = [""],
  ask = false,
  or,
}: Row): Cell[] {
  let at = 0;
  return ways.flatMap((way) =>
    openers.flatMap((opener) =>
      tails.map((tail) => {
        const buyer = { ...BUYERS[at % BUYERS.length]!, member: MEMBERS[at % MEMBERS.length]! };
        at += 1;
        const { said, wants: more } = typeof tail === "string" ? { said: tail, wants: {} } : tail;
        const [first, ...others] = wants;
        return {
          id: `${kind} | ${way} | ${opener}${said} | ${buyer.who}`,
          class: kind,
          on: TODAY,
          before: [...SHOP, ...before.map((note) => filled(note, buyer))],
          line: filled(`${opener}${way}${said}`, buyer),
          facts: [{ ...first, ...more }, ...others],
          ask,
          ...(or && { or }),
        };
      }),
    ),
  );
}

/** Each way to tell of a deal, and what must not turn into one. */
export function deals(): Cell[] {
  return [
    ...ROWS.flatMap(cellsOf),
    ...NOT.flatMap((row) =>
      cellsOf({ class: "no deal", wants: [], ask: true, ...row }).map((cell) => ({ ...cell, facts: [] })),
    ),
  ];
}
