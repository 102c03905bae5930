import { wordSet } from "./words.ts";

/*
 * How a price is bargained over, move by move. In what is matched a piece is "P", a sum "$", a way of paying "M", one of
 * ours "K", anybody else "W" and a mark ",". A move stands between blanks.
 */

const ART = "(?:the|a|an|this|that|these|those|his|her|their|my|our|some|both)";
const PIECE = `(?:(?:${ART} )*P)`;
const IT = `(?:it|them|that|${PIECE})`;
const OF_IT = `(?: (?:for|on|of|over) ${IT})?`;
const ANYBODY = "(?:he|she|they|hes|shes|theyre|somebody|someone)";
/** Whoever is not one of us, with up to two words that say what they are like. */
const THEY = `(?:${ANYBODY}|(?:(?:the|this|that|some|a|an|one|our|my|other|first) )*(?:(?!(?:i|we|me|us|my|our|and|but|so)\\b)[a-z]+ )?W)`;
const WE = "(?:i|we|ive|weve|id|(?:(?:my|our|the) )?K)";
const US = "(?:me|us|(?:(?:my|our|the) )?K)";
const THEM = "(?:him|her|them|(?:the )?W)";
const JUST =
  "(?: (?:just|only|really|finally|actually|first|originally|initially|still|at first|to start|even))*";

/** Each sort of move, with the ways in which it is said. "them", "us": whose it is. */
export const MOVES = {
  /** What they ask for it: it is theirs. */
  theirs: [
    `${THEY}${JUST} (?:wanted|wants|asked|asks|started|started out|started off|opened|began|said|says|told me)(?: (?:for|at|with))? \\$ (?:for|on) ${PIECE}${JUST}`,
    `${THEY}${JUST} (?:was asking|were asking|is asking|are asking|asking|quoted ${US}|quoted|listed it (?:for|at)|had it (?:for|at|listed at|marked|marked at))(?: for)? \\$${OF_IT}${JUST}`,
    `${THEY}${JUST} (?:had|has|listed|marked|priced|tagged) ${PIECE}(?: (?:listed|marked|priced|tagged|posted|up|down))*(?: (?:at|for))? \\$`,
  ],
  /** What was asked for it, by whomever. */
  asked: [
    `${THEY}${JUST} (?:wanted|wants|asked|asks|started|started out|started off|opened|began|said|says|told me)(?: (?:for|at|with))? \\$(?: (?:for|on) (?:it|them))?${JUST}`,
    `(?:(?:the|his|her|their|our|my) )?(?:price )?(?:tag|sticker|sign|asking price|list price|price|ask|asking|listing|ad)(?: on ${PIECE})? (?:said|says|was|were|is|read|had) \\$${OF_IT}`,
    `${PIECE}(?: (?:was|were|is|had been|originally|first|up))+(?: (?:marked|listed|priced|tagged|asking|at|for))* \\$`,
    `(?:(?:was|were|originally|first) )*(?:listed|marked|priced|tagged|posted|up) (?:at|for) \\$`,
    `(?:(?:${WE}|was|were|originally) )*asking(?: price)?(?: (?:of|was))? \\$${OF_IT}`,
    `\\$ asking(?: price)?${OF_IT}`,
    `(?:${WE} )?(?:wanted|asked) \\$(?:${OF_IT}| ${PIECE})${JUST}`,
    `(?:(?:${WE}|was|were) )*hoping for \\$${OF_IT}`,
    `(?:(?:its|they|it|these|those|price) )?(?:(?:is|are|was|were) )?(?:usually|normally|regularly|regular price|regular|reg|retail|brand new|new)(?: (?:its|is|was|are|for|at|goes|go|run|runs))* \\$`,
    `(?:(?:they|it|these|those) )?(?:usually |normally )?(?:goes?|sells?|runs?|retails?) for \\$(?: (?:new|retail|online|usually|in the store|in stores))?`,
    `(?:${WE} )?saw ${PIECE} (?:for|at|marked|listed|priced)+ \\$`,
    `(?:(?:down|marked down|reduced|negotiated|haggled|bargained|talked)(?: down)? from|instead of|rather than) \\$`,
  ],
  /** No less than that, they say. */
  floor: [
    `${THEY}${JUST} (?:wouldnt|would not|couldnt|wont|didnt want to|refused to) (?:go|come|drop|take|do|sell)(?: ${IT})?(?: (?:below|under|down|lower|less|anything|for|past|any|than))+ \\$${OF_IT}`,
  ],
  /** What we would give, or somebody. */
  bid: [
    `(?:(?:${THEY}|${WE})${JUST} )?(?:said|says|told|came back|came in|countered|started|opened|began|proposed)(?: (?:${US}|${THEM}|with|at|for|${IT}))* \\$${OF_IT}${JUST}`,
    `(?:${WE}${JUST} )?(?:offered|bid|lowballed|low balled|tried)(?: (?:${THEM}|to (?:get|buy|take|haggle|lowball)|get|lowball|with|at|for|low|${IT}))* \\$${OF_IT}${JUST}`,
  ],
  /** What they would give: it is ours. */
  theirBid: [
    `${THEY}${JUST} (?:offered|bid|lowballed|low balled|tried)(?: (?:${US}|to (?:get|buy|take|haggle|lowball)|get|lowball|with|at|for|low|${IT}))* \\$${OF_IT}${JUST}`,
    `(?:tried|wanted|trying) to (?:haggle|lowball|get|buy)(?: (?:${US}|with|at|for|${IT}))* \\$`,
    `${THEY}${JUST} (?:wanted|tried|asked|came)(?: (?:${US}|and|by|over|to|get|have|buy|take|pay|only|just|wanted|offered|lowball|give|${IT}))* (?:(?:for|at) )?\\$${OF_IT}${JUST}`,
    `${THEY} came(?: (?:by|over|out|here))* (?:for|about|to see|to look at|to get) ${IT}`,
  ],
  /** Down from one to the other. */
  theirsDown: [
    `(?:(?:${WE}|managed to|was able to|had to) )*(?:talked|haggled|bargained|negotiated|got|brought|knocked|worked|beat|chewed|talk|haggle|bargain|get|bring)(?: (?:${THEM}|it|the price|${PIECE}))(?: down(?: from \\$)?(?: to \\$)?| from \\$(?: down)? to \\$| to \\$)(?: (?:for|on) ${IT})?`,
    `(?:(?:${WE}|managed to|was able to) )*(?:haggled|bargained|negotiated|talked) down(?: from \\$)?(?: to \\$)?(?: (?:for|on) ${IT})?`,
  ],
  oursDown: [
    `(?:${THEY} )?(?:talked|haggled|bargained|negotiated|got|brought|knocked|worked|beat|chewed|argued) ${US}(?: down)?(?: (?:on|for) ${PIECE})?(?: from \\$)?(?: down)?(?: to \\$)?(?: (?:for|on) ${IT})?`,
    `${THEY} (?:talked|haggled|bargained|negotiated|got|brought|knocked|worked) (?:it|the price|${PIECE}) down(?: from \\$)?(?: to \\$)?`,
  ],
  /** How much comes off: no price. */
  off: [
    `(?:(?:${THEY}|${WE}) )?(?:knocked|took|got|dropped|gave|saved)(?: ${THEM}| ${US})? \\$ off(?: (?:of )?(?:${IT}|the price))?`,
  ],
  met: [
    `(?:(?:${THEY}|${WE}|both) )*(?:(?:finally|just|then) )?(?:met|settled|agreed|landed|compromised|shook(?: hands)?|ended up|wound up|closed|met in the middle|met halfway|split it|split the difference)(?: (?:at|on|for|to))+ \\$${OF_IT}`,
  ],
  /** Nothing but that it went to and fro. */
  haggled: [
    `(?:(?:had to|${WE}|${THEY}|after|we both) )*(?:(?:some|a little|a bit of|a lot of|lots of|much|all that|a) )?(?:haggle|haggled|haggling|bargain|bargained|bargaining|negotiated|negotiating|negotiation|back and forth|went back and forth|going back and forth)(?: (?:a|some|little|bit|lot|for a while|over it|about it|with (?:him|her|them)))*`,
    `(?:(?:${THEY}|${WE}) )?(?:countered|lowballed(?: ${US})?)`,
    `(?:(?:${WE} )?(?:said|told ${THEM}) (?:no|no way|nope|nah)|(?:${WE}|${THEY}) laughed|(?:(?:${WE}|${THEY}) )?(?:held|stood|stayed) firm|said no|too much(?: for me)?|too low|way too (?:much|low)|that was too (?:much|low)|wouldnt budge|didnt budge)`,
  ],
  took: [`(?:(?:${THEY}|${WE}) )?took (?:it|that|them)`],
  named: [PIECE],
  looked: [
    `(?:${WE} )?(?:just )?(?:went|drove|stopped|ran|came)(?: (?:out|over|by|back|up|down))* to (?:look at|see|check out|get|buy|pick up|grab) ${PIECE}`,
  ],
  taken: [
    `(?:(?:${THEY}|${WE}) )?(?:accepted|accepted it|accepted that|agreed|agreed to it|agreed to that|went for it|said (?:ok|okay|yes|fine|sure|deal)|was (?:ok|fine|good) with (?:it|that)|caved|gave in|shook on it)|done deal|deal|done|and done`,
  ],
  /** Whoever it was that was told of. */
  paid: [`(?:(?:ended up|wound up|finally|only) )*(?:paid|paying) \\$${OF_IT}(?: (?:in )?M)?`],
  letGo: [`(?:just |finally )?let ${IT} go(?: to ${THEY})?(?: (?:to|for|at))?(?: \\$)?(?: (?:in )?M)?`],
  bought: [
    `${WE}${JUST} (?:(?:ended up|wound up|finally|only) )*(?:paid|paying|gave|giving|handed)(?: ${THEM})? \\$${OF_IT}(?: (?:in )?M)?`,
    `(?:paid|gave|handed) ${THEM} \\$${OF_IT}(?: (?:in )?M)?`,
    `(?:(?:${WE}|managed to|was able to|ended up|wound up|finally|just) )*(?:got|get|getting|bought|buy|buying|grabbed|grabbing|snagged|scored|picked up|took|taking|brought home)(?: (?:${THEM}|${IT}))(?: home)? (?:(?:for|at) )?(?:just |only )?\\$(?: (?:in )?M)?`,
    `(?:(?:${WE}|so|finally|just) )*(?:bought|grabbed|snagged|picked up|scored) ${PIECE}(?: (?:for|at))? \\$(?: (?:in )?M)?`,
    `(?:(?:${WE}|so|finally|just) )*bought ${IT}(?: at (?:that|that price))?`,
    `${THEY}${JUST} (?:let ${IT} go|let ${US} have ${IT}|sold (?:${IT} to ${US}|${US} ${IT})|gave (?:${IT} to ${US}|${US} ${IT}))(?: (?:to|for|at) \\$)?(?: (?:in )?M)?`,
    `(?:${WE} )?got ${IT}`,
  ],
  sold: [
    `${THEY}${JUST} (?:took|drove off with|left with|went home with|loaded|loaded up|hauled|picked up) ${IT}(?: (?:home|away|off|up|with (?:him|her|them)))+(?: M)?`,
    `${THEY}${JUST} (?:(?:ended up|wound up|finally|only) )*(?:paid|paying|gave|giving|handed)(?: (?:${US}|over))* \\$${OF_IT}(?: (?:in )?M)?`,
    `(?:(?:${WE}|so|finally|just|ended up|wound up) )*(?:sold|selling)(?: ${IT})?(?: to ${THEY})?(?: (?:for|at))?(?: \\$)?(?: (?:in )?M)?(?: to ${THEY})?`,
    `${PIECE}(?: (?:is|was|just|finally|now))* sold(?: to ${THEY})?(?: (?:for|at))?(?: \\$)?(?: (?:in )?M)?(?: to ${THEY})?`,
    `(?:(?:${WE}|so|finally|just|ended up|had to) )+(?:let|letting) ${IT} go(?: to ${THEY})?(?: (?:for|at))?(?: \\$)?(?: (?:in )?M)?(?: to ${THEY})?`,
    `(?:(?:${WE}|finally) )*(?:took|accepted|got) \\$${OF_IT}(?: (?:in )?M)?`,
    `${THEY}${JUST} (?:took|bought|grabbed) ${PIECE} (?:for|at) \\$(?: (?:in )?M)?`,
    `${THEY}${JUST} paid(?: (?:in )?M| ${US}| for it| in full| up)*`,
  ],
} as const satisfies Record<string, readonly string[]>;

export type Move = keyof typeof MOVES;

/** Every word of a move: none of them is a name. */
export const OF_MOVES: ReadonlySet<string> = new Set(
  Object.values(MOVES)
    .flat()
    .flatMap((way) => way.match(/[a-z]+/g) ?? []),
);

/** What may stand between two moves, and before the first. */
export const BETWEEN_MOVES =
  "(?:(?:,|D|on|and|but|so|then|though|tho|although|until|till|after|because|cause|when|while|in the end|eventually|finally|anyway|well|ok|okay|at first|today|cash) )*";

/** What may stand right before a tale, or right behind it. */
export const OPENS_MOVE = wordSet(
  "and but so then ok okay well anyway also now today just just_now yeah yes hey alright oh good finally in_the_end after because when while plus",
);

/** Without one of these no message tells that a price was bargained over. */
export const BARGAINS =
  /\b(?:want|ask|start|open|offer|counter|lowball|low ball|bid|tried|tag\b|sticker|sign\b|mark|pric|list|talk|haggl|bargain|negotiat|knock|met\b|settl|agreed|landed|compromis|shook|wouldn|instead|down from|hoping|usual|normal|regular|\breg\b|retail|\bnew \$?\d|\$?\d new\b|saw\b)/;
