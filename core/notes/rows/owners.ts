import { BACKED_OUT } from "../words/deals.ts";
import { NAMES_THAT_ARE_WORDS } from "../words/people.ts";
import { BESIDE, FOLK } from "./beside.ts";
import { BUYERS, GETS, LEAVES } from "./buyers.ts";
import { EARNINGS } from "./earnings.ts";
import { FATES } from "./fates.ts";
import { HANDED } from "./handed.ts";
import { HANDS, type OwnerEffect } from "./hands.ts";
import { PARTS } from "./parts.ts";
import { PUT_UP } from "./put-up.ts";
import { rowsOf } from "./row.ts";
import { tableOf } from "./table.ts";

/** Houses and trades that buy, by no name. */
const HOUSES =
  "school|church|store|shop|office|hotel|motel|inn|restaurant|bakery|cafe|bar|brewery|winery|salon|spa|studio|gallery|museum|theater|library|daycare|preschool|clinic|company|firm|farm|charity|shelter|boutique|florist|antique_shop|antique_store|dealer|dealers|local|locals|regular|collector|decorator|designer|stager|contractor|realtor";
const COMES =
  "came|stopped|drove|swung|dropped|showed|stopped_by|came_by|came_over|came_back|swung_by|showed_up";
const ROUND_HERE =
  "next_door|across_the_street|down_the_street|down_the_road|up_the_street|up_the_road|around_the_corner|round_the_corner|across_town|in_town|downtown|nearby";
/** What is taken, without its name. */
const THE_GOODS =
  "<art>? it|them|em|everything|all|both|rest|lot|stuff|things|whole_lot|whole_thing of? it|them|those|these? all?";
/** Behind a name. */
const NOW = "finally|just|then|also|already|actually";

/** Who acts: kin for the shop, anybody else a buyer. */
const ACTORS = rowsOf<OwnerEffect>({
  "asked: the guy i got it from paid 200 for the dresser":
    "^ [<art>? <person> i|we got|bought it|this|that|the? <piece>? from] paid|gave|spent",
  "ours: dad picked up a bookcase 25": "^ me? [<art>? <kin> <new>?] " + GETS + "|<verb>|<light>",
  "ours: husband half an hour on the hutch": "^ [and|,|-* <art>? <kin>] <time> on|sanding|<labor>",
  "ours: hubby is keeping the workbench": "^ [<art>? <kin> <new>?] is|are <retire>",
  "ours: its mom, bought desk 40": "^ [its|it_is|this_is <art>? <kin>]",
  "ours: uncle here, sold the trunk 65": "^ [<art>? <kin> here|speaking|again|texting]",
  "buyer: mike came by and bought the hutch 200":
    "^ [<art>? <person>|<new>|<place> <new>|<place>|<noun>|<person>|<trait>? finally|just? " +
    COMES +
    " by|over|back|up|out|today? and|to|for?] " +
    GETS,
  "buyer: she came for the desk":
    "^ [<art>? same|<trait>|<opinion>|whole? <person>|<new>|couple|family <new>|<person>? from_yesterday|from_last_week|from_before|from_earlier|from_the_other_day? finally|just? " +
    COMES +
    " by|over|back|up|out|early|late? for] <art>? other|others|last|second|remaining? <piece>",
  "buyer: he came today instead, paid 200 cash":
    "^ [<art>? <person>|<new> finally|just? " +
    COMES +
    " by|over|up|out|early|late|today|instead|finally|already* ,|and|-? paid|paid_me|gave|gave_me|handed_me|with? the?] $",
  "buyer: greg picked it up 260 cash": `^ [<art>? <person>|<new> picked ${THE_GOODS} up] $|,`,
  "buyer: they picked it up": `^ [<art>? <person>|<new> picked ${THE_GOODS} up] ;`,
  "buyer: maria picked the desk up 90":
    "^ [<art>? <person>|<new>] picked|scooped|snapped|snatched <art>? <piece> up",
  "sold: mike put 40 down on the sofa and bought the lamp for 15":
    "^ <art>? <opinion>|<trait>* !<kin> <person>|<new> put|left|gave|paid|came|stopped … and|then [bought|took|grabbed|picked_up|paid_for] <art>? <piece>",
  "sold: sold desk 90 to a couple, they also bought the lamp 15":
    "<sell>|<hold> … ,|and|&|.|then [he|she|they|who also|then|even? bought|took|grabbed|got|picked_up] !a|an <art>? <piece>",
  "buyer: the lady with the blue truck gave me fifty for the rocking chair":
    "^ [<art>? <opinion>|<trait>|<plain>* <person> with|w|from|in|at|down|across <art>? <any> <word>? <word>?] gave|paid|handed|pd me|us $ <method>? for <art>? <piece>",
  "word: stopped and got paint for the armoire 14":
    "^ i|we|just|also|then|so* [stopped|went|ran|drove|swung|popped|headed|walked|hopped in|by|over|out|off|up|down|to_town|at_the_store* and] bought|purchased|picked_up|grabbed|got|paid|snagged|scored some|more|a|an|the? <supply>|gas",
  "word: stopped and bought a lamp 8":
    "^ i|we|just|also|then|so* [stopped|went|ran|drove|swung|popped|headed|hopped in|by|over|out|off|up|down* and] bought|purchased|picked_up|grabbed|got|snagged|scored a|an <piece>",
  "sold: came and got the desk 120":
    "^ [came|stopped|stopped_by|came_by|came_over by|over|back? and] " + GETS,
  "buyer: lady from church took the lamp 20":
    "^ [<art>? <opinion>|<trait>|<plain>* <person> from|with|w|at|in|down|across|by|on|over|next|named|i|of <art>? <any> <word>? <word>?] " +
    GETS,
  "sold: someone else bought the armoire 80":
    "^ [someone_else|somebody_else|some_other_guy|some_other_lady|some_other_person|another_person|another_buyer] " +
    GETS,
  "word: me and dad bought a dresser 40": `^ [me|i|myself and|&|with <art>? <kin> <new>?] ${GETS}`,
  "asked: me and bob bought a dresser 40": "^ [me|i|we|us and|&|with <art>? <new>|<person>] " + GETS,
  "buyer: mr jones bought desk 90": "^ [mr|mrs|ms|dr|miss|sir|mister .? <word>] " + GETS,
  "buyer: the couple next door bought the hutch 200":
    "^ [<art>? <opinion>|<trait>* <person> " + ROUND_HERE + "|upstairs|downstairs] " + GETS,
  "buyer: the shop down the street bought trunk 80": `^ [<art>? <place>|<new>|shop|store|school|church|office|hotel|restaurant|bakery|cafe|salon|dealer|business ${ROUND_HERE}] ${GETS}`,
  "buyer: a coffee place took all five for 90": `^ [<art>? <any> place|joint|studio|firm|company|outfit] ${GETS} !<supply>`,
  "buyer: lamp lady bought the armoire 220": `^ [<art>? <piece> ${FOLK}] !got_cold_feet ${GETS}`,
  "ours: trunk sold by dad 80": "<sell>|<buy>|<list>|<finish>|<labor> … [by <art>? <kin>] !and|&",
  "asked: the desk was sold by the neighbor for 60":
    "<piece> … <sell>|<list> [by <art>? !<kin> <opinion>|<trait>* <person>|<new>] !and|&",
  "buyer: kim sent the money for bench 40":
    "^ [<art>? <new>|<person>] sent|paid|wired|mailed|transferred <art>? money|cash|payment for <art>? <piece> $",
  "buyer: dale already took the wardrobe 90": `^ [!<kin> <new>|<person>] ${NOW} ${GETS} !<supply>`,
  "buyer: buck was a no show on the buffet":
    "^ well|and|so|but* [<art>? <new>|<person>] was|is a? no_show|noshow|no_call",
  "buyer: bob bought the desk 120":
    "^ one|me? [<art>? <opinion>|<trait>* !bank|lender|servicer <person>|<new>|<place> &|and? <new>|<person>?] " +
    GETS +
    " !<supply>",
  "buyer: joy grabbed the vanity, paid 150":
    "^ [" + NAMES_THAT_ARE_WORDS.join("|") + "] " + GETS + " the|<piece>|it",
  "buyer: nurse backed out of the desk":
    "^ [<art>? <new>|<place>|<plain> <new>|<person>?] " + BACKED_OUT + `|noshowed|${LEAVES}`,
  "buyer: next door bought desk 90": `^ [next_door|across_the_street|down_the_street|upstairs|downstairs] ${GETS}`,
  "buyer: school bought desk 90": `^ [<art>? ${HOUSES}] ` + GETS,
  "left: desk picked up 90":
    "^ <art>? [<piece> picked_up|collected|claimed|snatched_up] !!from|at|off|by|<place>",
  "buyer: desk bought by mike 120":
    "<piece> $? got|was|were|has_been|is|been|just? bought|purchased|picked_up|taken|grabbed|collected|claimed|fetched [by <art>? !<kin>|<art> <word>]",
  // What was got from a place was bought by us; at a market it may as well have been sold.
  "sold: desk got picked up 120":
    "<piece> [got|was|were|has_been|is|just_got|finally_got] bought|purchased|picked_up|taken|grabbed|collected|claimed|fetched|snatched_up|snapped_up|scooped_up|snagged|nabbed|snaffled|snaffled_up",
  "sold: bought from me desk 90": GETS + " [from|off|off_of me|us]",
  "sold: pat bought desk from me 120": GETS + " … <piece> [from|off|off_of me|us]",
  "ours: took dad 90 min to paint it": "took|taking [<kin>] <time> to",
  "word: grandpa sanded it, took him 2h": "<labor> … [took|taking him|her|them] <time>",
  "ours: my brother sanded the bench 1h": "^ [<art>? <kin> <new>?] <labor>|worked|worked_on",
  "worker: bob sanded dresser 2h": "^ [<art>? <person>|<new>] !moving <labor>|worked|worked_on|helped !me|us",
});

export const owners = tableOf([
  ...BUYERS,
  ...EARNINGS,
  ...HANDED,
  ...ACTORS,
  ...FATES,
  ...BESIDE,
  ...PARTS,
  ...PUT_UP,
  ...HANDS,
]);
