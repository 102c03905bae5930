/*
 * What tells behind a cost for what it was: "that's for the dresser", "goes to the shop", "general stock". Pieces stand in it
 * as §.
 */

const IT =
  "(?:it|that|this|those|these|they|them|all|everything|that one|this one|all of it|all of them|half of it)";
const JUST = "(?:(?:just|all|only|mostly|mainly|really|more|also|again) )*";
/** Who or what goes there, or is to be put there. */
const LEADS = [
  `${IT} (?:is|are|was|were|goes|go|going|belongs|belong|counts|is going|are going|should go|can go)`,
  "(?:and )?(?:thats|thats one|that ones|this ones|this is|its|theyre|goes|going|goin|belongs|meant|intended)",
  `(?:put|charge|charged|book|count|log|file|chalk|stick|mark|enter|add|split|divide)(?: ${IT})?(?: down| half and half| evenly)?`,
];
const LEAD = `(?:${LEADS.join("|")}) `;
const TO = "(?:for|to|on|onto|toward|towards|under|as|in|into|against|between|up to|of)";
const THE = "(?:the |my |our |that |this |a |both |both the )?";

/** What is of no piece. */
const SHOP_IS =
  "(?:shop|shops|garage|workshop|studio|barn|shed|business|biz|stock|inventory|overhead|general|restock|restocking|everything|whatever)";
const BESIDE_SHOP =
  "(?:general|shop|garage|workshop|stuff|use|stock|supply|supplies|inventory|expense|expenses|cost|costs|overhead|category|account|fund|restock|in general|shelf|shelves|cabinet|comes next|thing|things|itself)";
const SHOP = `(?:(?:the|my|our|a|an|other|misc|everyday|regular|plain|some) )?${SHOP_IS}(?: the)?(?: ${BESIDE_SHOP})*`;
const NO_PIECE =
  "(?:just |only )?(?:any |one |a |any one |a single |a particular |any particular |a specific |any specific )(?:piece|project|item|thing|job)(?: in particular)?";

/** Said before what is meant in place of what was said first. */
const OPENS =
  "(?:(?:(?:and|but|oh|well|hm|ah|ok) )?(?:i mean|i meant|no wait|wait no|no|wait|sorry|actually|oops|nope|scratch that|er|my bad|make that|or rather) )*";

/** Of the pieces named, and none but them; its groups: what puts right, what leads there, the preposition. */
export const FOR_PIECES = new RegExp(
  `^(${OPENS})(${LEAD})?${JUST}(${TO} )?${THE}§(?: (?:and|plus|and also|then|&)(?: for| to| on)? ${THE}§){0,3}(?: instead| too| both)?$`,
);
/** "half of it for the desk and the other half for the dresser" */
export const IN_HALVES = new RegExp(
  `^half(?: of(?: it| them| that)?)? ${TO} ${THE}§(?: and| &)?(?: the)?(?: other)?(?: half| rest)(?: of it)? ${TO} ${THE}§$`,
);
/** "the dresser needed it" */
export const NEEDED_BY =
  /^(?:because |cause |since )?the § (?:needs|needed|takes|took) (?:it|them|some|more|new ones|a few)$/;
/** Of no piece. */
export const FOR_SHOP = new RegExp(
  `^(${OPENS})(?:${LEAD})?${JUST}(?:${TO} )?${SHOP}(?:,? not (?:for |on )?(?:the |a )?(?:§|${NO_PIECE}))?$`,
);
/** "to have on hand" */
export const KEPT_IN_STOCK =
  /^(?:just )?(?:to (?:have|keep)(?: some| it| them)? (?:on hand|in stock|around)|to restock(?: the shop)?|stocking up|to stock up|we were running low|running low)$/;
/** "not for the desk", "not for any one piece" */
export const NOT_FOR = new RegExp(
  `^(?:but )?(?:${LEAD})?${JUST}not (?:really |just )?(?:${TO} )?(?:${THE}§|${NO_PIECE})$`,
);
/** "not for the desk but the dresser": the last is meant. */
export const NOT_BUT = new RegExp(
  `^(?:${LEAD})?not (?:${TO} )?${THE}§ (?:but|but rather|its|thats|just)(?: ${TO})? ${THE}§$`,
);

/** Behind a supply and before what it came to: "wood glue for the workshop, 6.80". */
export const SHOP_WITHIN = new RegExp(`^for ${JUST}${SHOP}$`);

/** A cost of no piece is told so by this token. */
export const OF_SHOP_TOKEN = "for the shop";
