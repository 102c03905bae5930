import { TO_WORK } from "../words/labors.ts";
import type { OwnerEffect } from "./hands.ts";
import { rowsOf } from "./row.ts";

const FITTED =
  "replaced|changed|changed_out|swapped|swapped_out|installed|fitted|put|put_on|put_in|added|attached|mounted";
const NEW_PART =
  "<trait>|<plain>|<opinion>|#|new|fresh|used|replacement|missing|broken|old|matching* <part>|<supply> <part>?";
const ON_PIECE = "on|in|into|to|onto|for <art>? <piece> ,|for|was|at|-* $ !!<time>";

/** What a piece was bought for. */
const TO_GO_WITH = "for|to_go_with|to_match|that_match|that_go_with|matching the|my|our <trait>* <piece>";

/** Parts of a piece, things for it, services on it and who gets money for them; supplies named by their size. */
export const PARTS = rowsOf<OwnerEffect>({
  "word: replaced the casters on the cart, 14.60": `[${FITTED}] <art>? ${NEW_PART} ${ON_PIECE}`,
  "supply: put new hinges on the dresser, 9.40": `${FITTED} <art>? [${NEW_PART}] ${ON_PIECE}`,
  "part: bought mirror mounting kit 9":
    "[<piece> mounting|mount|repair|assembly|hanging|replacement|touch_up kit|kits|hardware|set]",
  "part: bought dresser back 12": "bought|buy|ordered <art>? [<piece> back|backs] $",
  "asked: sold desk legs 12": "<sell>|<list> <art>? [<piece> <part> <part>?] !<piece>",
  "asked: sold the mirror off the dresser 30":
    "<sell>|<list> <art>? [<part>|<things>|<supply>|<piece> of|off|off_of|from <art>? <piece>]",
  "labor: finished the top of the desk 1h": "<~finish> <art>? [<part> <part>?] of|on <art>? <piece>",
  "word: put the hinges on, 25 mins":
    "^ i|we|finally|just* [put|got|fitted|hung|set|installed|screwed <art>|new|its|both|all* <part>|<supply> <part>? on|in|up|back|back_on|back_in|on_it|into_it] ,|-|in|took|for|today* <time>",
  "word: put it in myself, 45 min":
    "^ i|we? [put|got|fitted|hung|set|cut|hooked|wired|screwed it|them|that|those|this|the_new_one in|on|up|back|together|down|out? myself|by_hand|ourselves|by_myself] ,|-|in|took|for* <time>",
  "word: lined the trunk with paper, took an hour":
    "<labor> <art>? <piece> [with|in <art>? <trait>|<plain>* <supply>|paper|fabric] ,|-|took|for* <time>",
  "word: filled the cracks on the desk, 25 min":
    "<labor> [<art>|all|both? <trait>|<plain>|<opinion>? <blemish> on|in|of|from|out_of <art>?] <piece>",
  "labor: finished the desk legs": "<~finish> <art>? <piece> [<workpart>] !$",
  "word: found 4 chairs for the table, 10 apiece": `<~buy> #|<art>|<trait>|matching* !<inpiece> <piece> [${TO_GO_WITH}] ,|for|at|-* $`,
  "word: found 4 chairs 10 apiece for the table": `<~buy> #|<art>|<trait>|matching* !<inpiece> <piece> ,|for|at|-* $ [${TO_GO_WITH}]`,
  "part: bought desk drawer 12": "[<piece> <part> <part>?] !<piece>|<~finish>",
  "word: stripped the top of the desk, 2h": "<labor> <art>? [<part> <part>? of|on <art>?] <piece>",
  // A part of what was spoken of is no piece.
  "word: refinished the top, 2h15":
    "<labor> [the|its|all|both|inner|outer* top|tops|drawer|drawers|doors|leg|legs|feet|arm|arms|hinge|hinges|handles|runners|joints|slats|back|seat|seats|front|fronts|sides|edges|trim] ,|-|for|about|took* <time>",
  "word: it took me an hour and fifteen to fix the drawer on the desk": `<time>|$ … to ${TO_WORK} <art>? [<part> <part>? of|on|in <art>?] <piece>`,
  "part: bought base of a dresser 20": "[<part> <part>? of|off <art>? <piece>] !<~finish>",
  "supply: one quart of white for the dresser 22":
    "[#|a|an|one|another|some|half? <container>|<grain> of <trait> <trait>?] !<piece>|<supply>|<trait>",
  "supply: another quart 18 for the nightstand":
    "[#|a|an|one|another|more? <container>] ,|for|at|was* $ for|on <art>? <piece>",
  "supply: new mirror for the vanity 38":
    "^ <art>? [<newpart>] for|to|on|in <art>? <piece> ,|for|was|at|-* $",
  "supply: bought seat for chair 20":
    "<~buy>|<spend>|got|paid|ordered <art>? [<trait>|<plain>|<opinion>|replacement|new|used|spare|matching|extra|some|more* <part> <part>?] for|to|on <art>? <piece>",
  "supply: fresh shade was 12":
    "^ i|we? <~buy>|ordered|needed|installed|put|added? <art>|some|#? [new|fresh|replacement|spare <part> <part>?] ,|was|were|for|at|cost|came_to|ran* $",
  "supply: the table needed a new leaf support, 9.75":
    "^ <art>? <piece> needed <art>|some|#? [new|fresh|replacement <trait>|<plain>|<part>|<supply>|<new>* <new>|<part>] ,|for|at|came_to* $ ;",
  "supply: rewired the lamps, 90 min, parts 14.60": "[parts|paper] were|was|cost|came_to|for|-* $",
  "part: replaced the shade, 12": "^ i|we? [replaced <art>? <part> <part>?] ,|for|was* $",
  "word: lumber for drawer bottoms 14": "<supply> [for new|all|some|both|more* <part> <part>?] ,|:|-|was* $",
  "word: foam for the seat too, 9": "<supply> for <art>|its|that [<part> <part>?] !<part>",
  "word: paid the glazier 35 for new panes in the hutch":
    "<supply> $ for <art>? [<trait>|<plain>|<opinion>|new* <part> <part>? in|on|of <art>?] <piece>",
  "supply: four yards of linen for the wing chair, 61":
    "<yards> of? [<trait>|<plain>|<opinion>* <new>] for|on|$|,|was|came_to|cost",
  "supply: bought stuff for desk 20":
    "<~buy>|<spend>|got|paid|ordered <art>? [some|more|a_few|few|other? <things>] for|to|on <art>? <piece>",
  "supply: new back panel for the armoire 11.25":
    "^ <art>? [<trait>|<plain>|back|replacement|new|used|spare|matching|extra* <part> <part>?] for|to|on|in <art>? <piece>",
  "supply: replacement mirror for the vanity 30": "^ <art>? [<spare>] for|to|on|in <art>? <piece>",
  "supply: bought a replacement mirror for the vanity 30":
    "<~buy>|<spend>|got|paid|ordered <art>? [<spare>] for|to|on|in <art>? <piece>",
  "supply: stuff for the secretary 13": "^ [some|more|a_few|few|other? <things>] for|to|on <art>? <piece>",
  "word: hardboard 6 for the bench back": "for|to|on <art>? <piece> [back|backs|<part> <part>?]",
  "supply: wax refill kit 6": "[<supply> <word>? kit|kits|set|pack|refill|refills] !me|us",
  "asked: uploaded wardrobe ad 210": "<list> <art>? <piece> [ad|listing|post] $",
  "fee: ad for the dresser 12":
    "^ <art>? [ad|ads|paper_ad|newspaper_ad|flyer|flyers|boost|promo|promotion|bump] for|on <art>? <piece> $",
  "fee: desk listing fee 3":
    "[<piece> fee|fees|ad|listing_fee|boost|bump] !at|up|went_up|goes_up|is_up|went_live|live|goes_live|is_live|back_up|is_posted|posted|is_out|is_online|online|asks|asking|says|is_asking",
  "fee: bank dinged me 12": "^ <art>? [bank] charged|dinged|fined|docked|took|kept me|us? <art>? $",
  "word: bank dinged me 12":
    "^ <art>? bank [charged|dinged|hit|fined|docked me|us? with|for|a|an|another*] $",
  "fee: bounced check fee 12": "[bounced|returned|bad|nsf check|chk|payment? fee|fees|charge|charges]",
  "fee: boosted listing dresser 5":
    "[renewed|boosted|promoted|promoting|renewing|boosting|featured|bumped <art>? listing|ad|post for|on? <art>? <piece>]",
  "fee: boosted dresser listing 5":
    "[renewed|boosted|promoted|promoting|renewing|boosting|featured|bumped <art>? <piece> listing|ad|post] !at",
  "fee: paid 6 to feature the settee listing":
    "paid|spent $? to|on|for [feature|boost|promote|renew|bump|featuring|boosting|promoting|renewing|bumping <art>? listing|ad|post? for? <art>? <piece> listing|ad|post?]",
  "fee: boosted the ad 5":
    "[renewed|boosted|bumped|promoted|promoting|featured|renewing|boosting|pushed|refreshed|upgraded <art>? listing|ad|post]",
  "service: got dresser painted 60":
    "got|had|getting|having|gotten <art>? <piece> professionally|finally|all? [<done>]",
  "service: got the settee done 60": "got|had <art>? <piece> [done|redone] for? $",
  "word: bob returned the desk, refunded 140":
    "^ [<art>? <new>|<person>] returned|brought|sent|gave <art>? <piece>",
  "word: let bob have the chair": "let [<art>? <opinion>|<trait>|<plain>|<new>* <new>|<person>|<kin>] have",
  "word: gave chair to bob":
    "gave|gifted|giving <art>? <piece> to [<art>? <opinion>|<trait>* <new>|<person>|<kin> <new>?] ;",
  "word: gave bob 20 back for the desk":
    "refunded|gave|returned|sent|handed [<new>|<kin>] $|her|his|their back|deposit",
  "word: tips 12 from the lady who bought desk":
    "<stream> … to|from <art>? [<person> who|that bought|got|has|took <art>? <piece>]",
  "word: gave 15 back to the lady who bought the lamp":
    "gave|sent|returned … back to <art>? [<person> who|that bought|got|has|took] <art>? <piece>",
  "service: paid 60 for desk refinishing": "paid|pd|spent|gave|cost … $ … <art>? <piece> [<service>]",
  "service: paid 60 to reupholster chair":
    "paid|pd|spent|gave|cost … $ … to|for have|get? [<service>|<labor>] <art>? <piece>",
  "service: paid a man 25 to fix the drawer in the desk":
    "paid|pd|gave … $ … to [<service>|<labor>] <art>? <part> <part>? of|on|in <art>? <piece>",
  "asked: sold dresser 175 she paid 60 for a lamp":
    "[she|he|they|buyer|guy|lady|couple <word>? paid|gave|pd me|us?] $ for <art>? <piece>",
  "sold: desk went home with a nice couple 120": "<piece> [went|gone|left home|out with|to]",
  "buyer: hutch went to a nice family 200":
    "<piece> [went|gone|left|going just|both|all? with|to <art>? same|<opinion>|<trait>* <new>|<person>|<kin>|cafe|restaurant|salon] ,|for|at|-* $",
  "part: wardrobe mirror replaced 40":
    "^ <art>? [<piece> <piece>|glass] replaced|recut|resilvered|fixed|repaired for? $",
  "word: mirror recut 40 by the glass shop": "$ [by <art>? <supply>|<word> shop|store|place|guy|man|lady] ;",
  "service: desk delivery 20": "<piece> !<supply>|moved [<service>] $ ;",
  "word: 20 min gluing chair leg": "<time> of? <labor> up|down|out|off? <art>? <piece> [<part> <part>?] ;",
  // What is named by its size, its grit or a word that is a verb elsewhere.
  "supply: 2x4s 6": "[<boards>]",
  "supply: 2x4 6": "^ #|some|a? [<board> <supply>|<new>?] $|for",
  "supply: bought 2x4 8": "<~buy>|spent|<piece> #|some|a|$|on|for? [<board> <supply>|<new>?] $|for",
  "supply: desk 4x4 post 18": "[<board> post|posts|stud|studs|board|boards|lumber|pine|fir|cedar|oak|poplar]",
  "supply: 120 grit 6":
    "^ #|some|a? [<gritty> paper|papers|disc|discs|disk|disks|pad|pads|sheet|sheets|sponge|sponges|belt|belts|block?] $|for",
  "supply: 5 sheets of 120 grit for the dresser, 6.25":
    "[#|a|few? sheet|sheets|pack|box|roll of <gritty> paper|sandpaper?] for|$|,|-",
  "supply: got 80 grit discs 11":
    "<~buy> #|some|a? [<gritty> paper|papers|disc|discs|disk|disks|pad|pads|sheet|sheets|sponge|sponges|belt|belts|block?] $|for",
  "supply: bought finish for desk 12": "<~buy> <art>|<trait>|some|clear|wood* [finish] for|$",
});
