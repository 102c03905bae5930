import * as z from "zod";
import { checkNoDeposit, checkNotGone } from "../books/check.ts";
import { costAccountOf, moveCost } from "../books/cost.ts";
import { costOf } from "../books/piece.ts";
import type { FactRules } from "../books/rules.ts";
import { dayWords, piecesOf, subjectOf } from "../decide/echo.ts";
import { here } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
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
import { phrases } from "../notes/words/words.ts";
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
const LOST = phrases(
  "got_stolen was_stolen got_smashed was_smashed got_ruined was_ruined broke_in_half fell_apart smashed shattered fell_and_broke fell_and_smashed is_in_pieces broke_into_pieces is_at_the_dump is_toast someone_stole somebody_stole they_stole thieves_took went_missing caught_fire burned_up",
);

/** Where a piece stands for whoever wants it. */
const AT_THE_CURB_FREE = phrases(
  "on_the_curb out_on_the_curb out_by_the_curb out_front by_the_road out_by_the_road",
).flatMap((where) =>
  phrases("with_a_free_sign with_free_sign for_free free marked_free").map((free) => `${where} ${free}`),
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
          ...phrases(
            "keeping keep kept hanging_on_to hanging_onto hung_on_to holding_on_to holding_onto hung_onto holding_on_to_…_for_ourselves decided_to_keep decided_i_will_keep decided_we_will_keep decided_ill_keep",
          ),
          ...phrases("gonna going_to will ill well we_will gotta").map((will) => `${will} keep … after all`),
          "keeper",
          "not selling … keeping",
          "not selling … keep",
        ],
        with: ["named"],
        without: ["number"],
        means: { how: "kept" },
      },
      {
        say: phrases(
          "keeping kept decided_to_keep decided_i_will_keep decided_we_will_keep decided_ill_keep going_to_keep gonna_keep",
        ),
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
        say: phrases("is are its was became").flatMap((be) =>
          phrases(
            "firewood kindling garbage landfill_now trash_now junk_now toast_now a_total_loss total_loss",
          ).map((end) => `${be} ${end}`),
        ),
        with: ["piece"],
        without: ["number", "duration", "supply"],
        means: { how: "scrapped" },
        light: true,
      },
      {
        say: phrases(
          "is_mine_now its_mine_now is_ours is_ours_now its_ours its_ours_now is_ours_for_good ours_now is_ours_to_keep lives_with_us_now is_staying_put its_staying is_here_to_stay",
        ),
        with: ["piece"],
        without: ["number", "duration", "supply"],
        means: { how: "kept" },
        light: true,
      },
      {
        say: phrases(
          "staying is_staying are_staying stays stays_with_us staying_with_us stay_with_us stayed_with_us stays_here",
        ),
        with: ["piece"],
        without: ["number", "duration", "supply"],
        means: { how: "kept" },
        light: true,
      },
      {
        say: [
          ...phrases(
            "donated donating donate rehomed handed_down passed_down passed_along gave_away gave_…_away giving_away giving_…_away gifted gave_…_to giving_…_to gave_…_free gave_…_for_free took_…_no_charge took_…_for_free took_…_for_nothing gave_…_for_nothing gave_…_as_freebie gave_…_as_a_freebie let_…_have dropped_…_off_at given_to was_given_to given_away given_…_to put_…_free_sign set_…_free_sign put_…_out_free",
          ),
          ...WENT_TO_CHARITY,
          "dropped … donation center",
          "took … donation center",
          "dropped … donation bin",
        ],
        without: ["number"],
        means: { how: "given" },
      },
      {
        say: phrases("put set left stuck rolled dragged"),
        ends: AT_THE_CURB_FREE,
        without: ["number"],
        means: { how: "given" },
      },
      { say: BROUGHT, ends: TO_CHARITY, without: ["number"], means: { how: "given" } },
      { say: CARRIED, ends: TO_ITS_END, without: ["number"], means: { how: "scrapped" } },
      {
        say: [
          ...phrases(
            "trashed trashing trash tossed toss junk throw_away throw_out throw_…_away throw_…_out tossing scrapped scrapping scrap dumped junked threw_out threw_away threw_…_out threw_…_away throwing_out throwing_away throwing_…_away throwing_…_out dropped_…_off_at_the_dump took_…_to_the_transfer_station took_…_to_the_curb put_…_on_the_curb put_…_out_on_the_curb set_…_on_the_curb set_…_out_on_the_curb left_…_on_the_curb put_…_out_for_the_trash curbed",
          ),
          ...TOSSED,
          ...phrases(
            "burned flung_out flung_away had_it_hauled_off had_it_hauled_away had_them_hauled_off had_it_carted_off chucked binned pitched parted_out broke_up broke_down_…_for_lumber broke_down_…_for_wood broke_down_…_for_firewood cut_up_…_for_firewood chopped_up_…_for_firewood turned_…_into_firewood turned_…_into_kindling chopped_…_up_for_firewood cut_…_up_for_firewood",
          ),
          ...LOST,
        ],
        without: ["number"],
        means: { how: "scrapped" },
      },
      {
        say: [
          ...WENT_OFF,
          ...phrases(
            "to_the_dump went_to_the_dump went_to_dump went_in_the_dumpster went_into_the_dumpster went_in_the_trash went_to_the_curb is_in_the_dumpster ended_up_in_the_dumpster ended_up_in_the_trash in_the_dumpster dumpster_: dump_: went_in_the_burn_pile to_the_burn_pile put_…_in_the_dumpster put_…_in_the_trash",
          ),
        ],
        without: ["number", "miles"],
        means: { how: "scrapped" },
      },
    ],
    slots: { pieces: "pieces" },
    bears: ["standing pieces", "of pieces", "not a part"],
    needs: ["pieces"],
    absorbs: phrases(
      "for_myself for_me for_us keep away free for_free curb no_charge free_of_charge donation center bin parts lumber firewood wood",
    ),
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
