import { wordSet } from "./words.ts";

/*
 * How a price is bargained over, move by move. In what is matched a piece is "P", a sum "$", a way of paying "M", one of
 * ours "K", anybody else "W", a day "D" and a mark ",".
 */

const ART = "(?:the|a|an|this|that|these|those|his|her|their|my|our|some|both|all)";
const PIECE = `(?:(?:${ART} )*P)`;
const IT = `(?:it|them|that|both|${PIECE}|(?:both|all) of them|(?:the )?(?:pair|set|lot)|everything)`;
const OF_IT = `(?: (?:for|on|of|over) ${IT})?`;
const SUM = "\\$(?: (?:in )?M)?";
const PAID = `${SUM}${OF_IT}(?: (?:in )?M)?`;
/** Whoever is not one of us, with a word that says what they are like and where they are. */
const THEY =
  "(?:he|she|they|hes|shes|theyre|somebody|someone|(?:(?:the|this|that|some|a|an|one|our|my|other|first) )*(?:(?!(?:i|we|me|us|my|our|and|but|so)\\b)[a-z]+ |P )?W(?: (?:at|from|on|down) (?:the |this )?(?:W|[a-z]+))?)";
const WE = "(?:i|we|ive|weve|id|(?:(?:my|our|the) )?K)";
const US = "(?:me|us|(?:(?:my|our|the) )?K)";
const THEM = "(?:him|her|them|(?:the )?W)";
const JUST =
  "(?: (?:just|only|really|finally|actually|first|originally|initially|still|at first|to start|even))*";
const ENDED = "(?:(?:ended up|wound up|finally|only|just|so|managed to|was able to|had to) )*";
const BEAT =
  "(?:talked|haggled|bargained|negotiated|got|brought|knocked|worked|beat|chewed|argued|talk|haggle|bargain|get|bring)";
const DOWN_TO =
  "(?: down(?: from \\$)?(?: to \\$(?: from \\$)?)?| from \\$(?: down)? to \\$| to \\$(?: from \\$)?)";
const WANTED =
  "(?:wanted|wants|asked|asks|started|started out|started off|opened|began|said|says|say|told me)";

/** Each sort of move, with the ways in which it is said. */
export const MOVES = {
  /** What they ask for it: it is theirs. */
  theirs: [
    `${THEY}${JUST} ${WANTED}(?: (?:for|at|with))? \\$ (?:for|on) ${PIECE}${JUST}`,
    `${THEY}${JUST} (?:was asking|were asking|is asking|are asking|asking|was at|were at|quoted ${US}|quoted|(?:listed|had)(?: it)?(?: (?:marked|listed))? (?:for|at))(?: for)? \\$${OF_IT}${JUST}`,
    `${THEY}${JUST} (?:had|has|listed|marked|priced|tagged) ${PIECE}(?: (?:listed|marked|priced|tagged|posted|up|down|out|sitting))*(?: (?:at|for))? \\$`,
  ],
  /** What they name, as if it were theirs. */
  theySaid: [
    `${THEY}${JUST} ${WANTED}(?: (?:for|at|with))? \\$(?: (?:for|on) (?:it|them))?${JUST}`,
    `(?:(?:the|his|her|their) )?(?:price )?(?:tag|sticker|sign|ticket)(?: on ${PIECE})? (?:said|says|was|were|is|read|had) \\$${OF_IT}`,
    `${THEY}${JUST} (?:countered|came back)(?: (?:with|at))? \\$`,
  ],
  /** What was asked for it, by whomever. */
  asked: [
    `(?:(?:the|our|my) )?(?:asking price|list price|price|ask|asking|listing|ad)(?: on ${PIECE})? (?:said|says|was|were|is|read|had) \\$${OF_IT}`,
    `${PIECE}(?: (?:was|were|is|had been|originally|first|up))+(?: (?:marked|listed|priced|tagged|asking|at|for))* \\$(?: (?:on|by) the (?:tag|sticker|sign))?`,
    `(?:(?:was|were|originally|first) )*(?:listed|marked|priced|tagged|posted|up|started) (?:at|for) \\$(?: online)?`,
    `(?:(?:${WE}|was|were|originally) )*asking(?: price)?(?: (?:of|was))? \\$${OF_IT}`,
    `(?:${PIECE} )?(?:was |were )?(?:marked|tagged|priced)(?: (?:at|for))? \\$`,
    `\\$ asking(?: price)?${OF_IT}`,
    `(?:${WE} )?(?:wanted|asked) \\$(?:${OF_IT}| ${PIECE})${JUST}`,
    `(?:(?:${WE}|was|were) )*hoping for \\$${OF_IT}`,
    `(?:(?:its|they|it|these|those|price) )?(?:(?:is|are|was|were) )?(?:usually|normally|regularly|regular price|regular|reg|retail|brand new|new)(?: (?:its|is|was|are|for|at|goes|go|run|runs))* \\$`,
    `(?:(?:they|it|these|those) )?(?:usually |normally )?(?:goes?|sells?|runs?|retails?) for \\$(?: (?:new|retail|online|usually|in the store|in stores))?`,
    `(?:${WE} )?saw (?:a )?${PIECE} (?:for|at|marked|listed|priced)+ \\$`,
    `(?:(?:down|marked down|reduced|negotiated|haggled|bargained|talked)(?: down)? from|instead of|rather than) \\$`,
  ],
  /** No less than that, they say. */
  floor: [
    `${THEY}${JUST} (?:wouldnt|would not|couldnt|wont|didnt want to|refused to) (?:go|come|drop|take|do|sell)(?: ${IT})?(?: (?:below|under|down|lower|less|anything|for|past|any|than))+ \\$${OF_IT}`,
  ],
  /** What we name. */
  bid: [
    `(?:${WE}${JUST} )?(?:said|says|say|told|came back|came in|countered|started|opened|began|proposed|held|stuck|stayed|stood)(?: (?:${US}|${THEM}|firm|to|with|at|for|${IT}))* \\$${OF_IT}${JUST}`,
    `(?:${WE}${JUST} )?(?:offered|bid|lowballed|low balled|tried)(?: (?:${THEM}|to (?:get|buy|take|haggle|lowball)|get|lowball|with|at|for|low|${IT}))* \\$${OF_IT}${JUST}`,
    `${WE}${JUST} had${JUST} \\$(?: (?:on ${US}|left|M))*`,
  ],
  /** What they would give: it is ours. */
  theirBid: [
    `${THEY}${JUST} (?:offered|bid|lowballed|low balled|tried)(?: (?:${US}|to (?:get|buy|take|haggle|lowball)|get|lowball|with|at|for|low|${IT}))* \\$${OF_IT}${JUST}`,
    `(?:offered|lowballed) ${US}(?: (?:with|at|for|${IT}))* \\$${OF_IT}${JUST}`,
    `(?:tried|wanted|trying) to (?:haggle|lowball|get|buy)(?: (?:${US}|with|at|for|${IT}))* \\$`,
    `(?:${THEY}${JUST} )?wanted ${IT} (?:for|at) \\$${JUST}`,
    `${THEY}${JUST} (?:wanted|tried|came)(?: (?:${US}|and|by|over|to|get|have|buy|take|pay|only|just|wanted|offered|lowball|give|${IT}))+ (?:(?:for|at) )?\\$${OF_IT}${JUST}`,
    `${THEY}${JUST} asked (?:if|would) (?:${WE}|i would|we would|wed) (?:take|do|accept) \\$${OF_IT}`,
    `${THEY}${JUST} came(?: (?:by|over|out|here))* (?:for|about|to see|to look at|to get) ${IT}`,
  ],
  /** All that they had with them. */
  had: [`${THEY}${JUST} (?:had|brought)${JUST} \\$(?: (?:on ${THEM}|left|M))*`],
  /** Down from one to the other. */
  theirsDown: [
    `(?:${WE} )?${ENDED}${BEAT}(?: (?:${THEM}|it|the price|${PIECE}))${DOWN_TO}(?: (?:for|on) ${IT})?`,
    `(?:${WE} )?${ENDED}(?:haggled|bargained|negotiated|talked)${DOWN_TO}(?: (?:for|on) ${IT})?`,
    `${THEY}${JUST} (?:came|went|dropped|lowered|reduced|knocked)(?: (?:it|${PIECE}|the price))?${DOWN_TO}(?: (?:for|on) ${IT})?`,
    `(?:was |were )?(?:marked|reduced) down to \\$`,
  ],
  oursDown: [
    `(?:${THEY} )?${BEAT} ${US}(?: down)?(?: (?:on|for) ${PIECE})?(?: from \\$)?(?: down)?(?: to \\$)?(?: from \\$)?(?: (?:for|on) ${IT})?`,
    `${THEY} ${BEAT} (?:it|the price|${PIECE})${DOWN_TO}`,
  ],
  /** Up to what we want. */
  theirsUp: [
    `(?:${WE} )?${ENDED}${BEAT} ${THEM} up(?: from \\$)?(?: to \\$)?(?: (?:for|on) ${IT})?`,
    `${THEY}${JUST} (?:came|went) up(?: from \\$)?(?: to \\$)?(?: (?:for|on) ${IT})?`,
  ],
  /** How much comes off: no price. */
  off: [
    `(?:(?:${THEY}|${WE}) )?(?:knocked|took|got|dropped|gave|saved|wanted|asked for)(?: ${THEM}| ${US})? \\$ off(?: (?:of )?(?:${IT}|the price))?`,
  ],
  met: [
    `(?:(?:${THEY}|${WE}|both) )*(?:(?:finally|just|then) )?(?:met|settled|agreed|landed|compromised|shook(?: hands)?|ended up|wound up|closed|met in the middle|met halfway|split it|split the difference)(?: (?:at|on|for|to))+ \\$${OF_IT}`,
    `(?:${WE} )?accepted \\$${OF_IT}`,
  ],
  /** Nothing but that it went to and fro. */
  haggled: [
    `(?:(?:had to|${WE}|${THEY}|after|we both) )*(?:(?:some|a little|a bit of|a lot of|lots of|much|all that|a) )?(?:haggle|haggled|haggling|bargain|bargained|bargaining|negotiated|negotiating|negotiation|back and forth|went back and forth|going back and forth)(?: (?:a|some|little|bit|lot|for a while|over it|about it|with (?:him|her|them)))*`,
    `(?:(?:${THEY}|${WE}) )?(?:countered|lowballed(?: ${US})?)`,
    `(?:(?:${WE} )?(?:said|told ${THEM}) (?:no|no way|nope|nah)|(?:${WE}|${THEY}) laughed|(?:(?:${WE}|${THEY}) )?(?:held|stood|stayed) firm|said no|too much(?: for me)?|too low|way too (?:much|low)|that was too (?:much|low)|wouldnt budge|didnt budge|nobody bit)`,
  ],
  taken: [
    `(?:(?:${THEY}|${WE}) )?(?:accepted|accepted it|accepted that|agreed|agreed to it|agreed to that|went for it|said (?:ok|okay|yes|fine|sure|deal)|was (?:ok|fine|good) with (?:it|that)|caved|gave in|shook on it)|done deal|deal|done|fine`,
  ],
  took: [`(?:(?:${THEY}|${WE}) )?took (?:it|that|them)`],
  looked: [
    `(?:${WE} )?(?:just )?(?:went|drove|stopped|ran|came)(?: (?:out|over|by|back|up|down))* to (?:look at|see|check out|get|buy|pick up|grab) ${PIECE}`,
  ],
  named: [PIECE],
  /** Done by whoever was told of. */
  paid: [
    `${ENDED}(?:paid|paying) ${PAID}`,
    "paid (?:in )?M",
    `${ENDED}let ${IT} go(?: to ${THEY})?(?: (?:to|for|at))?(?: ${SUM})?`,
    `took ${IT} (?:home|away|with (?:me|us|him|her|them))`,
  ],
  bought: [
    `${WE}${JUST} ${ENDED}(?:paid|paying|gave|giving|handed)(?: ${THEM})? ${PAID}`,
    `(?:paid|gave|handed) ${THEM} ${PAID}`,
    `${THEY}${JUST} (?:took|accepted|agreed to|was (?:ok|fine|good) with) ${PAID}`,
    `(?:${WE} )?${ENDED}(?:got|get|getting|bought|buy|buying|grabbed|grabbing|snagged|scored|picked up|took|taking|brought home)(?: (?:${THEM}|${IT}))(?: home)? (?:(?:for|at) )?(?:just |only )?${SUM}`,
    `(?:${WE} )?${ENDED}(?:bought(?: ${IT})?|(?:grabbed|snagged) ${IT})(?: (?:at (?:that|that price)|M))?`,
    `${THEY}${JUST} (?:let ${IT} go|let ${US} have ${IT}|sold (?:${IT} to ${US}|${US} ${IT})|gave (?:${IT} to ${US}|${US} ${IT}))(?: (?:to|for|at) ${SUM})?`,
    `${SUM} out the door`,
    `(?:${WE} )?got ${IT}`,
  ],
  sold: [
    `${THEY}${JUST} ${ENDED}(?:paid|paying|gave|giving|handed)(?: (?:${US}|over))* ${PAID}`,
    `(?:${WE} )?${ENDED}(?:sold|selling)(?: (?:${THEM} )?${IT})?(?: to ${THEY})?(?: (?:for|at))?(?: ${SUM})?(?: to ${THEY})?`,
    `${PIECE}(?: (?:is|was|just|finally|now|got))* (?:sold|gone|went)(?: to ${THEY})?(?: (?:for|at))?(?: ${SUM})?(?: to ${THEY})?`,
    `(?:(?:${WE}|so|ended up|had to) )+(?:let|letting) ${IT} go(?: to ${THEY})?(?: (?:for|at))?(?: ${SUM})?(?: to ${THEY})?`,
    `(?:(?:${WE}|finally) )*(?:took|accepted|got) ${PAID}`,
    `${THEY}${JUST} (?:took|bought|grabbed|got) ${PIECE} (?:for|at) ${SUM}`,
    `${THEY}${JUST} (?:took|drove off with|left with|went home with|loaded|loaded up|hauled|picked up) ${IT}(?: (?:home|away|off|up|with (?:him|her|them)))+(?: M)?`,
    `${THEY}${JUST} paid(?: (?:in )?M| ${US}| it| for it| in full| up)*`,
    `(?:took|loaded) ${IT}(?: up)?`,
  ],
} as const satisfies Record<string, readonly string[]>;

export type Move = keyof typeof MOVES;

/** Every word of a move: none of them is a name. */
export const OF_MOVES: ReadonlySet<string> = new Set(
  Object.values(MOVES)
    .flat()
    .flatMap((way) => way.match(/[a-z]+/g) ?? []),
);

/** What may stand between two moves. */
export const BETWEEN_MOVES =
  "(?:(?:,|D|on|and|but|so|then|though|tho|even|although|until|till|after|because|cause|when|while|in the end|eventually|finally|anyway|well|ok|okay|at first|today|cash|lol|haha) )*";

/** Said of us, or of them. */
export const PAYS = wordSet("paid paying");

/** What may stand right before a tale, or right behind it. */
export const OPENS_MOVE = wordSet(
  "and but so then ok okay well anyway also now today just just_now yeah yes hey alright oh good finally in_the_end after because when while plus lol haha",
);

/** Without one of these no message with one sum tells that a price was bargained over. */
export const BARGAINS =
  /\b(?:want|ask|start|open|offer|counter|lowball|low ball|bid|tried|tag\b|sticker|sign\b|mark|pric|list|talk|haggl|bargain|negotiat|knock|met\b|settl|agreed|accept|landed|compromis|shook|wouldn|down to|only (?:had|brought))/;

/** One of these stands in every move by which a price is bargained over, but "it" and names, sums and pieces. */
export const OF_HAGGLING = wordSet(
  "want wanted wanting wants ask asked asks asking started opened began said says say told was were is are at quoted listed had has marked priced tagged " +
    "read countered came originally first up posted hoping usually normally regularly regular reg retail retails new goes go sells sell " +
    "runs run saw down instead rather wouldnt would couldnt wont didnt refused proposed held stuck stayed stood offered bid " +
    "lowballed low tried trying brought haggle haggled haggling bargain bargained bargaining negotiated negotiating negotiation " +
    "got knocked worked beat chewed argued talk talked get bring went dropped lowered reduced took gave saved met settled agreed " +
    "landed compromised shook ended wound closed split accepted back going laughed too nobody",
);

/** And one of these in every deed that a tale of bargaining comes to, or in what it comes to where it is not done yet. */
export const OF_DEEDS = wordSet(
  "paid paying let letting took taking gave giving handed accepted agreed ok fine good got get getting bought buy buying grabbed " +
    "grabbing snagged scored picked brought sold selling door gone went loaded drove left hauled talked haggled bargained negotiated " +
    "knocked worked beat chewed argued talk haggle bargain bring came dropped lowered reduced marked met settled landed compromised " +
    "shook ended wound closed split",
);
