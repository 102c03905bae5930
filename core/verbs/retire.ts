import * as z from "zod";
import { checkNoDeposit, checkNotGone } from "../books/check.ts";
import { costAccountOf, moveCost } from "../books/cost.ts";
import { costOf } from "../books/piece.ts";
import type { FactRules } from "../books/rules.ts";
import { dayWords, piecesOf, subjectOf } from "../decide/echo.ts";
import { here } from "../decide/fits.ts";
import { settlePieces } from "../decide/pieces.ts";
import { show } from "../money.ts";
import { type Clause, placeAfter, says } from "../notes/clause.ts";
import {
  BROUGHT,
  CARRIED,
  TO_CHARITY,
  TO_ITS_END,
  TOSSED,
  WENT_OFF,
  WENT_TO_CHARITY,
} from "../notes/words/dialects.ts";
import { ARTICLES_WIDE } from "../notes/words/links.ts";
import { OWN_SPOTS } from "../notes/words/places.ts";
import { GIVEN_AWAY, TO_DO_WITH_IT } from "../notes/words/verbs.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    retire: { pieces?: Mention[]; how?: RetireHow };
  }
}

const rules: FactRules<"retire"> = {
  mends: ["date", "pieces", "how"],
  data: z.strictObject({ how: z.enum(["kept", "given", "scrapped"]) }),
  apply(books, fact) {
    const problem = checkNotGone(books, fact.pieces) ?? checkNoDeposit(books, fact.pieces);
    if (problem) return problem;
    for (const number of fact.pieces) {
      const piece = books.piece(number);
      piece.hold = null;
      piece.gone = fact.data.how;
      piece.goneOn = fact.day;
      moveCost(books, piece, "unsold pieces", costAccountOf(piece));
    }
    return null;
  },
};

/** It is gone, and may yet turn up or be mended. */
const LOST = [
  "got stolen",
  "was stolen",
  "got smashed",
  "was smashed",
  "got ruined",
  "was ruined",
  "broke in half",
  "fell apart",
  "smashed",
  "shattered",
  ...[
    "fell and broke",
    "fell and smashed",
    "is in pieces",
    "broke into pieces",
    "is at the dump",
    "is toast",
  ],
];

/** Where a piece stands for whoever wants it. */
const AT_THE_CURB_FREE = [
  "on the curb",
  "out on the curb",
  "out by the curb",
  "out front",
  "by the road",
  "out by the road",
].flatMap((where) =>
  ["with a free sign", "with free sign", "for free", "free", "marked free"].map((free) => `${where} ${free}`),
);

/** "gave my friend the desk to sell", "lamp given to me", "the desk stays in the garage": it has gone to nobody. */
function isForSomething(tokens: Clause["tokens"]): boolean {
  return tokens.some(({ text }, at) => {
    const next = tokens[at + 1];
    // "chair in the dumpster at 5th st": where one was found.
    if (text === "in the dumpster") return next !== undefined;
    if (/^(?:is |are )?stay/.test(text))
      return tokens
        .slice(at + 1)
        .some((token) => token.roles.place !== undefined || OWN_SPOTS.has(token.text));
    if (!next || !/(?:^|given )to$/.test(text)) return false;
    return next.roles.labor === true || next.roles.heads !== undefined || TO_DO_WITH_IT.has(next.text);
  });
}

/** "gave my niece the desk" gives it; "gave up on the desk" and "gave the lady a deal on it" give nothing. */
function isNotGiven({ tokens, head }: Clause): boolean {
  if (isForSomething(tokens)) return true;
  if (head?.text !== "gave" || tokens.some(({ text }) => GIVEN_AWAY.has(text))) return false;
  const who = placeAfter(tokens, tokens.indexOf(head) + 1, ARTICLES_WIDE);
  const what = placeAfter(tokens, who + 1, ARTICLES_WIDE);
  const isNamed = tokens[who]?.roles.person === true && !/^(?:him|her|them)$/.test(tokens[who].text);
  return !isNamed || tokens[what]?.kind !== "piece";
}

export const retire = defineVerb({
  kind: "retire",
  example: "donated the chair",
  page: "notes",
  listed: ({ data }, pieces) => `${data.how === "given" ? "gave away" : data.how} ${pieces}`,
  story: ({ fact }) => (fact.data.how === "given" ? "given away" : fact.data.how),
  books: rules,
  goesOn: { pieces: "alike", carries: ({ data: { how } }) => ({ how }) },
  reads: {
    says: [
      {
        say: [
          "keeping",
          "keep",
          "kept",
          ...[
            "hanging on to",
            "hanging onto",
            "hung on to",
            "holding on to",
            "holding onto",
            "hung onto",
            "holding on to … for ourselves",
          ],
          "decided to keep",
          ...["gonna", "going to", "will", "ill", "well", "we will", "gotta"].map(
            (will) => `${will} keep … after all`,
          ),
          "keeper",
          "not selling … keeping",
          "not selling … keep",
        ],
        with: ["named"],
        without: ["number"],
        means: { how: "kept" },
      },
      {
        say: ["keeping", "kept", "decided to keep", "going to keep", "gonna keep"],
        with: ["pronoun"],
        without: ["number", "named"],
        means: { how: "kept" },
      },
      {
        say: "gave … the",
        with: ["piece", "person"],
        without: ["number", "supply", "labor"],
        means: { how: "given" },
        light: true,
      },
      {
        say: [
          ...["is ours", "is ours now", "its ours", "its ours now", "is ours for good", "ours now"],
          ...["is ours to keep", "lives with us now", "is staying put", "its staying", "is here to stay"],
        ],
        with: ["piece"],
        without: ["number", "duration", "supply"],
        means: { how: "kept" },
        light: true,
      },
      {
        say: [
          "staying",
          "is staying",
          "are staying",
          "stays",
          "stays with us",
          "staying with us",
          "stay with us",
          "stayed with us",
          "stays here",
        ],
        with: ["piece"],
        without: ["number", "duration", "supply"],
        means: { how: "kept" },
        light: true,
      },
      {
        say: [
          "donated",
          "donating",
          "donate",
          "gave away",
          "gave … away",
          "giving away",
          "giving … away",
          "gifted",
          "gave … to",
          "giving … to",
          "gave … free",
          "gave … for free",
          ...["took … no charge", "took … for free", "took … for nothing"],
          "gave … for nothing",
          "gave … as freebie",
          "gave … as a freebie",
          "let … have",
          "dropped … off at",
          ...["given to", "was given to", "given away", "given … to", "put … free sign", "set … free sign"],
          "put … out free",
          ...WENT_TO_CHARITY,
          ...["dropped … donation center", "took … donation center", "dropped … donation bin"],
        ],
        without: ["number"],
        means: { how: "given" },
      },
      {
        say: ["put", "set", "left", "stuck", "rolled", "dragged"],
        ends: AT_THE_CURB_FREE,
        without: ["number"],
        means: { how: "given" },
      },
      { say: BROUGHT, ends: TO_CHARITY, without: ["number"], means: { how: "given" } },
      { say: CARRIED, ends: TO_ITS_END, without: ["number"], means: { how: "scrapped" } },
      {
        say: [
          "trashed",
          "trashing",
          "trash",
          "tossed",
          "toss",
          "junk",
          "throw away",
          "throw out",
          "throw … away",
          "throw … out",
          "tossing",
          "scrapped",
          "scrapping",
          "scrap",
          "dumped",
          "junked",
          "threw out",
          "threw away",
          "threw … out",
          "threw … away",
          "throwing out",
          "throwing away",
          "throwing … away",
          "throwing … out",
          ...["dropped … off at the dump", "took … to the transfer station", "took … to the curb"],
          "put … on the curb",
          "put … out on the curb",
          "set … on the curb",
          "set … out on the curb",
          "left … on the curb",
          "put … out for the trash",
          "curbed",
          ...TOSSED,
          "burned",
          "chucked",
          "binned",
          "pitched",
          "parted out",
          "broke up",
          ...[
            "broke down … for lumber",
            "broke down … for wood",
            "broke down … for firewood",
            "cut up … for firewood",
            "chopped up … for firewood",
            "chopped … up for firewood",
            "cut … up for firewood",
          ],
          ...LOST,
        ],
        without: ["number"],
        means: { how: "scrapped" },
      },
      {
        say: [
          ...WENT_OFF,
          "to the dump",
          "went to the dump",
          "went to dump",
          "went in the dumpster",
          "went into the dumpster",
          "went in the trash",
          "went to the curb",
          "is in the dumpster",
          "ended up in the dumpster",
          "ended up in the trash",
          ...["in the dumpster", "dumpster :", "dump :", "went in the burn pile", "to the burn pile"],
          "put … in the dumpster",
          "put … in the trash",
        ],
        without: ["number", "miles"],
        means: { how: "scrapped" },
      },
    ],
    slots: { pieces: "pieces" },
    bears: ["standing pieces", "of pieces", "not a part"],
    needs: ["pieces"],
    absorbs: [
      ...["for myself", "for me", "for us", "keep", "away", "free", "for free", "curb", "no charge"],
      ...["free of charge", "donation", "center", "bin", "parts", "lumber", "firewood", "wood"],
    ],
    judge: (_, clause) =>
      LOST.includes(clause.head?.text ?? "")
        ? { kind: "gone" }
        : says(clause, /^deposit$/) || isNotGiven(clause) || isKeptForAnother(clause) || isKeptDoing(clause)
          ? { kind: "unknown" }
          : null,
  },

  offered({ how }, names) {
    const words = { kept: "Kept", given: "Gave away", scrapped: "Scrapped" };
    return `${words[how ?? "kept"]} ${names}`;
  },

  decide(reading, desk) {
    const settled = settlePieces(reading, desk, { fit: here, question: "was it", unknown: "add" });
    if (settled.kind !== "settled") return settled;
    const day = reading.date ?? desk.today;
    const data = { how: reading.how! };
    return { kind: "record", facts: [{ kind: "retire", day, pieces: settled.pieces, data }] };
  },
  echo({ fact, books, today }) {
    const words = { kept: "kept for yourself", given: "given away", scrapped: "scrapped" };
    const cost = piecesOf(books, fact).reduce((sum, piece) => sum + costOf(piece), 0);
    const first = `${subjectOf(books, fact)} ${words[fact.data.how]}${dayWords(fact, today)}`;
    if (cost === 0) return [first];
    return [
      first,
      fact.data.how === "kept" ? `Its cost ${show(cost)} is yours, no loss` : `Written off: ${show(cost)}`,
    ];
  },
});

/** "keeping the desk for neighbor" is a hold, or nothing: asked. "For myself", "for the house" it is kept. */
function isKeptForAnother({ tokens, head }: Clause): boolean {
  if (!/^(?:keep|kept)/.test(head?.text ?? "")) return false;
  return tokens.some((token, at) => {
    const next = tokens[at + 1];
    // "keep the wardrobe by for isla"
    if (token.text === "by" && next?.text === "for") return true;
    return (
      token.text === "for" &&
      (next?.roles.person === true || next?.unknown === true) &&
      !/^(?:my|me|us|our)/.test(next.text)
    );
  });
}

/** "kept sanding the desk" keeps nothing. */
function isKeptDoing({ tokens, head }: Clause): boolean {
  const next = head ? tokens[tokens.indexOf(head) + 1] : undefined;
  return /^keep|^kept/.test(head?.text ?? "") && next?.kind === "word" && next.text.endsWith("ing");
}
