import { BACKED_OUT } from "../words/deals.ts";
import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

/** What a buyer does who does not come. */
export const GONE = `${BACKED_OUT}|never_showed_up|no_show|noshow|didnt_show_up|fell_through|fell_thru|passed|walked|reneged|vanished|bounced`;

/** That a piece is to be had again. */
const FREE_AGAIN =
  "is|are|back|up|goes|going|went|so|now|again* available|open|up_for_grabs|back_up_for_grabs|on_the_market|for_sale|up_for_sale|back_up_for_sale|relisted again|now*";

/** What is said around a deposit, a gift, a return or a price, and turns it or takes nothing from it. */
export const DEALING = rowsOf<TurnEffect>({
  "sold: bench gone 62 fee 1.86":
    "<piece> [gone|is_gone|all_gone|left] at|for? $ <method>? ,|-|.|minus|less|and|with|after|a|<art>* $? fee|fees|commission",
  "refunded: hutch had a split, 30 back to the man": "$ [back|went_back to] <art> <buyer>|<person>",
  "word: they backed out. wanted the 100 back so i gave em 80":
    "[wanted|wants|asked_for|asking_for|demanded|demanding <art>|his|her|their? $ back] so|and|,|but|.|;",
  "word: desk - 40 down - picking up sat":
    "^ <art>? <piece> -|:|,? $ down|deposit [,|- pickup|picking_up|picks_up|getting_it|fetching_it|coming on|this? <day>]",
  "word: 20 to hold the crib, she's back on monday":
    "<hold> … [,|and|-? shes|hes|theyre|she|he|they|she_is|he_is is|are|will_be? back on? <day>]",
  "other: gave my brother a ride to get the hutch":
    "[gave|give|giving <art>? <kin>|<person>|<new> a|an|another ride|lift|deal|discount|break|tour|call|quote|price|look]",
  "word: couldn't save the trunk so i tossed it":
    "[couldnt|cant|could_not|unable_to|not_able_to|no_way_to save|salvage|fix|repair|rescue] <art>? <piece>|it|them",
  "word: sold desk to ana for 85 she paid half cash half check":
    "<sell> … [she|he|they|buyer? paid? half|part|some <method> and|,|&|+? half|part|rest|the_rest|other_half <method>]",
  "word: carla backed out, trunk is available again": `<fallthrough>|<refund>|${GONE}|deposit|back|kept … <piece>|it|its [${FREE_AGAIN}]`,
  "word: full refund on the crib 45, it's back in the shop":
    "<refund> … $ … [,|and|-? its|is|it_is back in|at|home|here|on <word>*] ;",
  "word: deposit of 40 on the sofa was returned because she changed her mind":
    "deposit|<fallthrough> … returned|refunded|back … [because|since|cause|bc|cuz|as|after he|she|they|the_buyer changed her|his|their mind|minds]",
  "word: gave him back the 20 he put down on the dresser":
    "gave|sent|handed|paid|gave_him|gave_her|gave_them back <art>? $ [he|she|they|that|buyer* had? put|left|paid down|on_it] on|for",
  "other: same hutch as mine sold for 300 across town": "^ <art>? [<piece> as mine|ours] <~sell>",
  "other: one like my dresser went for 200 online":
    "^ <art>? [one|another just|exactly|a_lot|pretty_much? like|identical_to|similar_to] my|our|this|the <any>? <piece> <~sell>",
  "other: identical desk to mine sold for 50": "^ <art>? [<comp> to|with mine|ours|my|our] <~sell>",
  "other: identical desk sold for 150 at the flea market": "^ <art>? [<comp>] <~sell>",
  "word: holding the bench for mike, no money down":
    "<hold> … ,|-|with? [no|without|zero money|deposit|cash|payment down|yet?]",
  "word: not selling the rocker, we're keeping it":
    "[not|no_longer|arent|isnt|wont_be selling] <art>? <piece> !!listed|posted|online|up ,|and|- i|we|were|im|so|just* keeping|keep|kept",
  "word: headboard is a goner, tossed it":
    "<piece> [is|was|are|got? <art>? total|real|just* lost_cause|goner|shot|toast|trash|junk|ruined|rotten|rotted|moldy|beyond_saving|beyond_repair|past_saving|broke|broken|collapsed|fell_apart|busted|unsalvageable i|we*] ,|and|so|-* i|we|had_to* <~retire>|threw|tossed|hauled|took",
  "word: gave back the 45 deposit on the headboard, she backed out": `gave_back|gave|sent|sent_back|returned|refunded|deposit … $|deposit … [,|and|- he|she|they|buyer|guy|lady|<person>|<new> has|just|then? ${GONE}]`,
  "word: priya bailed on the nightstands, refunded 15, kept the rest": `refunded|returned|gave_back|sent_back|back|gave|sent … [,|and|but|.|&* i|we? kept|keeping|keep <art>? rest|<other>|remainder|balance|difference|other_half] !$`,
  "word: sold the sideboard 160, owes 60 until his pension comes":
    "[until|till|til <art>? pension|paycheck|check|payday|pay|wages|salary|tips|refund comes|clears|arrives|lands|hits in|through?]",
  "doubt: ad up for the desk costs 5": "ad|ads … [costs|cost|ran|is|was $]",
  "offer: priced a new desk at 300": "[priced|pricing a|an|another|some|new]",
  "offer: a desk for sale for 60": "a|an|another <piece> [for_sale|on_the_market]",
  "offer: desk for sale down the street for 60":
    "<piece> [for_sale|on_the_market … down_the_street|up_the_street|across_the_street|next_door|nearby|down_the_road|up_the_road|across_town]",
});
