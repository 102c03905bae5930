import { waysOf } from "../../plainer.ts";

/** Stretches of time, by themselves and beside each other. */
export const OF_TIMES = waysOf({
  "last time i bought paint => when was the last time i bought paint":
    "^ the? last|most_recent|latest time p:<us>|<kin> => when was the last time $p",
  "when did i start => when was my first buy":
    "^ when did i|we start|begin flipping|this|doing_this|selling|the_business|my_business|with_this? $ => when was my first buy",
  "how long have i been doing this => how long since my first buy":
    "^ how_long have i|we been at_it|at_this|doing_this|flipping|in_business|in_this $ => how long since my first buy",
  "listed longer than a week => listed over 7 days": "longer_than|more_than|over a|one week => over 7 days",
  "listed longer than a month still => listed over 30 days still":
    "longer_than|more_than|over a|one month =still|now|and|ago => over 30 days",
  "listed longer than a month => listed over 30 days":
    "longer_than|more_than|over a|one month $ => over 30 days",
  "listed over 30 days => what has been listed over 30 days":
    "^ b:listed|posted|up|for_sale l:over|more_than|longer_than|at_least n:<digits> u:days|weeks|months => what has been listed $l $n $u",
  "been here over 100 days => what has been here over 100 days":
    "^ b:been_here|been_sitting|sitting_here|been_around|here l:over|more_than|longer_than|at_least => what has been here $l",
  "sold within 30 days of buying => sold within 30 days":
    "within|under|inside u:3 of buying|getting|finding|picking it|them|up|home? => within $u",
  "how long was #14 up before it went => how long was #14 up before it sold":
    "w:up|listed|posted|online|for_sale|out_there before|till|til|until it|they|someone|somebody|anyone went|go|goes|moved|bought_it|took_it|grabbed_it|got_sold|found_a_buyer => $w before it sold",
  "how many are listed at the moment => how many are listed now":
    "l:listed|posted|up|held|unsold at_the_moment|at_present|at_this_point|at_this_time => $l now",
  "hows this month shaping up => how is this month so far":
    "^ hows|how_is the|this u:<unit> shaping_up|coming_along|looking|panning_out|going so_far? $ => how is this $u so far",
  "average of june and september => average per month in june and september":
    "^ whats|what_is|what_was? the|my|our? average|avg|mean of|for|between|across|over m:<month> , =and|to|through|or|<month> => average per month in $m",
  "most i spent in a month => most i spent in one month":
    "w:most|least|fewest|highest|lowest|biggest|smallest r:5? in a|any|a_single u:<unit> $ => $w $r in one $u",
  "what does the year look like => how is the year so far":
    "^ what does|did|is|was the|this|my? p:year|month|week|quarter|<month> look|looking like? so_far|now|right_now|overall? $ => how is the $p so far",
  "how many on hold when june was over => how many on hold at the end of june":
    "when m:<month> was|is|had|came over|ended|done|through|to_an_end => at the end of $m",
  "what have i sold lately => what have i sold in the last 30 days":
    "~most|more lately|recently|as_of_late|of_late => in the last 30 days",
  "may or june, the better month => may or june, better":
    "the w:better|worse|stronger|weaker month|one|year|week|quarter => $w",
  "compare june july => compare june and july": "^ compare a:<month> b:<month> $ => compare $a and $b",
  "best month to date => best month so far":
    "b:best|worst|slowest|busiest|biggest|top u:month|week|year|day|quarter to date => $b $u so far",
  "first half vs second half of june => first half of june vs second half of june":
    "first_half w:vs|versus|against|or|and|compared_to the? second_half of m:1 => first half of $m $w second half of $m",
  "the year in numbers => this year so far":
    "^ the|my? u:year|month|week|quarter in numbers|review|short $ => this $u so far",
  "year so far => this year so far": "^ u:year|month|week|quarter so_far => this $u so far",
  "did profit go up from may to june => was profit more in june than in may":
    "did w:6 go_up|rise|increase|grow|climb from a:4 to b:4 $ => was $w more in $b than in $a",
  "did fees drop from may to june => was fees less in june than in may":
    "did w:6 go_down|fall|decrease|shrink|drop from a:4 to b:4 $ => was $w less in $b than in $a",
  "rid of the loan in a year => rid of the loan in 1 year": "in a u:year|month $ => in 1 $u",
  "sold within a week => sold within 1 week":
    "w:within|under|in_under|less_than a u:week|month|year => $w 1 $u",
});
