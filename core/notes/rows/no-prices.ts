import type { NumberEffect } from "./owed.ts";
import { rowsOf } from "./row.ts";

/** Numbers that beside such words are no price. */
export const NO_PRICES = rowsOf<NumberEffect>({
  "passing: sold desk 150, paid with two hundreds, 50 back":
    "<~sell> … $ … [,|.|-|and|;* he|she|they|<person>|<new>? paid|gave|gave_me|handed|handed_me|paid_me with|me|us|in|a? $ ,|and|so|-|.* i|we|got|gave|needed|took|her|him|them* $ back|change|in_change|as_change]",
  "passing: sold desk 200, my mom owes me 20":
    "<~sell>|<~hold>|<fallthrough>|bought|took|let|flipped !!to … $ … [my|our <kin> still|also? owes|owe|owed me|us $ from|for? lunch|dinner|gas|groceries|last_week?]",
  "passing: paint was 24, got it for 12":
    "^ <art>? <supply> [was|were|is|normally|usually|regularly|originally|reg|regular|retail|list|listed* $ ,|but|and|so|-* i|we? got|bought|paid|grabbed|snagged|found it|them|some|mine|one|that? for?] $",
  "passing: paint 24 marked down to 12":
    "^ <art>? <supply> [$ ,|but|and|it|was|is|got* marked_down|reduced|discounted|on_sale|down|knocked_down|cut|clearanced|on_clearance to|for|at] $",
  "passing: sandpaper 120 and 220":
    "sandpaper|discs|sheets|pads|sandpapers|paper|sponges [<grit> ,|and|&|/|or|to|then* <grit> ,|and|&|/|or|to|then* <grit>? ,|and|&* <grit>?] !!$",
  "passing: sold the desk that cost 30":
    "<sell> … [that|which|what? cost|costs|ran|set_me_back|stood me|us? in? $] ;",
  "passing: sold the dresser i paid 40 for": "<sell> … [that|which? i|we paid|gave|spent $ for|on] ;",
  "passing: bought chair 20 needs 2 hours":
    "[needs|need|requires|wants|will_take|should_take|gonna_take|going_to_take|will_need|might_take|estimate|estimated|budgeted|planning|figure another|about|at_least|maybe|some|like|only* <time> more? of? work|sanding|labor|tlc?]",
  "passing: painted 2 of 4 legs of the bench":
    "<labor>|cut|trimmed|did|done|finished [# of|out_of|outta <art>|my|its|all? #] <any>",
  "passing: cut the nightstand legs by 2":
    "<labor>|cut|trimmed|shortened|raised|lowered|planed|shaved|lengthened|extended … <part>|legs|leg|seat|top|height|feet|back [by # in|inch|inches|cm|mm?] ;",
  "passing: posted about the armoire, 300 likes":
    "[# likes|views|hearts|saves|shares|hits|clicks|watchers|followers|comments|reactions|impressions|retweets|favorites|upvotes]",
  "passing: got a chair at home worth 40": "<~buy> … [worth|valued_at|appraised_at|valued $]",
  "net: sold dresser, made 140":
    "<sell> <art>? <piece>? [,|and|-|.|so|i|we|im|came_out|after|costs|expenses|everything|parts* made|cleared|netted|profited|pocketed|earned|gained|up|banked $ after|over|above? costs|expenses|everything|parts|what_i_paid?]",
  "net: sold the dresser, 140 in my pocket":
    "<sell> <art>? <piece>? [,|and|-|.|so|for|a|with|came_out* $ profit|markup|margin|up|ahead|richer|clear|in_profit|gain|in_my_pocket|in_the_black|in_the_green|net|to_the_good]",
  "passing: sanded armoire for an hour, well half an hour":
    "[<time> ,|.|-|no|er|or|um|uh|well* well|more_like|make_that|make_it|actually|rather|or_rather|i_mean|call_it|really|no|no_wait] <time>",
});
