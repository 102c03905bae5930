import type { WayRow } from "../../plainer.ts";

/** Questions that leave a word out or put it elsewhere, and those that name what may be answered. */
export const OF_DEEDS: readonly WayRow[] = [
  [
    "<us>? didnt|did_not|never|havent|have_not|wasnt|werent|not <us>? sell|sold|go|went|move for|in|with|by|via on? m:<method>",
    "sold not for $m",
    "avg sale on pieces i didnt sell for cash",
    "avg sale on pieces sold not for cash",
  ],
  [
    "<us>? didnt|did_not|never|havent|have_not|wasnt|werent|not <us>? sell|sold|go|went to the|my b:1",
    "sold not to the $b",
    "what did i make on stuff i didnt sell to the nurse",
    "what did i make on stuff sold not to the nurse",
  ],
  [
    "^ was_it|is_it w:1 who|that got|bought|found|picked_up p:4 $",
    "did $w buy $p",
    "was it dad who got the rocking chair",
    "did dad buy the rocking chair",
  ],
  [
    "^ did i|we get|got|buy|bought|find p:4 or did? d:1 get|buy|find|it? $",
    "who found $p",
    "did i buy the vanity or did dad",
    "who found the vanity",
  ],
  [
    "^ who_did|whod|who x:4 go|went to and for_how_much|how_much|for_what $",
    "who bought $x and for how much",
    "who did the coffee table go to and for how much",
    "who bought the coffee table and for how much",
  ],
  [
    "^ did|was_it a:1 or b:1 who|that? get|got|buy|bought|find|found|pick_up|picked_up|bring_home|take|took p:<piece> $",
    "who got $p",
    "did mom or dad get #12",
    "who got #12",
  ],
  [
    "^ did|was_it a:1 or b:1 who|that? get|got|buy|bought|find|found|pick_up|picked_up|bring_home|take|took the|my|our p:4 $",
    "who got $p",
    "did mom or dad get the floor lamp",
    "who got floor lamp",
  ],
  [
    "^ how r:10 , <method> or <method> $",
    "how $r",
    "how did i pay for the vanity, cash or card",
    "how did i pay for the vanity",
  ],
  [
    "^ did w:3 pay in|by|with? <method> or|, <method> $",
    "how did $w pay",
    "did the doctor pay cash or card",
    "how did the doctor pay",
  ],
  [
    "v:pick|put|bring|fix|throw|give|mark w:anything|something|stuff|things|pieces|furniture d:up|home|out|away|back|down",
    "$v $d $w",
    "dad pick anything up in october",
    "dad pick up anything in october",
  ],
  [
    "^ !<asks> w:1 d:pick_up|buy|sell|get|list|find|finish|bring_home|start|fix =anything|something",
    "did $w $d",
    "dad pick up anything in october",
    "did dad pick up anything in october",
  ],
  [
    "^ so? who took|takes|carried|hauled x:4 home $",
    "who took home $x",
    "who took the coffee table home",
    "who took home the coffee table",
  ],
  [
    "^ so? were|wher|whre|wear =did|do|does|have|is|are|was !did_i_not|do_i_not|did_we_ever|did_i_ever",
    "where",
    "were did the armoire come from",
    "where did the armoire come from",
  ],
  [
    "^ d:paid|sold|bought|listed|finished|spent|made|sent|drove|worked|started|returned w:anything|any|something",
    "did i $d $w",
    "paid anything on the loan this month",
    "did i paid anything on the loan this month",
  ],
  [
    "^ !<opens> a:the|my|our? w:2? o:<single> d:gone|sold|listed|finished|done|started|posted|up yet|already $",
    "is $a $w $o $d",
    "tall bookcase gone yet",
    "is tall bookcase gone",
  ],
  [
    "^ !<opens> a:the|my|our? w:2? o:<single> d:gone|sold|listed|finished|done|started|posted|up ?",
    "is $a $w $o $d",
    "the tall bookcase sold?",
    "is the tall bookcase sold",
  ],
  [
    "^ d:made|sold|bought|listed|finished|spent|paid m:more_than|over|at_least|less_than|under n:<number> r:8? ?",
    "did i $d $m $n $r",
    "made over 500 in may?",
    "did i made over 500 in may",
  ],
  [
    "^ have <us> d:sold|bought|finished|listed|flipped n:<digits> {yet|already|so_far} $",
    "have i $d at least $n pieces",
    "have i sold 20 yet",
    "have i sold at least 20 pieces",
  ],
  [
    "^ p:4 ,, =is|was|did|has|does|when|where|who|what|how q:8 it|that_one|that r:8? $",
    "$q $p $r",
    "the mirror, is it on hold",
    "is the mirror on hold",
  ],
  [
    "that|which? didnt|did_not|never come|came|get_bought|come_in from|off",
    "not from",
    "pieces that didnt come from yard sales",
    "pieces not from yard sales",
  ],
  [
    "that|which? didnt|did_not|never go|went|sell|sold|get_sold through|via|on|over",
    "not on",
    "pieces that didnt sell on the noticeboard",
    "pieces not on the noticeboard",
  ],
];
