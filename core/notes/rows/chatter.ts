import { WORN_OUT } from "../words/supplies.ts";
import { BYSTANDERS } from "./bystanders.ts";
import { type ChatterEffect, DOINGS } from "./doings.ts";
import { FEELINGS } from "./feelings.ts";
import { INTEREST, SCARCE, SLOW } from "./laments.ts";
import { LIVING } from "./living.ts";
import { OPINIONS } from "./opinions.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

const FOR_LONG =
  "me|us|for|itself|up|out|the|rest|of|my|our|a|long|all|time|years|days|life|ages|while|quickly|fast|lot|easier|later|tomorrow|forever*";

/** What is said of the day and how it went. */
const ROWS = rowsOf<ChatterEffect>({
  "chat: sold the coat rack 48, so we may cross that one off":
    "[so|and|,|.|;* we|you|i|lets may|can|could|might|should? cross|tick|check|take|strike|scratch that|it|them|this one? off the|our|my|your? list? now|please|too?] ;",
  "chat: guess who sold the desk, 210!!!":
    "^ [guess|look|see who|whos] just|finally? <sell>|<list>|<~finish>|<~buy>",
  "chat: some man asked about the bench, told him its sold":
    "^ <art>|some|another? <someone>|<person>|people|<plain>* asked|asks|messaged|called|texted|wrote|inquired about <art>? <piece> again|today|too? [,|.|but|so|and* i|we|had_to|just? told|tell him|her|them|em it|its|is|was|already* sold|taken|gone|spoken_for|on_hold|held|reserved|already?] ;",
  "chat: 300 to the loan, done, going to bed":
    "loan … [,|.|!|and|so* done|all_done|finished|thats_done|im_done|were_done|done_with_it for? the|this? month|today|now|week|day|night?] ,|.|!|;",
  // What stands behind it is meant.
  "chat: fun money? jk, sent 200 to the loan":
    "^ <word> <word>? <word>? ? [jk|just_kidding|kidding|lol_jk ,|.|!] <any>",
  "chat: sent 200 to the loan like real adults":
    "to|on|toward|at|for|a|the|my|our <any>? loan [like|as <art>? real|true|proper|<trait>|<plain>|<opinion>|<new>? adults|adult|grown_ups|grownups|grown|grownup|person|people|citizen|citizens|champ|boss|pro|clockwork|always|usual|humans|kids|folks ups|do|should?] ;",
  "chat: bought a dolly for 64, and it ought to last me the rest of my days": `$ [,|.|and|so|,* it|they|this|that|which|my|our back|knees|arms|wrists|hands|shoulders? ought|should|shall|will|better|oughta to? last|do|serve|hold|thank|save|help|pay|work|love|make ${FOR_LONG} ${FOR_LONG} ${FOR_LONG}] ;`,
  "chat: cancel the drive i just gave you":
    "cancel|delete|remove|undo|scratch|strike|take_back|take_out|void|erase|drop|ignore|forget the|that|those <any> [that|which? i|we just|only|already|last? gave|sent|told|texted|messaged|noted|logged|put|mentioned you|u|in|down? about?]",
  "chat: i swear this job will be the death of me, sold the crib 40":
    "^ [i_swear|swear <art>? !<piece> <any> <any>? will|is|was|gonna|going_to|is_gonna|is_going_to* be? the|my death|end|ruin of_me|of_us?] ,|.|!|;",
  "chat: sold the crib 40 and i didnt even have to carry it":
    "[,|and|but|. i|we? didnt|didnt_even|did_not|dont|never even? have|had|need|needed to carry|load|lift|haggle|move|help|deliver|leave|wait|clean|fix|touch|do|drive|budge|negotiate >] ;",
  "chat: well that was awkward but he paid. sold the crib 40":
    "^ [well|so|oh|ok* that|this|it|thats|its was|is? so|really|super|very|just|kinda|a|pretty* awkward|weird|fun|fast|quick|easy|painful|rough|wild|crazy|close|intense|annoying|stressful|interesting|funny|unexpected|painless one|call? but|and he|she|they paid|bought_it|showed|came] .|,|!",
  "chat: standing in line at the hardware store so before i forget, paint 13.20":
    "^ [im? standing|waiting|stuck|sitting|parked in|at|outside|by <art>? <any> <any>? at|of|in? <art>? <place>? so|and|but] <any>",
  "chat: oh i never logged this, gas 32":
    "[oh|and|also* i|we? never|forgot_to|didnt|havent|totally_forgot_to|should_have log|logged|record|recorded|write|wrote|note|noted|text|texted|tell|told|enter|entered|put|mention|mentioned|add|added|report you|u|it|this|that|these|those|about|down|in|on_here|yet|before|earlier*] ,|:|-|.",
  "chat: let the crib go for 65 just to be done with it":
    "[just? to be_done|be_rid|get_rid|be_shut|get_it_over|get_done|get_it_done|be_over|get_it_out with|of|over it|that|them|with?] !<piece>",
  "chat: took pics, sold the crib 40":
    "^ [took|snapped|got|grabbed some|new|the|its|good|better|a_few* pics|pictures|photos|pic|photo] ;",
  "chat: sold the crib 40, guy loaded it himself":
    "^ [<art>? <person>|he|she|they|buyer|both_of_us|we loaded|carried|hauled|moved|lifted|wrestled it|them|that up|out|down|in? himself|herself|themselves|by_himself|by_herself|by_hand|together|upstairs|downstairs|alone] ;",
  "chat: kids are driving me nuts, paint 13.20":
    "[<art>? <kin>|<person>|<word> is|are|were|was|kept? driving|drives|drove me|us nuts|crazy|insane|batty|mad|bonkers|up_the_wall]",
  "chat: bills day.. paid 190 on the car loan":
    "^ [<plain>|<opinion>|<trait>|<new>|bills|loan|market|laundry|paint|long|slow|<word> day] ,|.|:|!|-",
  "chat: curb alert paid off: free rocker":
    "^ [curb_alert|curb_shopping|curb_watching|patience|persistence|early_start|waiting|haggling paid_off|pays_off]",
  "chat: he tipped me 10 on top":
    "tip|tipped|tips … $ [on_top|extra|to_boot|besides|as_well|too of? that|it?] ;",
  "chat: guy put 20 down on the desk, back sat w the rest":
    "!!sold put|left|gave|gave_me|down|deposit … $ … [,|-|.|and|he|she|they|hes|shes|theyre|will|ll|be|is|says|that* back|coming_back|comes_back|returning|returns on|by|next|this? <day>|tomorrow|later|tonight|payday with|w|for|and|to <art>? pay|bring|get|grab? <art>? rest|balance|remainder|other_half|money] ;",
  "chat: green chair broke when i sat in it lol. tossed it":
    "<piece> [broke|snapped|cracked|collapsed|shattered|gave_out|fell_apart|split in_half|in_two|apart? when|while|after|as|once|under|beneath … lol?] ,|.|so|and",
  "chat: payday! 250 to the loan": "^ [payday|pay_day] !on|for",
  "chat: gloves 6.25, that's all for today":
    "[and|so? thats|that_is|thats_it|that_was all|it|everything|the_lot? for|from now|today|tonight|me|us?] ;",
  "chat: went to the dump, fee 12, tossed the recliner": "^ [i|we? went_to_the_dump|went_to_dump] ,|.|and",
  // How it went, and why something was needed.
  "chat: sander 59, old one died": `^ [because|cause|cuz|since|as|the|my|our* old_one|old_ones|old_pair|old_set|old_can|old_blade|old_brush|old_stuff|mine|<oldone> finally|just? ${WORN_OUT}|dead|dull|shot on_me?] ;`,
  "chat: sandpaper 8, the old stuff was done":
    "^ [because|cause|cuz|since|as|the|my|our* old_stuff|old_can|old_jar|old_bottle|old_roll|old_sheet was|is done|gone|finished|empty|used_up] ;",
  "chat: next one, sold the crib 40":
    "^ ok|okay|so|alright|and|now* [next|new one|up|item|thing|person|buyer|customer|taker|guy|lady? is|was?] ,|:|-|. <any>",
  "chat: no bites in two weeks so the crib is now 40": `^ so|ok|well|still* [theres|had|have|got? ${SCARCE} ${INTEREST} in|for|since|at|on|so|all|yet|from|this|now|still|after ${SLOW} ${SLOW}] ,|.|;|-|so|and|then`,
  "chat: dictating while i drive, bought two chairs 20":
    "^ [im? dictating|typing|texting|writing|talking this? while|as i|im? drive|driving|walk|walking|cook|cooking|eat|eating|wait|waiting|load|loading]",
  "chat: the seller was so nice, bought the wingback for 25":
    "^ [<art>? seller|owner|lady|man|woman|guy|couple|family|people|folks|they|he|she was|were so|very|super|really|just|such|a|the* nice|sweet|kind|lovely|friendly|nicest|sweetest|sweetheart|delight|gem lady|man|guy|person|people|couple?] ,|.|!|-|and|so",
});

/** What people say of the day, of others and of themselves, and what they cry out. */
export const chatter = tableOf([...ROWS, ...FEELINGS, ...OPINIONS, ...BYSTANDERS, ...DOINGS, ...LIVING]);
