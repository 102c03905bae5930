import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

const PUT =
  "put|threw|stuck|tossed|chucked|slapped|popped|plopped|placed|hung|stick|putting|throwing|sticking";
const ONTO = "on|up_on|onto|up_onto|over_on";
const OF_PLACE =
  "<trait>|<plain>|<opinion>|<place>|town|city|local|neighborhood|neighbors|community|county|village|church|parish|school|moms|dads|work|sunday|bulletin|yard_sale|garage_sale|buy_sell|resale|swap|bst|2|two|three|both|couple|all*";
const TAG = "tag|tags|sign|sticker|price_tag|ticket|label";

/** Where buyers see a piece: a board of the net, a sign, a tag, an advertisement and what it costs. */
export const PUT_UP = rowsOf<OwnerEffect>({
  "listed: both nightstands up, 45 each":
    "^ <piece> [s|is|are|went? up|live now|online|already|finally? ,|.|:|-] $ each|apiece|a_piece|for_each|firm|obo|or_best_offer|even|for_both|for_the_pair|total|cash?",
  "listed: offering the desk at 120":
    "^ [im|i_am|we_are|were|now|currently* offering] <art>? <piece> at|for|now* $ ;",
  "listed: i am asking 140 for the desk": "^ [i|we am|are now? asking] $ for|on <art>? <piece>",
  "listed: desk up on swapboard 125 obo":
    "^ !!<sell>|<buy>|saw|seen <art>? <piece> [on|up|is|s|in|at|the|<site>|<new>|<place>*] ,|for|at|-* $ obo|or_best_offer|or_best|ono ;",
  "listed: lets try 110 on the desk":
    "^ so|ok|okay|well|now* [lets|let_us try|trying] $ for|on <art>? <piece> ;",
  "word: ad for the desk is live, 135":
    "^ [<art>? ad|ads|listing|post|listings for|of|on] <art>? <piece> is|are|s|went|now* live|up|online|out",
  "listed: desks up, i want 120 for it":
    "<piece> s|is|are|went? [up|posted|listed|online|live now|already? ,|.|-|and|! i|we|im want|wanting|ask] $ for|on? it|them? ;",
  "listed: its finished and online, 110":
    "<~finish>|done .|,|;|-|and|now* [online|live|up|posted ,|at|for|now|already*] $ ;",
  // What was done to it, or is on it, costs what it is to bring no more than its hinges do.
  "listed: table done, two coats of oil, up at 180":
    "<~finish>|done|ready|finished ,|-|.|;|with|and* [<coats>? of|new|fresh|some|<art>|<trait>|<plain>|<opinion>* <supply>|<part> and|&? <supply>|<part>? ,|-|.|;|and|its|is|now* up|live|online|posted on|at|for|now|<site>|the|board*] $",
  "listed: done w desk. up 160":
    "<~finish>|done … <piece> .|,|;|-* [up|live|its_up|now_up|now_live|out_there|its_live] $ ;",
  "listed: threw the desk on the town page for 145": `[${PUT}] up? <art>? <piece> up? ${ONTO} <art>? ${OF_PLACE} <site> !<piece> … $`,
  "word: posted the desk to the neighborhood group for 160": `posted|listed|shared|uploaded|advertised|put_up <art>? <piece>|it up? [on|in|to|onto <art> ${OF_PLACE} <site> <site>?] ,|at|for|-|:* $`,
  "listed: put a for sale sign on the dresser, 180": `!!<~buy>|got|paid|cost [put|put_a|hung|stuck|taped|slapped|pinned|tied|clipped <art>|another? for_sale|price|sale sign|tag|sticker] on <art>? <piece> … $`,
  "listed: hung a tag on the desk, 140":
    "!!<~buy>|got|paid|cost [put|hung|stuck|taped|slapped|pinned|tied|clipped <art>|another? price_tag|tag|tags|sticker] on <art>? <piece> ,|at|for|of|-|:|saying $",
  "listed: hung the sign on the hutch, price tag says 210": `[put|hung|stuck|taped|slapped <art>|another? sign] on <art>? <piece> ,|-|and|.* <art>? price? ${TAG} says|reads|is|: $`,
  "listed: the hutch has a for sale sign on it, 220": `<piece> !!<~buy>|paid|cost [has <art>? for_sale|sale|price|fs? ${TAG} on? it|her?] … $`,
  "listed: the sign on the hutch says 220": `^ !!<~buy>|got|paid|cost <art>? [price|sale|for_sale|new? ${TAG} on] <art>? <piece> says|reads $`,
  "word: the sign on the hutch says 220": `${TAG} on? <art>? <piece>? [that|which|and|,* says|reads|said|saying] $`,
  "word: hung the sign on the hutch, price tag says 210": `${TAG} on <art>? <piece> ,|-|and|.* [<art>? price? ${TAG} says|reads|is|said|:] $`,
  "listed: trunk is in the shop window at 90":
    "^ <art>? <piece> [is|s|now|sits|sitting* in|on <art>? shop|store|front|booth|stall|market window|booth|stall|floor|shelf] ,|at|for* $ ;",
  "fee: ad for the desk cost me 8":
    "^ [<art>? ad|ads|promo|promotion|boost for|on <art>? <piece> cost|costs|was|ran|came_to me|us?] $",
  "fee: ad cost 6 for the dresser":
    "^ [<art>? ad|ads|promo|promotion|boost cost|costs|was|ran me|us?] $ for|on <art>? <piece>",
  "fee: paid 8 for an ad on the desk":
    "^ paid|spent|pd $ for|on [<art>? ad|ads|promo|promotion|boost for|on <art>? <piece>] ;",
  "word: dresser to the booth, tagged 190":
    "<piece> [is|went|goes|put|set? now|already|finally|back? to|in|into|at|over_to|out_at the|my|our booth|antique_mall|mall|shop|stall|store now|already|today?] ,|-|and|for|at* tagged|priced|marked|asking $",
  // A site by a name that nobody knows has no article.
  "listed: threw the desk on swapboard for 145": `[${PUT}] up? <art>? <piece> up? ${ONTO} !loan|top|hold|display|deck <sitename> !<piece> … $`,
  "word: threw the desk on swapboard for 145": `${PUT} up? <art>? <piece> up? [${ONTO} !loan|top|hold|display|deck <sitename> and|&|,? <art>? ${OF_PLACE} <site>|<sitename>?] !<piece> … $`,
});
