import type { TurnEffect } from "./afterwards.ts";
import type { Row } from "./table.ts";

/** Only a part of the work, or of the piece. */
export const PART_DONE: readonly Row<TurnEffect>[] = [
  // A part of the work, or a part of the piece.
  ["^ [<supply>|<workpart>] <piece> <~finish>", "labor", "top coat desk done"],
  [
    "^ <art>? [one|other|first|second|third|last|final|next|1st|2nd|3rd|left|right|top|base|prime|clear? <workpart>|<supply>|<labor>|<part>] on|of|for|to <art>? <piece> is|are|was|were|now|all|finally* <~finish>",
    "labor",
    "first coat on the buffet is done",
  ],
  [
    "^ <art>? [one|other|first|second|third|last|final|next|1st|2nd|3rd|left|right|top|base|prime|clear? <workpart>|<supply>|<labor>|<part>] is|are|was|all|finally* <~finish> on|of|for <art>? <piece>",
    "labor",
    "base coat done on hutch",
  ],
  ["<~finish> <art>? [<supply>|<workpart>] of|on? <art>? <piece>", "labor", "finished the base coat desk"],
  ["<~finish> [for now|today|tonight|the_day|the_night]", "part", "desk done for now"],
  ["^ [finishing|finishing_up] <art>? <piece> !!<time>", "part", "finishing dresser"],
  ["<piece> is|are? [ready for|to <supply>|<labor>|<workpart>]", "part", "bench ready for paint"],
  [
    "<piece> is|was|all? <~finish> [with <art>? <supply>|<workpart>|<labor>]",
    "part",
    "desk is done with primer",
  ],
  [
    "[started|starting|began|start listing|selling|pricing|photographing|advertising|posting]",
    "word",
    "started listing the desk",
  ],
  [
    "<~retire>|tossed [<art>? back|front|<part> of|off|from <art>?] <piece>",
    "other",
    "tossed the back of the dresser",
  ],
  [
    "<retire> <art>? <piece> [at|up|listed|posted|online|on|in <word>* <word>*]",
    "doubt",
    "keeping the desk listed",
  ],
  [
    "<sell> … <piece> [from|of|out_of the|a|our|my set|pair|lot|group]",
    "word",
    "sold one chair from the set 20",
  ],
  // A part of the piece that was named before.
  [
    "<piece> … ,|and|then|& <labor> the|its|all? [<workpart>|<part>] !of|on|<piece>",
    "word",
    "started on the dresser, stripped the top",
  ],
  // A part of the work.
  [
    "<~finish> [<art>? first|second|third|1st|2nd|3rd|one|another|last|final|base|top|prime|primer|clear? <workpart> of|on?] <art>? <piece>",
    "labor",
    "finished first coat on dresser",
  ],
  ["<piece> [<workpart>] <~finish>", "labor", "desk drawers are done"],
  ["<~finish> <art>? [<piece> of|on <art>?] <piece>", "labor", "finished the shelf of the hall tree"],
  [
    "<~finish> [half|most|part|some|one_side|the_outside|the_inside of|on?] <art>? <piece>",
    "labor",
    "finished half of the dresser",
  ],
  [
    "[half|halfway|partly|partially|mostly|nearly|almost|about_half|not_quite|sort_of|kind_of|kinda|sorta|basically|pretty_much|practically|just_about|close_to|90_percent] <~finish>",
    "part",
    "half finished dresser",
  ],
  [
    "<piece> [half|halfway|partly|partially|mostly|nearly|almost|not_quite <~finish>]",
    "part",
    "desk almost finished",
  ],
  ["[still] <~finish>|<labor> !!<time>", "part", "still finishing dresser"],
  ["<piece> [finishing|drying|curing] ;", "part", "desk finishing"],
  [
    "<~finish> [drying|curing|soaking|airing_out|gathering|moving|loading|unloading|photographing|cleaning_out] <art>? <piece>",
    "part",
    "finished drying dresser",
  ],
  ["<~finish> [drying|curing|soaking] ;", "part", "finished drying"],
];
