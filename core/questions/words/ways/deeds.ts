import { waysOf } from "../../plainer.ts";

/** What a piece may be without, the word that names such pieces, and how it is asked. */
const LACKING: readonly (readonly [things: string, one: string, asked: string])[] = [
  ["hours|hour|time|work_time|work_hours|work_logged|time_logged|hours_logged", "untimed", "hours logged"],
  ["fee|fees|selling_fee|selling_fees", "feeless", "fees"],
  ["list_price|asking_price|price_tag|asking", "unpriced", "list price"],
  ["supplies|materials|spending|money_spent", "spentless", "supplies"],
];
const WITHOUT = "without|with_no|with_zero|has_no|have_no|had_no|needed_no|took_no|paid_no";
const THERE = "{noted|recorded|logged|written_down|on_them|on_it|in_them|in_it|put_in|at_all|so_far|yet}";
const PIECES = "pieces|things|stuff|ones|items|furniture|flips";

const OF_LACKING = LACKING.flatMap(([things, one, asked]) =>
  waysOf({
    [`which pieces have no ${asked} => which ${one} pieces`]: `^ {which|what|show|show_me|list|any|all|my|of} ${PIECES} {that|which} ${WITHOUT} {a|an|any|the|single} ${things} ${THERE} $ => which ${one} pieces`,
    [`what did i sell without any ${asked} => what did i sell ${one}`]: `d:sell|sold|buy|bought|sales ${WITHOUT} {a|an|any|the|single} ${things} ${THERE} !in|of|on => $d ${one}`,
  }),
);

/** Questions that leave a word out or put it elsewhere, and those that name what may be answered. */
export const OF_DEEDS = [
  ...OF_LACKING,
  ...waysOf({
    "did the hutch get picked up => is the hutch gone":
      "^ did|has|was|is !i|we|he|she|they|you x:3 get|gotten|been|got? picked_up|fetched|collected yet? $ => is $x gone",
    "pieces with nothing spent on them => which spentless pieces": `p:${PIECES} with|that_have|that_had nothing|no_money|zero spent on|in them|it $ => which spentless $p`,
    "which pieces did i spend nothing on => which spentless pieces": `^ {which|what|show|show_me|list|any} ${PIECES} {that|which|did|have|do|i|we} spend|spent nothing|zero|no_money on|in {them|yet|so_far} $ => which spentless pieces`,
    "what have i not spent anything on => which spentless pieces":
      "^ which|what pieces|things|stuff|items? {did|have|do|i|we} not|never|havent|didnt spend|spent|put anything|any_money|money|a_cent|a_dime on|in|into {yet|so_far} $ => which spentless pieces",
    "which pieces did i not log hours on => which untimed pieces":
      "^ which|what pieces|things|stuff|items? {did|have|do|i|we} not|never|havent|didnt log|logged|put|note|noted|record|recorded|track|tracked {any|my} hours|time|work on|for|in|into {yet|so_far} $ => which untimed pieces",
    "who logged the gas on sept 21 => who noted the gas on sept 21":
      "^ who logged|recorded|entered|put_in|wrote_down|put_down !the_sale|it|them|what => who noted",
    "sales with no buyer noted => sales of unknown buyer":
      "without|with_no|missing|lacking|has_no|have_no|had_no|having_no|and_no a|any|the? m:buyer|place noted|named|recorded|written_down|on_record|given|entered|logged|known|put_down => of unknown $m",
    "sold without a method noted => sold of unknown method":
      "without|with_no|missing|lacking|has_no|have_no|had_no|having_no|and_no a|any|the? payment|pay? m:method noted|named|recorded|written_down|on_record|given|entered|logged|known|put_down? => of unknown $m",
    "which pieces have no source => which pieces from unknown source":
      "came? without|with_no|missing|lacking|has_no|have_no|had_no|having_no|and_no a|any|the? source noted|named|recorded|written_down|on_record|given|entered|logged|known|put_down? => from unknown source",
    "sold to nobody named => sold of unknown buyer":
      "to|by nobody|no_one|noone|no_buyer|someone|somebody named|noted|recorded|known|on_record|unnamed|unknown|i_named|i_noted|i_didnt_name|i_didnt_note => of unknown buyer",
    "sales where the buyer wasnt noted => sales of unknown buyer":
      "where|when|whose|that the|my? payment|pay? m:buyer|method|source wasnt|isnt|was_not|is_not|was_never|is|was noted|named|recorded|written_down|known|given|unknown => of unknown $m",
    "how did the black dresser buyer pay => how was the black dresser paid for":
      "^ how did the|my|our? x:4 buyer|customer pay|paid {for_it|for|me} => how was the $x paid for",
    "the bookcase buyer paid how => how was the bookcase paid for":
      "^ the|my|our? x:4 buyer|customer paid|pay how $ => how was the $x paid for",
    "how did whoever bought #13 pay => how was #13 paid for":
      "^ how did the|my? whoever|buyer_of|customer_for|guy_who|lady_who|man_who|woman_who|person_who|one_who|guy_that|lady_that|person_that bought|got|took? x:4 pay|paid {for_it|for|me} => how was $x paid for",
    "this month i have paid how much for gas => this month how much did i paid for gas":
      "i|we|ive|weve|i_have|we_have have|had? v:paid|pay|spent|spend|made|make|earned|sold|sell|bought|buy|driven|drove|worked how|what m:much|many => how $m did i $v",
    "how many of them church sale finds done sold => how many of them church sale finds sold":
      "done|have_done|has_done|did_done|got v:sold|bought|spent|made|finished|listed|left|gone !,|with|by => $v",
    "reckon i made money on bookcases => did i made money on bookcases":
      "^ do|d? you|ya|u? reckon|suppose|figure|guess|think that? u:i|we v:made|sold|bought|spent|lost|broke|turned => did $u $v",
    "fixin to buy more stain, how much have i spent on it => how much have i spent on stain":
      "^ im|i_am|were|we_are? so|just? fixin|fixing|about|gonna|going|thinking|thinking_of|planning|looking|off to? buy|buying|get|getting|sell|selling|pick_up|picking_up more|some|another|a|the|my? p:2 ,, q:12 it|that|them|those $ => $q $p",
    "tools, how much have i spent on them => how much have i spent on tools":
      "^ !<asks> the|my|our|those|all|and|so|ok|these? p:3 ,, =what|whats|how|hows|who|whos|when|where|did|does|do|is|are|was|were|has|have q:12 it|them|those|that|em|these r:6? $ => $q $p $r",
    "avg sale on pieces i didnt sell for cash => avg sale on pieces sold not for cash":
      "<us>? didnt|did_not|never|havent|have_not|wasnt|werent|not <us>? sell|sold|go|went|move for|in|with|by|via on? m:<method> => sold not for $m",
    "what did i make on stuff i didnt sell to the nurse => what did i make on stuff sold not to the nurse":
      "<us>? didnt|did_not|never|havent|have_not|wasnt|werent|not <us>? sell|sold|go|went to the|my b:1 => sold not to the $b",
    "was it dad who got the rocking chair => did dad buy the rocking chair":
      "^ was_it|is_it w:1 who|that got|bought|found|picked_up p:4 $ => did $w buy $p",
    "did i buy the vanity or did dad => who found the vanity":
      "^ did i|we get|got|buy|bought|find p:4 or did? d:1 get|buy|find|it? $ => who found $p",
    "who did the coffee table go to and for how much => who bought the coffee table and for how much":
      "^ who_did|whod|who x:4 go|went to and for_how_much|how_much|for_what $ => who bought $x and for how much",
    "did mom or dad get #12 => who got #12":
      "^ did|was_it a:1 or b:1 who|that? get|got|buy|bought|find|found|pick_up|picked_up|bring_home|take|took p:<piece> $ => who got $p",
    "did mom or dad get the floor lamp => who got floor lamp":
      "^ did|was_it a:1 or b:1 who|that? get|got|buy|bought|find|found|pick_up|picked_up|bring_home|take|took the|my|our p:4 $ => who got $p",
    "how did i pay for the vanity, cash or card => how did i pay for the vanity":
      "^ how r:10 , <method> or <method> $ => how $r",
    "did the doctor pay cash or card => how did the doctor pay":
      "^ did w:3 pay in|by|with? <method> or|, <method> $ => how did $w pay",
    "dad pick anything up in october => dad pick up anything in october":
      "v:pick|put|bring|fix|throw|give|mark w:anything|something|stuff|things|pieces|furniture d:up|home|out|away|back|down => $v $d $w",
    "dad pick up anything in october => did dad pick up anything in october":
      "^ !<asks> w:1 d:pick_up|buy|sell|get|list|find|finish|bring_home|start|fix =anything|something => did $w $d",
    "who took the coffee table home => who took home the coffee table":
      "^ so? who took|takes|carried|hauled x:4 home $ => who took home $x",
    "were did the armoire come from => where did the armoire come from":
      "^ so? were|wher|whre|wear =did|do|does|have|is|are|was !did_i_not|do_i_not|did_we_ever|did_i_ever => where",
    "paid anything on the loan this month => did i paid anything on the loan this month":
      "^ d:paid|sold|bought|listed|finished|spent|made|sent|drove|worked|started|returned w:anything|any|something => did i $d $w",
    "tall bookcase gone yet => is tall bookcase gone":
      "^ !<opens> a:the|my|our? w:2? o:<single> d:gone|sold|listed|finished|done|started|posted|up yet|already $ => is $a $w $o $d",
    "the tall bookcase sold? => is the tall bookcase sold":
      "^ !<opens> a:the|my|our? w:2? o:<single> d:gone|sold|listed|finished|done|started|posted|up ? => is $a $w $o $d",
    "made over 500 in may? => did i made over 500 in may":
      "^ d:made|sold|bought|listed|finished|spent|paid m:more_than|over|at_least|less_than|under n:<number> r:8? ? => did i $d $m $n $r",
    "have i sold 20 yet => have i sold at least 20 pieces":
      "^ have <us> d:sold|bought|finished|listed|flipped n:<digits> {yet|already|so_far} $ => have i $d at least $n pieces",
    "the mirror, is it on hold => is the mirror on hold":
      "^ p:4 ,, =is|was|did|has|does|when|where|who|what|how q:8 it|that_one|that r:8? $ => $q $p $r",
    "pieces that didnt come from yard sales => pieces not from yard sales":
      "that|which? didnt|did_not|never come|came|get_bought|come_in from|off => not from",
    "pieces that didnt sell on the noticeboard => pieces not on the noticeboard":
      "that|which? didnt|did_not|never go|went|sell|sold|get_sold through|via|on|over => not on",
  }),
];
