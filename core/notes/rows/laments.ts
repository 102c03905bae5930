/* Why a price comes down, as alternatives of a row: nobody came, nobody asked. */

/** Nobody, before what nobody does. */
export const NOBODY =
  "nobody|no_one|noone|none|nobodys|noones|no_ones|not_a_soul|hardly_anyone|barely_anyone";
/** What nobody does with a piece that does not sell. */
export const LAMENTED =
  "biting|bites|bit|bite|buying|buy|ask|call|come|show|ring|rang|phone|phoned|text|answer|look|wants|want|wanted|wanting|likes|liked|asks|asked|asking|interested|messaging|messages|messaged|message|calls|called|calling|texts|texted|texting|responds|responding|responded|replies|replied|looking|looks|looked|shows|showed|cares|cared|inquired|reached_out|contacted|contacting|clicked|clicks|clicking|noticed|noticing|came|comes|coming";
/** How little there is of what one hopes for. */
export const SCARCE =
  "no|zero|any|hardly_any|barely_any|not_many|not_much|few|nothing_but|only|just|nothing|not_one|not_a_single|just_a_few|not_getting_any|not_getting_many|havent_had_any|havent_gotten_any|not_seeing_any";
/** What one hopes for of a listing, and what comes in its place. */
export const INTEREST =
  "bites|bite|takers|taker|nibbles|nibble|interest|calls|call|messages|message|texts|offers|offer|looks|luck|action|movement|views|hits|traction|love|inquiries|enquiries|inquiry|enquiry|buyers|bidders|attention|lowballs|lowballers|lowball_offers|tire_kickers|tirekickers|scammers|crickets|silence";

/** Words of how long nobody has come for it. */
export const SLOW = `${INTEREST}|i|we|it|its|has|have|had|been|there|is|are|was|were|not|no|nobody|no_one|never|hardly|barely|so|much|as|even|a|one|single|any|callers|caller|look|looked|sat|sitting|sits|stood|standing|here|listed|up|for|in|since|without|about|at|this|that|on|the|all|last|past|<span>|<day>|<month>|month|months|week|weeks|day|days|year|ages|forever|long|too|now|interested|asked|called|came|come|wants|wanted|wanting|buyer|visitor|visitors|two|three|bit|responses|response|reply|replies|inquiry|inquiries|enquiry|enquiries|bites|phone|yet|lately|didnt|hasnt|havent|isnt|wont|doesnt|go|gone|sell|sold|move|moved|moving|budge|budged|really|just|nothing|at_all|so_far*`;
