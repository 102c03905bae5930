import type { TurnEffect } from "./afterwards.ts";
import { REST_ON } from "./not-come.ts";
import { rowsOf } from "./row.ts";

/** Time that nobody worked, needs that take nothing from the fact before them, and what things cost by now. */

export const NEEDS = rowsOf<TurnEffect>({
  // What it lacked, before what was got for it.
  "word: it needs two new shelves, got boards for 31.40":
    "^ [it|they|<art>? <piece>? needs|needed|was_missing|is_missing|missing|lacked|could_use <art>|#? new|some|other|<trait>|<opinion>* <piece>|<part>|<supply> ,|so|and|.|-*] i|we? got|bought|picked_up|grabbed|found|ordered <art>|#|some? <trait>|<plain>* <supply> … $",
  "word: 8 for a plant stand, needs paint":
    "$ … [,|-|.|and|but|it|just|only|still|which|that* needs|need|wants|could_use <art>|some|lots|of|new|good|bit|lot|little* <supply>|<labor>|<part>|tlc|work|love <supply>|<labor>|<part>|and|,*] !$ ;",
  "word: had to replace the seat of the stool, 9":
    "[had_to|needed_to replace|redo] <art>? <trait>|<plain>|<opinion>* <supply>|<part>|<piece> … $",
  "word: the desk needed new handles, which cost me 24":
    "<supply>|<part> [,|-? which|they|those|these cost|costs|was|were|came_to|came_in_at|set|ran|are me|us|back|only|just|another*] $ ;",
  // No time passed at it, and no time of ours.
  "denial: no work on the desk today":
    "[no|zero|didnt_do_any|didnt_get_any|not_much|hardly_any|barely_any work|progress|movement|time|hours|<labor>] on|for|with|today|yet|done|to|till|until|til|before|this_week|this_weekend|all_week",
  "other: watched a 2 hour video about stripping":
    "[watched|watching|saw|streamed|listened_to <art>? <time>? long|how_to|great|good? <any>? video|videos|show|movie|podcast|tutorial|clip|episode|class_online]",
  "offer: its 24 miles to the estate sale":
    "^ [its|it_is|theres|thats|is about|only|just|like|a? <miles>] to|away|from|each|one|out|there",
  "other: my brothers loan is 9200 at 6%":
    "[<theirs>|his|her|their|hers|theirs|bobs <plain>|<new>|<trait>? loan|loans]",
  "denial: class was cancelled, no 90":
    "[<stream> was|got|is|were|has_been cancelled|canceled|called_off|postponed|rained_out ,|so|and? no? $?]",
  "word: sofa came back, wouldn't fit through their door. gave them the 230 back":
    "<retire>|<refund>|back … [,|-|.|bc|because|since|cause|as? it|they|that|he|she? didnt|wouldnt|doesnt|did_not|would_not|couldnt|wont fit|go|get|match|work through|thru|in|into|up|down|around|past|with|under|on|for his|her|their|the|a? <any> <any>?] ,|.|;|-|and|so",
  "word: daybed came back bc it wouldnt fit upstairs, gave em 140 back":
    "<retire>|<refund>|back … [,|-|bc|because|since|cause|as? it|they|that|he|she? didnt|wouldnt|doesnt|did_not|would_not|couldnt fit|match|work|go_with|like|want|need it|them|anything|her|his|the|up|down? <word>?]",
  "word: had to take the desk back, he said the color was off, refunded him 110":
    "back … ,|-|.|;|bc|because|since|cause [<art>? he|she|they|wife|husband|<person> said|says|thought|claimed|complained|swears|hated|didnt|forgot_to|hadnt|never it|the|that|like|love|measure|measured|check|checked? <word>? <word>? <word>? <word>?] ,|.|;|-|and|so",
  "word: sold both end tables to a stager, 95, she wants more stuff like that":
    "<sell> … [,|and|but|.? he|she|they wants|want|wanted|asked_for|would_like|is_looking_for more|others|another|other stuff|things|pieces|of|like|that|those|these|this|them|it*]",
  "word: boosted the armoire listing for 7 and somebody messaged already":
    "<list>|<supply>|<reprice> … [,|and|. already|just? somebody|someone|people|folks|lady|guy|<bare> people|messages? already|just? messaged|texted|wrote|called|asked|is_asking|emailed already|me|us|about_it|right_away*]",
  "word: desk is back in the garage, refunded teo the whole thing":
    "<piece> [is|s|are|its back|back_home|home_again|here_again in|at|on|with* my|the|our* <ownspot>|me|home|place|shop|house? again? ,|.|and|so|;|!*] i|we? refunded|refund|gave|gave_back|sent|returned|gave_him|gave_her",
  "bought: sold desk 150 and used it to buy a hutch 90":
    "<sell> … $ and|,|then|&* [i|we? used|took|put it|that|the_money|the_cash|money|cash|some|some_of_it|part_of_it|most_of_it|of_it* to|and buy|get|bought|got|grab|grabbed]",
  "word: took 25 down on the desk, his name is gus": "[his|her|their|the|,* name|names|name_is is? <new>] ;",
  "word: found a buyer for the hutch, sold 235, so thats done":
    "<sell> … [,|so|and|.|!|-* thats|that_is|that|its|it_is|one|all done|that|it|taken_care_of|handled|sorted|a_wrap|one_down|done_with|finally_done] ;",
  "sold: dad moved both lamps at the flea market, 20 each":
    "^ … [moved] both|all|<art>* <piece> at <art>? <place> ,|for* $ ;",
  "word: some other lady bought the dresser 185 cash, dana never answered":
    "<buyer> … $ … [,|and|.|-* <new>|he|she|they never|didnt|hasnt|wont answered|replied|showed|responded|answer|reply|called_back|texted_back|wrote_back back|me|to_me|up*] ;",
  "word: desk hold expired, never heard from him":
    "<fallthrough>|<hold>|<~fallthrough> … [,|-|.|and* i|we? never|havent|didnt heard|hear|heard_back back|from|him|her|them|again*] ;",
  // Things said of needs that take nothing from the fact before them.
  "word: finished desk needs photos":
    "<~finish> <art>? <piece> [needs|need|gonna|going_to|will|ill|want_to|plan_to <word>* <word>]",
  "word: sold desk 90 no problem":
    "[no rush|hurry|worries|problem|problems|issues|issue|haggling|haggle|questions_asked|questions|drama|biggie|complaints|regrets|big_deal|fuss|luck]",
  "word: bought a bed frame 35 nothing wrong with it":
    "[nothing wrong|broken|missing|fancy|special|major|big with|about|on it|them|her|him?]",
  "denial: not much done on the dresser today":
    "[not|didnt_get|havent_got|nothing|hardly|barely_got|never_got much|a_lot|a_thing|anything|nothing|lots|a_whole_lot? done|finished on|with]",
  "doubt: 40 minutes well spent":
    "<time> [well|not|flew|down|wasted|of|too|felt|is|was … spent|bad|by|drain|wasted|long|life|back|time|enough|huh] lol|haha|huh|tbh|hah? ;",
  "word: nightstand stays in my bedroom, too pretty to sell":
    "[too|way_too|just_too|much_too <opinion>|<trait>|<plain>|<new> to sell|sell_it|part_with|part_with_it|let_go|give_away|flip|list|let_it_go]",
  "word: first coat of wax on the buffet, 50 min, second one tomorrow":
    "<time> … [,|-|and|.* <art>? second|next|another|2nd|third|3rd|last|other|final one|coat? tomorrow|tonight|later|to_go|to_come|after|next|on|this <word>|<day>? <word>? <word>?] ;",
  "word: desk not worth holding on to, gave it away":
    "[not|isnt|wasnt|arent|werent|hardly|barely|never really|even|been* worth|worthy_of <any> on_to|onto|to|up|it|them|for*]",
  "word: sold desk 90 not mad":
    "[not bad|too_bad|cheap|great|perfect|mad|complaining|sorry|much|far|worth|fun|easy]",
  "word: bought desk 40 couldnt resist":
    "[couldnt|cant|could_not|can_not|regret|regretting it|resist|complain|believe|beat|pass|wait|leave|refuse|say_no it|that|this|it_up|up|there|behind?]",
  "word: sold desk 90 didnt even haggle":
    "[didnt|did_not|dont|do_not haggle|argue|mind|even? haggle|argue|mind|blink|care]",
  "intention: paint 12 in cart": "[in|into <art>? <cart>|basket|wishlist]",
  "word: dresser sold for asking 190":
    "<sell>|<list> … [for|under|over|at|below|above|near|full|my|the* asking price?]",
  "word: bench is finished, two days later than i had hoped":
    "[,|-? <span>|<time>|<day>? later|longer|sooner|earlier|slower|faster|harder than i|we had|have|ever|even* hoped|expected|planned|thought|wanted|meant|liked|feared] ;",
  "word: went a bit nuts today: bought a bench 8":
    "^ [i|we? went|gone|going a? bit|little|totally|completely|kinda* nuts|bananas|crackers|crazy|mad|overboard] today|again|there|,|:|.|!",
  "word: sold bench 40 less than i wanted":
    "<sell> … $ [less|more than i|we|he|she|they|what? wanted|hoped|asked|paid|listed|asking|expected|planned]",
  "fetch: desk: 50 down from a coworker, rest friday": `<~hold>|deposit|deposits|down … ${REST_ON}`,
  "word: took 50 down on dresser bal due at pickup":
    "<hold> … [bal|balance|rest|remainder|other_half $? due|owed|comes|is_due? on|at|by|when? pickup|delivery]",
  "word: sold bench 40 and she also wants the table":
    "<sell> … $ [and|but|,? <art>? <person>|<someone>|buyer also|too|now? wants|wanted|asked_about|asked_for|is_interested_in <art>? <piece> too|also?]",
  "word: sold the bench but kept the cushion 40":
    "<sell> <art>? <piece> [but|and|, kept|keeping <art>? <part>|cushion|cushions|<inpiece>]",
  // A piece of its own may be kept as well.
  "doubt: sold the desk and kept the lamp 120":
    "<sell> <art>? <piece> [but|and|,|& i|we* kept|keeping|keep <art>? <piece>]",
  "other: sold somebody else's dresser 90": "<sell>|<buy> [somebody|someone|anybody] <piece>",
  "doubt: kept desk for bob": "kept|keeping <art>? <piece> [for <new>|<kin>]",
  "doubt: sold trunk 40 and tossed in a lamp":
    "<sell> … and|,|&|then|i|we|also* [threw|tossed|throwing in] <art>|my|our|free* <trait>* <piece>",
  // What things cost by now is no purchase.
  "other: price of paint went up 4 bucks":
    "^ <art>? [price|prices|cost <word>? of|on|for <art>? <supply> went|has|is|are|jumped|dropped|keeps|rose up|down|gone_up|going_up? by|to?] $",
  "other: paint went up 4 bucks":
    "^ <art>? <supply> [went_up|has_gone_up|is_up|are_up|jumped|rose|went_down|is_down|are_down|dropped by|to|another?] $",
});
