import { wordSet } from "./words.ts";

/*
 * A piece kept for somebody, told in whole messages: "priya put 60 down on the armoire, she'll collect thursday". In what is
 * matched a piece is "P", a sum "$", one of ours "K", anybody else "W", a name that nobody listed "N", a way of paying "M", a day "D" and a
 * mark ",".
 */

const WHO =
  "(?:(?!(?:i|we|my|our)\\b)(?:(?!(?:if|hope|wish|maybe|not|never|nobody|says|said|when|unless|almost|nearly|did|does|no|will|would|could|can|may|might|should|let|need|wanted)\\b)[a-zWK]+ ){0,4}?[WN])";
const LEFT = "(?:put|left|gave|sent|paid|handed|put down|dropped|slid|slipped)";
/** Else it may be the price: "neighbor paid 90 for the desk". */
const AS_DEPOSIT =
  "(?=.* (?:down|deposit|collect|collecting|collects|fetch|fetches|fetching|pick|picks|picking|get|gets|getting|come|comes|coming|till|until|til|kept|held|keep|hold)(?: |$))";
const TILL = "(?:till|until|til|to|before|by|for|on)";
/** When they come for it, which is no wish for their money. */
const COMES =
  "(?: (?:,|and|so|he|she|they|shell|hell|theyll|ll|will|shes|hes|theyre|is|are|to|be|wants|want|wanted|asked|asks|me|us|it|them|kept|held|holding|keep|hold|collect|collecting|collects|fetch|fetches|fetching|pick|picks|picking|up|get|gets|getting|comes|coming|come|for|by|on|till|until|til|the|next|this|over|that|i|D))";
const AGREED =
  "(?: (?:,|and|but|no|nothing|money|deposit|cash|changed|hands|taken|paid|yet|i|we|said|yes|ok|okay|agreed|sure|so|was|fine|with|by|me))";
const TOO = "(?: (?:too|as well|also))";

/** Money that was left: its day is when they come. */
export const LEFT_FOR: readonly RegExp[] = [
  `${WHO}(?: (?:has|just))* (?:put|left|put down|dropped|(?:gave|sent|paid|handed|slid|slipped)(?=.* (?:down|deposit|toward|towards) ))(?: (?:me|us))? \\$${AS_DEPOSIT}(?: M)?(?: (?:down|on|for|toward|towards|as|a|deposit))+ (?:the )?P(?:${COMES}+)?`,
  `${WHO} (?:wants|wanted|is after|has dibs on|fell for) (?:the )?P(?: (?:,|and|so))+ ${LEFT}(?: (?:me|us|down))* \\$(?: M)?(?: (?:down|so|i|to|keep|hold|save|it|for|her|him|them|till|until|D))*`,
  `${WHO} ${LEFT}(?: (?:me|us))? \\$(?: M)? (?:to|so i) (?:keep|hold|save|set aside|reserve) (?:the )?P(?: (?:back|aside))?(?: for (?:her|him|them))?(?: ${TILL} D)?`,
  `\\$(?: M)?${AS_DEPOSIT}(?: (?:down|deposit|on|for))+ (?:the )?P from ${WHO}${COMES}+`,
].map((way) => new RegExp(`^${way}$`));

/** No money yet. */
export const KEPT_FOR: readonly RegExp[] = [
  `(?:(?:i|we) (?:was|were) asked|asked|${WHO} asked(?: (?:me|us|if i could))?)(?: (?:to|keep|hold|save|set|put|aside|back))+ (?:the )?P(?: (?:back|aside|for ${WHO}))* ${TILL} D(?=.* (?:agreed|yes|ok|okay|sure|fine))${AGREED}+`,
  `(?:i )?(?:agreed|promised)(?: (?:to|keep|hold|save|set|put|aside|back))+ (?:the )?P(?: (?:back|aside|for ${WHO}))* ${TILL} D${AGREED}*`,
  `(?:(?:im|were|i|we) )?(?:keeping|holding|saving|putting|setting|kept|held|saved)(?: (?:back|aside))* (?:the )?P(?: (?:back|aside|by))? for (?:her|him|them|${WHO})${TOO}`,
  `(?:(?:im|were|i|we) )?(?:keeping|putting|setting|kept|put|set)(?: (?:back|aside))? (?:the )?P(?: (?:back|aside|by))? for (?:her|him|them)`,
  `(?:the )?P (?:is |stays )?(?:kept|held|set|put|reserved|back|aside)(?: (?:back|aside))*(?: ${TILL} D)? for (?:her|him|them|${WHO})${TOO}?(?: (?:,|no|nothing|money|paid|deposit|cash|yet))*`,
  `(?:the )?P (?:kept|held|set|put)(?: (?:back|aside))* ${TILL} D for ${WHO}(?: (?:,|no|nothing|money|paid|deposit|cash|yet))*`,
  `(?:he|she|${WHO}) wants (?:the )?P (?:kept|held|saved)${TOO}? , (?:keeping|holding|saving|so i keep|so im keeping) it`,
].map((way) => new RegExp(`^${way}$`));

/** After the new day, and what says that it is all right. */
const LONGER =
  "(?: (?:now|instead|,|fine|good|by|with|me|ok|okay|no|problem|problems|thats|alright|sure|worries|so|be|it|i|said|yes|away|shes|hes|is|works|for|us|on|the|P))*";

/** What is held already is kept for longer; the day said last is the new one. */
export const KEPT_LONGER: readonly RegExp[] = [
  `(?:(?:he|she|they|${WHO}) )?(?:(?:needs?|wants?|asks|asked|asking|needed|wanted)(?= (?:.* )?(?:till|until|til|can) )|can only|giving (?:her|him|them)|gave (?:her|him|them)|extended|extending|pushed|moved)(?: (?:her|his|their|the|me|it|for|hold|pickup|out|only|come|make|to|wait))* (?:${TILL} )?(?:the )?D(?: after)?(?: (?:,|the))*(?: D)?${LONGER}`,
  `(?:he|she|they|${WHO}) (?:cant|cannot|wont|couldnt)(?: (?:make|do|come|get|here|it|on|by))* D(?: (?:,|but|so|and|can|will|come|comes|coming|make|do|its|is|on|till|until|til|to))* D${LONGER}`,
].map((way) => new RegExp(`^${way}$`));

const WHOSE = "(?:his|her|their)";
const FETCHES =
  "(?:come|comes|coming|collects?|collecting|fetch|fetches|fetching|grabs?|grabbing|gets?|getting|takes?|taking|picks?|picking|pickup|collection|bring|brings|bringing|rest|balance|here|there|round|over|be by|pays?|paying|can only|can do|needs?|stops?|swings?|swinging|stopping|due|works?|suits?|till|until|til)";
const COMING = `(?:,|and|so|oh|ok|okay|then|he|she|they|hes|shes|theyre|hell|shell|theyll|hed|shed|theyd|will|ll|is|are|be|gonna|going|able|only|can|could|wants?|wanted|hopes?|hoping|plans?|planning|intends?|promised|supposed|to|do|make|says?|said|told|asked|called|texted|phoned|telephoned|rang|wrote|messaged|saying|me|us|that|this|it|them|for|on|the|in|up|back|out|with|now|D|morning|afternoon|evening|night|noon|first thing|(?:after|before) (?:work|school|church|class|lunch|noon|dinner|supper)|sometime|early|late|other|remaining|pickup|fine|thats|best|better|fine|good|great|instead|for|day|drive|driving|send|sends|van|truck|trailer|buyer|cash|W W|${WHOSE} (?:K|W|[a-z]*(?:s|er|or|and|end)|van|truck|car|trailer)|(?:at|around|about|after|before|by) [?$]|(?:other|remaining|last) \\$|${FETCHES})`;

/** What is still to come of the price. */
export const LEFT_TO_PAY = wordSet("rest balance remainder");

/** "shes coming sat for it", "rest on tuesday", "can only do sunday": the day, of what is on hold. */
export const COMES_FOR = new RegExp(
  `^(?!.*\\bD\\b.*\\bD\\b)(?=.*\\bD\\b)(?=(?:.* )?${FETCHES}(?: |$))${COMING}(?: ${COMING})*$|^(?:(?:so|and|ok|i|im|ill|id|we|were|told ${WHOSE}|told (?:him|them)|said) )*(?:keep|hold|keeping|holding|saving|save) (?:it|them|that)(?: for (?:him|her|them))? (?:till|until|til|to|through) (?:the )?D$`,
);
/** Which nearly no message does. */
export const MAY_COME =
  /\b(?:com(?:e|es|ing)|collect|fetch|grab|g[eo]t|tak(?:e|es|ing)|pick|bring|rest|balance|be by|here|round|over|pay|can|need|stop|swing|due|til|until|keep|hold|sav)/i;

/** "one more week": from the day that it was held until. */
export const WEEK_LONGER = /\b(?:for )?(?:one more|another|an extra|one extra|a further) week\b/i;

/** Taken for a price, and paid another time: "neighbor's having the rattan one for 50, pays when she's back". */
export const PAYS_LATER =
  /^(?:(?:the|my) )?(?:[a-zW]+ ){0,3}?[WN](?: (?:is|s|has))* (?:having|taking|buying|wants|gets|takes|has|dibs on|got|dibs)(?: on)? (?:the )?P(?: (?:,|for|at))+ \$(?: (?:,|and|he|she|they|will|ll|to|me|us|for|it))* (?:pays|paying|pay)(?: (?:me|us|for|it|up))*(?: (?:when|once|after|as soon as|later|tonight|tomorrow|soon|on|next|week|D))(?: [a-zDN]+){0,7}$/;

/** Words of these, which are nobody's name. */
export const NO_NAME_HERE: ReadonlySet<string> = new Set(
  [...LEFT_FOR, ...KEPT_FOR, ...KEPT_LONGER, COMES_FOR, PAYS_LATER].flatMap(
    ({ source }) => source.match(/[a-z]+/g) ?? [],
  ),
);

/** "who is coming saturday" asks. */
export const ASKS_WHO = /^\W*(?:who|whos|when|whens|is|are|was|what|which|does|did|anyone|anybody)\b/i;

/** A message that keeps a piece for somebody says one of these. */
export const KEEPS =
  /\b(?:put|left|gave|sent|paid|handed|keep|keeping|kept|hold|holding|held|sav(?:e|ing)|aside|till?|until|needs?|wants?|giving|extend(?:ed|ing)|pushed|moved|stays|set|pays?|paying|dropped|can only|can(?:'|no)?t|wont|week|pick(?:ing|s|up)|com(?:ing|es)|collect(?:ing|s)|fetching|fetches|tak(?:e|es|ing)|grab(?:s|bing)?|gets?|getting|come)\b/i;
