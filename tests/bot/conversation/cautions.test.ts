import { afterAll, afterEach, beforeAll, describe, expect, it, test } from "vitest";
import { HAZARDS } from "../../../core/cautions/hazards.ts";
import { rowsOf } from "../../../core/phone.ts";
import { type Chat, openChat } from "./chat.ts";

let chat: Chat | undefined;
afterEach(() => {
  chat?.end();
  chat = undefined;
});

function lineOf(id: string): string {
  const hazard = HAZARDS.find((each) => each.id === id);
  if (!hazard) throw new Error(`no hazard ${id}`);
  return hazard.line;
}

/** The ids of the hazards whose lines stand in a reply. */
function saidIn(text: string): string[] {
  return HAZARDS.filter(({ line }) => text.includes(line)).map(({ id }) => id);
}

let stage: Chat;
let toFresh: () => void;
beforeAll(() => {
  stage = openChat();
  toFresh = stage.keep();
});
afterAll(() => stage.end());

/** The last of the notes is the one whose reply is looked at. */
function replyTo(notes: readonly string[]): string {
  toFresh();
  return notes.map((note) => stage.say(note).text).at(-1)!;
}

interface Ways {
  /** Notes before, on the books when the hazard is spoken of. */
  before?: string[];
  ways: string[];
}

/** Every hazard in several ways of saying it: some are recorded, some asked about, some only an appointment or a plan. */
const SAYINGS: Record<string, Ways> = {
  crib: {
    ways: [
      "bought drop side crib 25",
      "dropside crib 25 yard sale",
      "picked up a drop-side crib for 25",
      "crib with the side that drops, 20 bucks",
      "free cribb from the neighbor",
      "sold the baby bed 40 cash",
      "might list the crib tomorrow",
    ],
  },
  "children's piece": {
    ways: [
      "bought kids dresser 30",
      "got a kid's desk 15",
      "rocking horse 12 flea market",
      "bought high chair 8",
      "highchair 5 garage sale",
      "picked up a bunk bed 60",
      "changing table free",
      "bought a bookcase for the nursery 20",
      "someone offered 40 for the toddler bed",
      "bought childrens table and chairs set 35",
    ],
  },
  "recall of children's piece": {
    before: ["bought crib 20", "bought toy box 10", "bought high chair 8"],
    ways: ["listed crib 60", "listed the toy box at 40", "posted high chair 25"],
  },
  latch: {
    ways: [
      "bought cedar chest 40",
      "free hope chest from grandma",
      "steamer trunk 35 auction",
      "picked up a blanket box 15",
      "found an old footlocker at the curb",
    ],
  },
  "tip-over": {
    before: ["bought dresser 30", "bought bookcase 20", "bought tv stand 15", "bought armoire 50"],
    ways: [
      "listed dresser 190",
      "posted the bookcase for 80",
      "sold tv stand 60 cash",
      "deposit 20 on the armoire",
      "sold bookcase 75",
    ],
  },
  recall: {
    before: ["bought dresser 30", "finished dresser", "bought chest of drawers 40", "bought tall boy 25"],
    ways: [
      "listed dresser 190|relisted dresser 185",
      "listed chest of drawers 150|listed chest of drawers 140",
      "listed tallboy 120|listed tallboy 110",
    ],
  },
  mattress: {
    ways: [
      "bought mattress 10",
      "free mattres and box spring curb",
      "got a bed with mattress 40",
      "box spring 5 yard sale",
    ],
  },
  bugs: {
    before: ["bought chair 20"],
    ways: [
      "chair has bed bugs",
      "found bedbugs in the chair, trashed it",
      "wood has termites",
      "powder post beetles in the chair leg",
    ],
  },
  "used upholstery": {
    ways: [
      "free sofa off the curb",
      "bought recliner 20",
      "got a wingback chair 35 estate sale",
      "picked up loveseat 40",
    ],
  },
  "redone upholstery": {
    before: ["bought armchair 20"],
    ways: [
      "reupholstered armchair 3h",
      "new foam 30 for armchair",
      "upholstery fabric 38 for armchair",
      "recovered the seats with new fabric 25",
      "reuphostered the armchair",
    ],
  },
  "restricted material": {
    ways: [
      "bought desk with ivory inlay 60",
      "box with ivory knobs 15",
      "bought brazilian rosewood credenza 200",
      "tortoiseshell mirror 20 estate sale",
    ],
  },
  radium: {
    ways: [
      "bought clock with radium dial 15",
      "mantel clock with glow in the dark hands 20",
      "clock has a luminous dial",
    ],
  },
  "children's paint": {
    before: ["bought kids desk 15", "bought crib 20"],
    ways: [
      "paint 12 for kids desk",
      "2h sanding the crib",
      "stripper 14 for kids desk",
      "gonna repaint the kids desk",
    ],
  },
  "old paint": {
    before: [
      "bought vintage dresser 40",
      "bought painted hutch 35",
      "bought chair 10",
      "bought antique door 20",
    ],
    ways: [
      "2h sanding vintage dresser",
      "scraped the hutch 1h",
      "heat gun 30 for the dresser",
      "stripping the original paint off the chair",
      "sandpaper 8 for antique door",
      "found lead paint under the chair finish",
      "should i heat gun the old door",
    ],
  },
  asbestos: {
    ways: [
      "table has old vinyl tile on top",
      "scraped the black mastic off the table",
      "old stove pad 5 yard sale",
      "linoleum top on the desk, sanding it off",
      "asbestos pad under the cabinet",
    ],
  },
  "stone dust": {
    before: ["bought marble top table 60"],
    ways: [
      "1h polishing the marble top table",
      "cut the marble 1h",
      "cutting tile for the table top",
      "sanded the marble table 2h",
    ],
  },
  wiring: {
    before: ["bought lamp 10"],
    ways: [
      "rewired lamp 1h",
      "lamp kit 12",
      "new cord 8 for lamp",
      "re-wiring the lamp tonight",
      "socket 4 for lamp",
    ],
  },
  mold: {
    before: ["bought dresser 20"],
    ways: [
      "dresser smells musty",
      "cleaned mold off the dresser 1h",
      "bought moldy chair 5",
      "water damaged table 10",
      "mildew on the back panel",
    ],
  },
  "dust of old finish": {
    before: ["bought desk 20"],
    ways: [
      "2h sanding off the old finish on desk",
      "sanded original varnish off the desk",
      "scraped old lacquer from desk 1h",
    ],
  },
  "tropical wood": {
    before: ["bought teak table 40", "bought mahogany chair 20", "bought table 20"],
    ways: ["2h sanding teak table", "cut down the mahogany chair legs 1h", "planing teak table 1h"],
  },
  dust: {
    before: ["bought desk 20", "bought shelf 5"],
    ways: [
      "cutting mdf for the shelf",
      "mdf 18 for desk",
      "sanded desk 2h inside",
      "sanding the desk with no mask",
      "particle board 12",
    ],
  },
  "wood dust": {
    before: ["bought desk 20"],
    ways: ["2h sanding desk", "sanded the desk 45 min", "sanding desk 1.5h"],
  },
  lifting: {
    before: ["bought desk 20"],
    ways: [
      "carried the desk down the stairs",
      "bought heavy table 40",
      "lifting the armoire tomorrow",
      "desk goes to a third floor walk-up",
      "free upright piano",
    ],
  },
  "power tools": {
    ways: [
      "table saw 120",
      "bought a router 60",
      "angle grinder 45 card",
      "belt sander 30 yard sale",
      "used the jointer all day",
    ],
  },
  "methylene chloride": {
    ways: [
      "methylene chloride stripper 18",
      "got some DCM stripper 20",
      "aircraft remover 22",
      "methylen chloride 15",
    ],
  },
  lye: {
    before: ["bought door 10"],
    ways: ["lye 9", "lye stripper 15 for door", "dip and strip 80 for door", "caustic soda 7"],
  },
  "oily rags": {
    before: ["bought desk 20"],
    ways: [
      "danish oil 12 for desk",
      "boiled linseed oil 9",
      "oil-based stain 11 for desk",
      "stain 9.99 for desk",
      "varnished the desk 1h",
      "BLO 8",
      "tung oil 14 for desk",
      "gel stain 16",
    ],
  },
  solvents: {
    ways: [
      "mineral spirits 12",
      "paint thinner 8.50",
      "acetone 6",
      "turpentine 9",
      "denatured alcohol 11",
      "turpentne 9",
      "lacquer thinner 13",
    ],
  },
  stripper: {
    before: ["bought desk 20"],
    ways: [
      "stripper 14",
      "citrus stripper 18 for desk",
      "paint remover 16",
      "chemically stripped the desk 2h",
    ],
  },
  fumes: {
    before: ["bought desk 20"],
    ways: [
      "spray paint 6 for desk",
      "spraypaint 5.50",
      "lacquer 19",
      "polyurethane 22",
      "polyurathane 22",
      "epoxy 15 for desk",
      "spray adhesive 9",
      "sprayed desk 1h",
      "poly 18 for desk",
    ],
  },
  bleach: {
    before: ["bought desk 20"],
    ways: ["wood bleach 14", "bleached the desk 1h", "oxalic acid 9 for desk", "bleaching the desk tomorrow"],
  },
  "wrong paint": {
    ways: ["marine paint 30", "boat paint 25 for desk", "barn paint 12 for bench", "industrial enamel 20"],
  },
  overpayment: {
    before: ["bought desk 20"],
    ways: [
      "deposit 50 on desk cashier's check",
      "buyer overpaid and wants the rest back",
      "my movers will pick up the desk",
      "sold desk 200 certified check, send the extra back",
    ],
  },
  meeting: {
    before: ["bought desk 20"],
    ways: [
      "meeting a guy with cash at 5",
      "buyer coming tonight to see the desk",
      "deposit 20 on desk, pickup tonight",
      "lady is picking up the desk at 7",
      "gave him my address",
    ],
  },
  "sales tax": {
    ways: [
      "seller permit 25",
      "charged 8 sales tax on the lamp",
      "booth rent 60",
      "sold desk 100 plus sales tax",
    ],
  },
  helpers: {
    before: ["bought desk 20"],
    ways: [
      "paid cousin 30 to help move the desk",
      "paid helper 40",
      "hired two guys to move the desk",
      "paid my nephew 20 for sanding",
    ],
  },
};

describe("every hazard speaks, whatever is made of the note", () => {
  const rows = Object.entries(SAYINGS).flatMap(([id, { before = [], ways }]) =>
    ways.map((way) => [id, way, [...before, ...way.split("|")]] as const),
  );
  it.each(rows)("%s: %s", (id, _, notes) => {
    const reply = replyTo(notes);
    expect(reply, reply).toContain(lineOf(id));
    expect(saidIn(reply)).toEqual([id]);
  });

  test("each has at least three ways of saying it", () => {
    expect(Object.keys(SAYINGS).sort()).toEqual(HAZARDS.map(({ id }) => id).sort());
    for (const { ways } of Object.values(SAYINGS)) expect(ways.length).toBeGreaterThanOrEqual(3);
  });
});

describe("a caution is one line that defers to the rules of the place, with its source", () => {
  it.each(HAZARDS.map((hazard) => [hazard.id, hazard] as const))("%s", (_, { line, source }) => {
    expect(line).toMatch(/\b(?:local|licensed)\b/);
    expect(rowsOf(line)).toBeLessThanOrEqual(2);
    expect(source.length).toBeGreaterThan(12);
  });
});

describe("once for each piece", () => {
  test("the second chest gets its own line", () => {
    chat = openChat();
    chat.say("bought dresser 30");
    chat.say("bought armoire 50");
    expect(saidIn(chat.say("sold dresser 190 cash").text)).toEqual(["tip-over"]);
    expect(saidIn(chat.say("listed armoire 240").text)).toEqual(["tip-over"]);
    // What was left unsaid of it comes with its next note, then nothing more.
    expect(saidIn(chat.say("relisted armoire 230").text)).toEqual(["recall"]);
    expect(saidIn(chat.say("sold armoire 230").text)).toEqual([]);
  });

  test("it is remembered across a restart", () => {
    chat = openChat();
    chat.say("bought dresser 30");
    chat.say("listed dresser 190");
    chat.restart();
    expect(saidIn(chat.say("deposit 20 on dresser").text)).toEqual(["recall"]);
    expect(saidIn(chat.say("sold dresser 190").text)).toEqual([]);
  });

  test("what waits for an answer has been told: its answer brings no second line", () => {
    chat = openChat();
    const asked = chat.say("bought crib yard sale");
    expect(saidIn(asked.text)).toEqual(["crib"]);
    expect(asked.text).toContain("?");
    expect(saidIn(chat.say("25").text)).toEqual([]);
    expect(chat.statement().pieces).toHaveLength(1);
    expect(saidIn(chat.say("2h work on crib").text)).toEqual([]);
  });

  test("an edited note that brings a hazard in is told of it", () => {
    chat = openChat();
    chat.say("bought bed 20", { message: "first" });
    expect(saidIn(chat.say("bought drop side crib 20", { message: "first", edited: true }).text)).toEqual([
      "crib",
    ]);
  });

  test("no line of an edited block speaks for the piece of another line", () => {
    const listing = ["bought kids desk 20", "bought lamp 5", "listed lamp 40"];
    chat = openChat();
    const asNew = chat.say(listing.join("\n"), { message: "new" }).text;
    expect(saidIn(asNew)).toEqual(["children's piece"]);
    chat.end();
    chat = openChat();
    chat.say("bought desk 20\nbought lamp 5\nlisted lamp 40", { message: "block" });
    expect(saidIn(chat.say(listing.join("\n"), { message: "block", edited: true }).text)).toEqual(
      saidIn(asNew),
    );
  });
});

describe("one line a reply, and never in the way of the money", () => {
  test("a block of notes gets the worst of all", () => {
    chat = openChat();
    const { text } = chat.say("bought dresser 30\npaint thinner 8\nbought drop-side crib 20\nbooth fee 20");
    expect(saidIn(text)).toEqual(["crib"]);
  });

  test.each(["bought drop side crib 25 yard sale", "bought dresser 30", "danish oil 12", "bought sofa 40"])(
    "%s: what the fact moved is all there, in five lines",
    (note) => {
      chat = openChat();
      chat.say("loan 9000 at 5.5%");
      const before = ledgerReplies(chat);
      chat.say(note);
      const [reply, aside, ...more] = ledgerReplies(chat).slice(before.length);
      expect(rowsOf(reply!)).toBeLessThanOrEqual(5);
      expect(more).toEqual([]);
      if (aside) expect(HAZARDS.map(({ line }) => line)).toContain(aside);
    },
  );
});

/** The texts queued so far, oldest first. */
function ledgerReplies({ ledger }: Chat): string[] {
  const texts: string[] = [];
  for (let id = 1; ledger.outbox.get(id); id++) {
    const { body } = ledger.outbox.get(id)!;
    if (body.kind === "text") texts.push(body.reply.text);
  }
  return texts;
}

describe("a note that the books refuse brings no caution", () => {
  test.each([
    "bleach 6 for #9",
    "sold #7 drop side crib 20",
    "2h sanding #9",
    "mineral spirits 8 for #12",
    "returned crib 20",
  ])("%s", (note) => {
    const reply = replyTo(["bought nightstand 10", note]);
    expect(reply).toMatch(/There is no|not sold|never|No /);
    expect(saidIn(reply)).toEqual([]);
  });

  test("what is recorded in the same message keeps its own", () => {
    const reply = replyTo(["bought desk 20", "danish oil 12 for desk\nbleach 6 for #9"]);
    expect(saidIn(reply)).toEqual(["oily rags"]);
  });
});

describe("ordinary notes bring no caution", () => {
  test.each([
    "bought dresser 30 yard sale",
    "bought desk 45 and chair 10 garage sale",
    "picked up 2 chairs 22 estate sale",
    "sold desk 165 check",
    "sold nightstand 60 to the lady with kids",
    "bought baby blue chair 12",
    "price drop side table 40",
    "paint 12.50 for desk",
    "knobs 8 for desk",
    "foam brush 3",
    "oil change 45",
    "motor oil 12",
    "drove 24 miles to the swap meet",
    "bought army cot 10",
    "bought corn crib boards 15",
    "molding 12 for desk",
    "painted ivory desk 20",
    "bought piano bench 14",
    "listed desk 90",
    "i think i overpaid but i bought the bar cart for 38",
    "trashed the mattress",
    "paid loan 200",
    "tips 20",
    "couch from upstairs neighbor sold 60",
    "how much did i make on the crib",
    "landing page 12",
    "extension cord 15",
    "paid 40 for the desk",
    "dinner 18 with the guys",
    "pest control bill 30",
  ])("%s", (note) => {
    const reply = replyTo(["bought nightstand 10", "bought lamp table 10", note]);
    expect(saidIn(reply)).toEqual([]);
  });
});
