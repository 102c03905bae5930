import type { ChatterEffect } from "./doings.ts";
import { rowsOf } from "./row.ts";

const ON = "[,|-|.|;|! and|so|then|also|but*";
const THEY = "<art>|our|his|her? he|she|they|<kin>|<person>|<new>|i|we";
const PICS = "pics|pictures|photos|photo|pic|picture";

/** What others did beside a note, and what is said of it: who brought it, whose pictures are better, what comes tomorrow. */
export const BYSTANDERS = rowsOf<ChatterEffect>({
  "chat: sold the crib 40, my sister delivered it": `<sell>|<buy>|<hold> … $ … ${ON} <art>? <kin>|<person> just|already|then? delivered|drove|dropped|brought|took|hauled|carried|loaded|moved it|them|everything off|over|home|out|up|in|down|away|to|for|me|us|him|the|their|house|place|truck|car|van|today|already*] ;`,
  "chat: sold the crib 40, pics monday": `${ON} ${PICS}|stuff|details|listing|updates|posts <day>|tomorrow|later|soon|tonight|to_come|to_follow|coming|coming_soon|next_week|this_weekend] ;`,
  "chat: sold the crib 40, more stuff tomorrow": `${ON} more|new|better|other ${PICS}|stuff|details|things|listings|updates|posts <day>|tomorrow|later|soon|tonight|to_come|to_follow|coming|coming_soon|next_week|this_weekend] ;`,
  "chat: sold the crib 40, on to the next one": `${ON} on to|onto the|my|our? next one|piece|project|thing?] ;`,
  "chat: listed the crib 40, her pictures are better than mine": `${ON} his|her|their|<theirs> ${PICS} are|were|look|looked|came_out|turned_out|beat|always >] ;`,
  "chat: listed the crib 40, she took good pictures": `${ON} ${THEY} takes|took|shot|snapped a|some|the|great|good|nice|better|new|really|such* ${PICS} of_it|of_them|too|for_it?] ;`,
  "chat: paint 12 for the desk, saved me a trip": `${ON} it|that|which|he|she|they|<kin>* saved|saves me|us a|the|another|some|so_much|a_lot_of|from* trip|drive|time|hassle|headache|gas|run|errand|stop >] ;`,
  "chat: paid dad 15 for the desk help, he earned it": `${ON} ${THEY} more_than|really|sure|totally|definitely|truly? earned|deserved|deserves|earns it|that|every_penny|every_cent|every_bit_of_it] ;`,
});
