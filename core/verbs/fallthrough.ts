import * as z from "zod";
import type { Books } from "../books/books.ts";
import { checkPieces } from "../books/check.ts";
import { amountOf, onlyPiece } from "../books/facts.ts";
import { labelOf } from "../books/label.ts";
import { statusOf } from "../books/piece.ts";
import { postedBy, postedTo } from "../books/posted.ts";
import type { Problem } from "../books/problem.ts";
import type { FactRules } from "../books/rules.ts";
import { depositOf, sharesOfDeposit } from "../books/shares.ts";
import { type Ask, type Decision, NEVER_MIND } from "../decide/decision.ts";
import { dayWords, piecesOf, subjectOf } from "../decide/echo.ts";
import { inAll } from "../decide/pieces/choices.ts";
import { held } from "../decide/pieces/fits.ts";
import { settlePieces } from "../decide/pieces/settled.ts";
import { type Cents, show } from "../money.ts";
import { judgeFallthrough } from "../notes/judging/fallingthrough.ts";
import type { ReadingOf } from "../notes/reading.ts";
import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    fallthrough: {
      pieces?: Mention[];
      refunded?: Cents;
      kept?: Cents;
      /** All of the deposit went back, or half of it. */
      inFull?: true;
      half?: true;
    };
  }
}

function checkHeld(books: Books, numbers: readonly number[]): Problem | null {
  const number = numbers.find((each) => !books.pieces.get(each)!.hold);
  return number === undefined ? null : { kind: "piece not held", number };
}

const rules: FactRules<"fallthrough"> = {
  mends: ["amount", "date", "pieces"],
  data: z.strictObject({ kept: z.literal(true).optional() }),
  apply(books, fact) {
    const problem = checkPieces(books, fact.pieces) ?? checkHeld(books, fact.pieces);
    if (problem) return problem;
    const held = depositOf(fact.pieces.map((number) => books.pieces.get(number)!));
    const amount = fact.amount === undefined ? 0 : amountOf(fact);
    if (amount > held) return { kind: "more than held", held };
    const pieces = fact.pieces.map((number) => books.piece(number));
    const refunded = fact.data.kept ? held - amount : amount;
    const shares = sharesOfDeposit(pieces, refunded);
    pieces.forEach((piece, index) => {
      const kept = piece.deposit - shares[index]!;
      books.post("deposits held", piece.deposit, { piece: piece.number });
      books.post("deposits kept", -kept, { piece: piece.number });
      piece.depositsKept += kept;
      piece.deposit = 0;
      piece.hold = null;
    });
    books.post("cash", -refunded, { piece: onlyPiece(fact) });
    return null;
  },
};

/** How a buyer leaves a deal, or a deal its buyer. */
const OUT_OF_IT = [
  ...phrases("cant_make_it wont_make_it cant_come isnt_going_to_make_it not_going_to_make_it").flatMap(
    (no) => [`${no} anymore`, `${no} after all`],
  ),
  ...phrases(
    "walked_on walked_away_from lost_the_sale lost_the_buyer lost_my_buyer lost_our_buyer never_came_for never_came_to_get never_came_by_for never_picked_up never_made_it deal_off deal_is_dead deals_dead deal_died deal_dead sale_is_off sale_off sales_off sale_is_dead deal_fell_apart sale_fell_apart deal_didnt_work_out sale_didnt_work_out deal_didnt_go_through sale_didnt_go_through sale_of_…_is_off sale_on_…_is_off deal_on_…_is_off sale_of_…_is_dead deal_on_…_is_dead passed_on_…_after_all",
  ),
  ...["has", "have", ""].flatMap((has) =>
    phrases(
      "cried_off withdrew withdrew_from pulled_out pulled_out_of backed_out bailed dropped_out gone_off gone_cold_on",
    ).map((left) => `${has} ${left}`.trim()),
  ),
  ...phrases(
    "crying_off bottled_it bottled_out chickened_out wimped_out did_a_runner done_a_runner did_a_bunk let_me_down let_us_down went_cold_on reneged reneged_on welched blew_me_off blew_us_off jacked_it_in jacked_it_in_on dropped_out_of_buying called_it_off called_it_off_on mucked_me_about messed_me_about messed_me_around mucked_us_about stiffed_me had_second_thoughts thought_better_of_it never_turned_up never_turned_up_for didnt_turn_up didnt_turn_up_for never_arrived didnt_came not_came never_come_for didnt_come_for cried_off_on",
  ),
];

/** How a hold ends, said behind it, and what is done to it, said before. */
const HOLD_ENDED = phrases(
  "expired lapsed ended cancelled canceled called_off ran_out is_up is_over is_off is_done is_gone fell_through is_cancelled was_cancelled is_canceled was_canceled is_released was_released got_cancelled got_canceled has_expired has_lapsed timed_out",
);
const HOLD_TAKEN = phrases(
  "released release releasing lifted lift lifting removed removing ended end ending cancelled canceled canceling cancelling let_go_of cancel remove",
);
const HOLD_TAKEN_OFF = ["took", "take", "taking", "taken"];

/** How a deposit goes back, before "deposit back". */
const GAVE = ["gave", "handed", "mailed", "posted", "wired"];

/** What becomes of the deposit of whoever is out. */
const KEPT = ["kept", "keeping", "keep"];
const WHOSE = ["her", "his", "their", "the"];

/** That somebody wants a piece no more. */
const WANT_NO_MORE = phrases(
  "doesnt_need does_not_need no_longer_needs doesnt_want does_not_want dont_want no_longer_wants no_longer_want didnt_want isnt_taking arent_taking wont_be_taking wont_take_…_after_all cant_take_…_after_all not_taking_…_after_all cant_do_…_after_all isnt_getting arent_buying arent_taking decided_against decided_not_to_buy decided_not_to_take decided_not_to_get isnt_gonna_take isnt_going_to_take not_gonna_take not_going_to_take wont_be_getting not_gonna_buy not_going_to_buy isnt_gonna_buy isnt_going_to_buy not_gonna_get not_taking not_going_to_get isnt_gonna_get cant_buy_…_after_all cant_get_…_after_all no_longer_taking no_want not_want no_wants not_wants no_need isnt_having not_having_…_after_all isnt_having_…_after_all not_have_…_after_all lost_interest_in no_longer_interested_in not_interested_in_…_anymore cant_take",
);

export const fallthrough = defineVerb({
  kind: "fallthrough",
  example: "buyer backed out of desk, refunded 30",
  page: "notes",
  listed: (_, pieces) => `buyer backed out of ${pieces}`,
  story: (told) => {
    const kept = postedTo(told, "deposits kept");
    return `buyer backed out${kept === 0 ? "" : `, kept ${show(-kept)}`}`;
  },
  books: rules,
  byItsDay: true,
  reads: {
    says: [
      {
        say: [
          ...phrases(
            "backed_out back_out backing_out backed_out_of fell_through fell_thru fall_through falls_through no_show no_showed noshow noshowed no_call_no_show flaked flaked_out bailed bailed_out ghosted vanished disappeared ghosted_me cancelled canceled never_showed never_showed_up never_came didnt_show didnt_show_up did_not_show stood_me_up changed_her_mind changed_his_mind changed_their_mind changed_mind changed_minds changed_their_minds got_cold_feet buyer_disappeared deal_is_off deals_off sale_fell_through doesnt_want_it_anymore isnt_coming_for not_coming_for aint_coming_for isnt_buying not_buying walked_away",
          ),
          ...OUT_OF_IT,
        ],
      },
      { say: WANT_NO_MORE, with: ["piece"] },
      {
        say: [
          ...phrases(
            "off_hold no_longer_on_hold no_longer_holding not_on_hold_anymore not_on_hold_any_more isnt_on_hold_anymore not_holding_…_anymore available_again up_for_grabs_again back_up_for_grabs back_on_the_market free_again up_for_sale_again back_up_for_sale no_longer_pending not_pending_anymore unmark_…_pending unmarked_…_pending not_reserved_anymore no_longer_reserved no_longer_spoken_for",
          ),
          ...HOLD_ENDED.flatMap((ended) => [`hold ${ended}`, `hold … ${ended}`]),
          ...HOLD_TAKEN.map((took) => `${took} … hold`),
          ...HOLD_TAKEN_OFF.flatMap((took) => [`${took} … hold off`, `${took} … off hold`]),
          ...phrases(
            "drop_the_hold dropped_the_hold dropping_the_hold clear_the_hold cleared_the_hold unhold unholding unreserve unreserved un_reserve un_hold released release",
          ),
        ],
        with: ["piece"],
      },
      {
        say: [
          ...phrases(
            "deposit_…_stays deposit_kept deposit_…_kept deposit_is_mine deposit_…_is_mine deposit_is_ours deposit_…_is_ours deposit_forfeited deposit_…_forfeited forfeited_…_deposit kept_…_deposit keeping_…_deposit refunded_…_deposit returned_…_deposit gave_back_…_deposit gave_…_deposit_back deposit_…_back deposit_back deposit_refunded deposit_returned",
          ),
          ...["deposit", "down payment"].flatMap((put) => [
            ...phrases("refunded returned was_refunded was_returned went_back given_back sent_back").map(
              (back) => `${put} … ${back}`,
            ),
          ]),
        ],
        with: ["piece"],
      },
      {
        say: [
          ...GAVE.map((gave) => `${gave} … deposit back`),
          ...KEPT.flatMap((kept) =>
            WHOSE.flatMap((whose) => [`${kept} ${whose} deposit`, `${kept} ${whose} deposit of`]),
          ),
          "gave back … deposit",
          "handed back … deposit",
        ],
      },
    ],
    slots: { pieces: "pieces" },
    bears: ["others act", "has a buyer", "of pieces"],
    needs: ["pieces"],
    absorbs: phrases(
      "sale_of sale refunded refund gave gave_back returned kept keeping deposit back paid_back sent_back gave_him_back gave_her_back gave_them_back keep sent the_deposit returning refunding got wants no_show deposit_back deposit_refunded deposit_returned was_returned was_refunded went_back went hold on_hold paid hanging_on_to hanging_onto hung_on_to hung_onto holding_on_to holding_onto stays anymore any_more after_all half",
    ),
    judge: judgeFallthrough,
  },

  offered({ refunded, kept }, names) {
    const money = refunded ? `, gave back ${show(refunded)}` : kept ? `, kept ${show(kept)}` : "";
    return `Buyer of ${names} gone${money}`;
  },

  decide(told, desk) {
    const need = { fit: held, question: "fell through", unknown: "refuse", lacks: "not on hold" } as const;
    const settled = settlePieces(told, desk, need);
    if (settled.kind !== "settled") return settled;
    const reading = inAll(told, settled.pieces);
    const deposit = depositOf(piecesOf(desk.books, settled));
    const { refunded, kept: left } = sharesSaid(reading, deposit);
    const said = refunded ?? left;
    if (said !== undefined && said > deposit)
      return moreThanHeld(reading, deposit, labelOf(desk.books, settled.pieces));
    const isClear =
      said !== undefined && (left === undefined || refunded === undefined || refunded + left === deposit);
    const ask = isClear ? null : depositQuestion(deposit);
    if (ask) return { kind: "ask", ask };
    const kept = refunded === undefined && left !== undefined;
    return {
      kind: "record",
      facts: [
        {
          kind: "fallthrough",
          day: reading.date ?? desk.today,
          pieces: settled.pieces,
          amount: said ?? 0,
          data: kept ? { kept } : {},
        },
      ],
    };
  },
  echo({ fact, books, today }) {
    const back = -postedBy(books, fact, "cash");
    const kept = -postedBy(books, fact, "deposits kept");
    const [first] = piecesOf(books, fact);
    const isListed = first !== undefined && statusOf(first) === "listed";
    const state = `${subjectOf(books, fact)} ${isListed ? "listed again" : "off hold"}`;
    const given = back > 0 ? `, ${show(back)} given back` : "";
    const money = `${given}${kept > 0 ? `, ${show(kept)} kept` : ""}`;
    return [`Buyer gone: ${state}${money}${dayWords(fact, today)}`];
  },
});

/** No more can be given back or kept than is held: that is offered, where anything is. */
function moreThanHeld(reading: ReadingOf<"fallthrough">, deposit: Cents, names: string): Decision {
  const why = `Only ${show(deposit)} is held on ${names}.`;
  if (deposit === 0) return { kind: "refuse", why };
  const isKept = reading.refunded === undefined;
  const change = isKept ? { kept: deposit } : { refunded: deposit };
  const label = `${isKept ? "Kept" : "Gave back"} ${show(deposit)}`;
  const choices = [{ label, words: ["yes", "all"], effect: { kind: "settle" as const, change } }, NEVER_MIND];
  return { kind: "ask", ask: { prompt: `${why} Was it that?`, wants: "refunded", choices } };
}

/** What went back and what stayed, as far as said, of what is held. */
function sharesSaid(
  { refunded, kept, inFull, half }: ReadingOf<"fallthrough">,
  deposit: Cents,
): Pick<ReadingOf<"fallthrough">, "refunded" | "kept"> {
  if (refunded !== undefined || kept !== undefined) return { refunded, kept };
  if (inFull) return { refunded: deposit };
  return half && deposit > 0 ? { refunded: Math.floor(deposit / 2) } : {};
}

/** Where a deposit is held, what became of it has to be known; any part of it is taken as said. */
function depositQuestion(deposit: Cents): Ask | null {
  if (deposit === 0) return null;
  return {
    prompt: `${show(deposit)} is held. How much did you give back?`,
    wants: "refunded",
    choices: [
      {
        label: `Gave back ${show(deposit)}`,
        words: phrases(
          "all everything gave_it_back gave_it_all_back i_gave_it_back all_of_it refunded gave_everything returned_everything refunded_everything sent_everything full_refund refunded_all gave_it_all returned_it sent_it_back sent_all_back",
        ),
        effect: { kind: "settle", change: { refunded: deposit } },
      },
      {
        label: `Kept ${show(deposit)}`,
        words: phrases("nothing none kept_it kept_all keeping_it keeping_all no_refund not_a_cent"),
        effect: { kind: "settle", change: { refunded: 0 } },
      },
      NEVER_MIND,
    ],
  };
}
