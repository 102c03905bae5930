import type { TurnEffect } from "./afterwards.ts";
import { type Row, rowsOf } from "./row.ts";

const DONE = "<sell>|<~finish>|<list>|<retire>|<reprice>|<~start>";
const STOOD =
  "that|which|is|was|stood|stands|stand|sat|sits|stored|standing|sitting|leaning|leaned|parked|displayed|stacked|just|right|here|piled";
const BESIDE =
  "beside|next_to|right_next_to|near|behind|from_behind|by|underneath|beneath|above|below|in_front_of|across_from|opposite|on_top_of|atop|leaning_on|leaning_against|close_to|adjacent_to|under|against|facing";
const MATCHES =
  "matches|matched|matching|goes_with|went_with|go_with|going_with|pairs_with|paired_with|belongs_with|belonged_with|looks_like|looked_like|looks_good_with|came_with|comes_with|fits_with|fit_with|goes_so_well_with|goes_well_with|coordinates_with";
const MORE =
  "more|less|cheaper|smaller|bigger|larger|older|newer|nicer|better|heavier|lighter|taller|shorter|wider|quicker|faster|sooner|earlier|later|lower|higher|uglier|prettier|easier|harder|slower|worse";
const LIKED =
  "liked|likes|loved|loves|wanted|wants|preferred|prefers|picked|chose|needed|thought_was|said_was|found|is|was|looks|looked";
const SOMEBODY = "that|which|who|he|she|they|i|we|buyer|lady|guy|<person>";
const DOING =
  "loading|unloading|moving|painting|sanding|stripping|listing|posting|finishing|fixing|cleaning|delivering|selling|showing|measuring|photographing|staining|waxing|priming|hauling|repairing|carrying|starting|working_on|building|packing|wrapping|shopping_for|looking_at|picking_up|dropping_off|waiting_on";
const FOR_THE_OTHER =
  "to_fund|to_buy|to_pay_for|to_help_pay_for|to_get|to_make_room_for|to_make_space_for|to_free_up_space_for|to_match|to_go_with|making_room_for|to_afford|to_cover";
const BECAUSE =
  "because|since|as|cause|cuz|bc|now_that|in_case|whereas|where|until|when|whenever|once|so|though|although";
const ONE_MORE = "a|an|another|one|some|this|extra|little|cute";
const FREE = "for_free|free|for_nothing|gratis|at_no_charge|no_charge|as_a_freebie|as_a_bonus";
/** What something else was bought with, which is on the books. */
const ALONG =
  "along? with|alongside|when_i_bought|when_we_bought|when_i_got|when_we_got the|that|my|our|those|this <trait>* <piece>";

/** A second piece that is only spoken of: where the first one stood, what it goes with, costs less than, or came before. */
export const ONLY_MENTIONED = rowsOf<TurnEffect>({
  "doubt: sold the desk we got with the dresser 110":
    "<sell> <art>? <piece> [that|which? i|we|id|wed got|bought|found|picked_up|had|grabbed|scored|brought_home <word>? with|after|before|when_i_got|as <art>? <piece>]",
  "doubt: sold the desk to whoever bought the dresser 110":
    "<sell> … <piece> [to? whoever|the_one_who|the_guy_who|the_lady_who|someone_who|who|the_same_lady_who|the_person_who bought|got|took|has|had|wanted|wants|grabbed <art>? <piece>]",
  "word: sold the desk that stood beside the dresser 110": `${DONE} … <piece> $? [${STOOD}* ${BESIDE} <art>? <piece>]`,
  "word: desk behind the dresser sold 110": `<piece> $? [${STOOD}* ${BESIDE} <art>? <piece>] is|was* <sell>|<~finish>`,
  "word: sold the dresser that came with the desk 180": `${DONE} … <piece> $? [that|which ${MATCHES} <art>|same? <piece>]`,
  "word: desk goes with the dresser, 260 both": `^ <art>? <piece> [really|also? ${MATCHES} <art>? <piece>]`,
  "word: finished the desk matching the dresser": `${DONE} … <piece> $? [matching|to_match <art> <piece>]`,
  "word: sold the desk she liked more than the dresser 120": `${DONE} … <piece> $? [${SOMEBODY}|${LIKED}|much|way|a_lot|a_bit|far|even|for* ${MORE} than <art>? <piece>]`,
  "word: sold the dresser right after the desk, 180": `${DONE} … <piece> $? [right|just|shortly|soon|long|even|an_hour|a_day|<span>|<time>? before|after|ahead_of <art>? <piece>]`,
  "word: sold the desk while loading the dresser 110": `${DONE} … <piece> $? [while|whilst|before|after|during|when|by i|we|he|she|they|was|were* ${DOING} <art>? <piece>]`,
  "doubt: sold the desk she picked over the dresser 110": `${DONE} … <piece> $? [${SOMEBODY}? ${LIKED}|took|bought over|instead_of|rather_than|before|not <art>? <piece>]`,
  "doubt: finished the desk instead of the dresser": `${DONE} … <piece> $? [,|-? ${BECAUSE}|${FOR_THE_OTHER}|instead_of|rather_than|in_place_of|without|like|unlike|same_as|as_well_as_i_did|off|ahead_of|thanks_to <art>? <piece>]`,
  "word: the seller threw in a plant stand with the buffet": `threw|tossed|chucked|threw_in|tossed_in|included|added in? ${ONE_MORE} <trait>|<opinion>* <piece> in? ${FREE}? [${ALONG}]`,
  "word: she gave me a plant stand for free with the buffet": `${ONE_MORE}|the <trait>|<opinion>* <piece> came|came_along|comes|was|is|in|home|me|us* ${FREE} [${ALONG}]`,
  "word: bought a chair to go with the table 8": `<~buy>|got|grabbed <art>? <piece> $? [to_match|to_go_with|like|for_under|to_put_beside|to_put_with|to_replace|that_matches|that_goes_with|matching|to_sit_with <art>? <piece>]`,
  // "the stool came free" tells of one that is noted.
  "bought: a plant stand came free with the buffet": `${ONE_MORE} <trait>|<opinion>* <piece> [came|came_along] ${FREE}`,
  "word: got a free mirror with the buffet": `${ONE_MORE}? free|freebie <trait>|<opinion>* <piece> [${ALONG}]`,
  "doubt: sold dresser to a lady for her desk 180":
    "<sell> … <piece> … [for|against|with her|his|their <piece>]",
});

const ALL =
  "everything|everything_else|all|all_of_it|all_of_them|every_one|every_piece|every_single_piece|all_pieces|all_the_pieces|all_of_the_pieces|the_lot|the_whole_lot";
const BUT =
  "but|except|except_for|besides|other_than|apart_from|aside_from|save|save_for|bar|minus|excluding|excepting|not_counting|without|leaving_out|barring";

/** All but one of them: the one named is just the one it is not about. */
export const ALL_BUT = rowsOf<TurnEffect>({
  "doubt: sold everything but the dresser and the lamp 140": `[${ALL} ${BUT} for? <art>? <piece> and|&|or|,|+|plus <art>? <piece>]`,
  "all but: sold everything but the dresser 140": `<sell>|<~finish>|<list>|<~retire>|<reprice>|<labor>|worked|spent|put … [${ALL} ${BUT} for? <art>? <piece>] !!<piece>`,
  "doubt: everything sold but the dresser, 140":
    "[everything|everything_else|all|all_of_it|all_of_them|every_one|everyone|every_piece|all_pieces|the_lot|lot|the_whole_lot|the_rest|whole_lot|every_thing|everythings <sell>|<~finish>|<list>|is|are|was? done|up|for_sale? but|except|except_for|besides|other_than|apart_from|aside_from|save|save_for|bar|minus|excluding|excepting|not_counting|without|leaving_out <art>? <piece>]",
  "doubt: sold all the nightstands but one 60":
    "<piece> [but|except|except_for|save|save_for|bar|minus|besides|apart_from|other_than one|one_of_them|the_one|a_single_one|1]",
});

const KEEPS = "kept|keep|keeping";
const AS_IT_IS =
  "dry|clean|open|free|covered|warm|cool|upright|safe|inside|indoors|outside|out|flat|shut|closed|wrapped|available|stored|for_sale|on_the_market|in_mind|moving|level|straight|simple|still|steady|going|running|tidy|dusted|polished|oiled|waxed|clear|unlocked|locked|plain|natural|original|white|level|wet|moist|tarped|hidden|assembled|intact|together|in_good_shape|shiny|spotless|on_display|locked_up|at|low|high|company|secret|quiet|in_the_shade|out_of_the_rain|out_of_the_sun|off_the_floor|out_of_the_way";
/** It is kept as it is, and nothing has become of it. */
export const AS_IT_WAS: readonly Row<TurnEffect>[] = [
  [
    "[hold|holding|held <art>? <piece> up|up_to|still|steady|in_place|together|straight]",
    "other",
    "hold the desk up to the light",
  ],
  [`[${KEEPS} <art>? <piece> really|very|nice_and|so|nice* ${AS_IT_IS}]`, "other", "kept the desk dry"],
];

const ONLY_SAID =
  "idea|ideas|plan|plans|photo|photos|pic|pics|picture|pictures|finish|listing|ad|ads|post|offer|price|note|notes|sketch|design|color|colour|coat|draft|description|receipt|sale|deal|topcoat|stain_job|paint_job|project_plan|video|label|tag|sign";
const A_WHILE =
  "for_now|for_a_while|for_a_bit|for_the_weekend|for_the_week|for_a_week|for_a_few_days|for_the_day|for_tonight|overnight|temporarily|on_loan|as_a_loan|to_borrow|to_hold|to_store|to_keep_for_me|to_use|to_try|to_try_out|to_look_at|to_watch|to_fix|to_paint|to_sand|until|till|til|on_consignment|for_safekeeping|on_trial";

/** What sounds like the end of a piece, and is none: it is kept as it is, an idea is scrapped, it comes back. */
export const NOT_ENDED = rowsOf<TurnEffect>({
  "offer: kept the dresser back": `[${KEEPS} <art>? <piece> back <any>? <any>?] ;`,
  "other: kept on with the desk": `[${KEEPS} on|at|up|after with|<labor>? <art>? <piece>]`,
  "other: kept working on the desk": `[${KEEPS} <labor>|working_on|working|going|at_work|<plain>|<done> on|at|with? <art>? <piece>]`,
  "intention: kept the dresser another week": `${KEEPS} <art>? <piece>|it|them [for_last|for_later|until|till|til|another|one_more|for_one_more|for_another|a_few_more|a_little_longer|a_bit_longer|longer|for_the_moment|for_the_time_being|through|over|a_week|a_month|for_next_week|for_next_month|for_the_sale|for_the_market <any>? <any>?]`,
  "other: desk stays listed":
    "<piece> [stays|stay|staying|is_staying|are_staying|stayed listed|up|for_now|for_sale|on_the_market|on_market|at|open|available|posted|online|as_is|dry|clean|on_hold|held|until|till|til|another|a|one_more|for_the_week|for_a_while|for_a_bit|out|priced]",
  "other: kept quiet about the desk": `[${KEEPS} quiet|quiet_about|mum|tabs|track|an_eye|watch|notes|working about|on|of? <art>? <piece>]`,
  "other: dumped water on the dresser":
    "[dumped|dumping|poured|spilled <any> <any>? on|all_over|over] <art>? <piece>",
  "other: gave away the secret of the desk finish":
    "[gave_away|giving_away <art>? secret|secrets|trick|tricks|price|prices|ending|plan|coupon|coupons]",
  "doubt: took the desk to the dump by mistake, brought it home":
    "<~retire>|left|put|set|took !$ … [by_mistake|by_accident|accidentally|overnight|to_load|to_take|for_pickup]",
  "doubt: put the desk out a while": "<~retire>|left|put|set|took !$ … [while] !i|we|im|were|he|she|they|my",
  "other: scrapped the desk idea": `[<retire>|burned|tossed <art>|old? <piece> ${ONLY_SAID}]`,
  "other: tossed the idea of painting the dresser": `[<retire>|tossed|threw_out|threw <art>? old|first|whole? ${ONLY_SAID} of|for|on|about|to <labor>|<plain>? <art>? <piece>]`,
  "other: tossed around ideas for the desk":
    "[tossed|threw|batted|kicked|tossing|throwing around|together|about|a|an|some|another|my|on|up <word>? <word>? for|on|at|over|against|about] <art>? <piece>",
  "other: threw out my back on the dresser":
    "[threw_out|threw|burned|burnt|tossed|broke|busted|blew_out|trashed|wrecked|ruined|killed|junked|scrapped|put out? my|his|her|our|a|the back|hip|shoulder|knee|hand|hands|finger|fingers|thumb|wrist|neck|elbow|arm|toe|foot|knees|shoulders|arms|fingernails|nails]",
  "doubt: took the desk to the dump and back":
    "!!<miles> <~retire> … [and|but|then|&|, then? back|took_it_back|brought_it_back|brought_it_home|brought_back|home|came_back|right_back|it_came_back|they_were_closed|it_was_closed back|home|again? <any>?] ;",
  "other: desk is junk but listed":
    "<piece> is|was|looks|looked [like|just|basically|total|pure|such* junk|trash|garbage|rubbish|scrap but|and|though|so|,? <any>* listed|selling|for_sale|up|works|solid|sells|sturdy]",
  "intention: gave my sister the dresser on loan": `!gave_me|gave_us <~retire>|gave … <piece> … [${A_WHILE} <any>? <any>?] ;`,
  "other: donated a desk from home":
    "<~retire> <art>|old? <piece> [from_home|of_my_own|of_mine|of_our_own|of_ours|from_my_house|from_our_house|from_our_home|from_my_room|i_had_at_home|we_had_at_home|i_grew_up_with]",
  "doubt: gave the desk to the painter":
    "gave|took|brought <art>? <piece> [to <art>? painter|refinisher|upholsterer|carpenter|movers|mover|welder|restorer|stripper|finisher|repairman|handyman|hauler|driver|woodworker|glass_guy|caner|dealer|consigner|consignor|auctioneer|appraiser|delivery_guy|repair_guy|repair_shop|paint_guy|framer]",
});
