import type { WayRow } from "../../plainer.ts";

/** Stretches of time, by themselves and beside each other. */
export const OF_TIMES: readonly WayRow[] = [
  [
    "w:up|listed|posted|online|for_sale|out_there before|till|til|until it|they|someone|somebody|anyone went|go|goes|moved|bought_it|took_it|grabbed_it|got_sold|found_a_buyer",
    "$w before it sold",
    "how long was #14 up before it went",
    "how long was #14 up before it sold",
  ],
  [
    "l:listed|posted|up|held|unsold at_the_moment|at_present|at_this_point|at_this_time",
    "$l now",
    "how many are listed at the moment",
    "how many are listed now",
  ],
  [
    "^ hows|how_is the|this u:<unit> shaping_up|coming_along|looking|panning_out|going so_far? $",
    "how is this $u so far",
    "hows this month shaping up",
    "how is this month so far",
  ],
  [
    "^ whats|what_is|what_was? the|my|our? average|avg|mean of|for|between|across|over m:<month> , =and|to|through|or|<month>",
    "average per month in $m",
    "average of june and september",
    "average per month in june and september",
  ],
  [
    "w:most|least|fewest|highest|lowest|biggest|smallest r:5? in a|any|a_single u:<unit> $",
    "$w $r in one $u",
    "most i spent in a month",
    "most i spent in one month",
  ],
  [
    "^ what does|did|is|was the|this|my? p:year|month|week|quarter|<month> look|looking like? so_far|now|right_now|overall? $",
    "how is the $p so far",
    "what does the year look like",
    "how is the year so far",
  ],
  [
    "when m:<month> was|is|had|came over|ended|done|through|to_an_end",
    "at the end of $m",
    "how many on hold when june was over",
    "how many on hold at the end of june",
  ],
  [
    "~most|more lately|recently|as_of_late|of_late",
    "in the last 30 days",
    "what have i sold lately",
    "what have i sold in the last 30 days",
  ],
  [
    "the w:better|worse|stronger|weaker month|one|year|week|quarter",
    "$w",
    "may or june, the better month",
    "may or june, better",
  ],
  ["^ compare a:<month> b:<month> $", "compare $a and $b", "compare june july", "compare june and july"],
  [
    "b:best|worst|slowest|busiest|biggest|top u:month|week|year|day|quarter to date",
    "$b $u so far",
    "best month to date",
    "best month so far",
  ],
  [
    "first_half w:vs|versus|against|or|and|compared_to the? second_half of m:1",
    "first half of $m $w second half of $m",
    "first half vs second half of june",
    "first half of june vs second half of june",
  ],
  [
    "^ the|my? u:year|month|week|quarter in numbers|review|short $",
    "this $u so far",
    "the year in numbers",
    "this year so far",
  ],
  ["^ u:year|month|week|quarter so_far", "this $u so far", "year so far", "this year so far"],
  [
    "did w:6 go_up|rise|increase|grow|climb from a:4 to b:4 $",
    "was $w more in $b than in $a",
    "did profit go up from may to june",
    "was profit more in june than in may",
  ],
  [
    "did w:6 go_down|fall|decrease|shrink|drop from a:4 to b:4 $",
    "was $w less in $b than in $a",
    "did fees drop from may to june",
    "was fees less in june than in may",
  ],
  ["^ hows w:8 do $", "how did $w do", "hows june do", "how did june do"],
  ["in a u:year|month $", "in 1 $u", "rid of the loan in a year", "rid of the loan in 1 year"],
  [
    "w:within|under|in_under|less_than a u:week|month|year",
    "$w 1 $u",
    "sold within a week",
    "sold within 1 week",
  ],
  ["w:over|more_than a u:week|month|year", "$w 1 $u", "listed over a month", "listed over 1 month"],
];
