import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

/** Only a part of the work, or of the piece. */
export const PART_DONE = rowsOf<TurnEffect>({
  // A part of the work, or a part of the piece.
  "labor: top coat desk done": "^ [<supply>|<workpart>] <piece> <~finish>",
  "labor: first coat on the buffet is done":
    "^ <art>? [one|other|first|second|third|last|final|next|1st|2nd|3rd|left|right|top|base|prime|clear? <workpart>|<supply>|<labor>|<part>] on|of|for|to <art>? <piece> is|are|was|were|now|all|finally* <~finish>",
  "labor: base coat done on hutch":
    "^ <art>? [one|other|first|second|third|last|final|next|1st|2nd|3rd|left|right|top|base|prime|clear? <workpart>|<supply>|<labor>|<part>] is|are|was|all|finally* <~finish> on|of|for <art>? <piece>",
  "labor: finished the base coat desk": "<~finish> <art>? [<supply>|<workpart>] of|on? <art>? <piece>",
  "part: desk done for now": "<~finish> [for now|today|tonight|the_day|the_night]",
  "part: finishing dresser": "^ [finishing|finishing_up] <art>? <piece> !!<time>",
  "part: bench ready for paint": "<piece> is|are? [ready for|to <supply>|<labor>|<workpart>]",
  "word: desk all set and ready to sell":
    "<~finish> [and|,|-|so|now* ready to|for sell|list|go|sale|photos|pictures|market|post] ;",
  "part: desk is done with primer": "<piece> is|was|all? <~finish> [with <art>? <supply>|<workpart>|<labor>]",
  "word: started listing the desk":
    "[started|starting|began|start listing|selling|pricing|photographing|advertising|posting]",
  "other: tossed the back of the dresser":
    "<~retire>|tossed [<art>? back|front|<part> of|off|from <art>?] <piece>",
  "doubt: keeping the desk listed":
    "<retire> <art>? <piece> [at|up|listed|posted|online|on|in !to|the_way|my_way|our_way|<day> <word>* <word>*]",
  "word: sold one chair from the set 20": "<sell> … <piece> [from|of|out_of the|a|our|my set|pair|lot|group]",
  // A part of the piece that was named before.
  "word: started on the dresser, stripped the top":
    "<piece> … ,|and|then|& <labor> the|its|all? [<workpart>|<part>] !of|on|<piece>",
  // A part of the work.
  "labor: finished first coat on dresser":
    "<~finish> [<art>? first|second|third|1st|2nd|3rd|one|another|last|final|base|top|prime|primer|clear? <workpart> of|on?] <art>? <piece>",
  "labor: desk drawers are done": "<piece> [<workpart>] <~finish>",
  "labor: finished the shelf of the hall tree": "<~finish> <art>? [<piece> of|on <art>?] <piece>",
  "labor: finished half of the dresser":
    "<~finish> [half|most|part|some|one_side|the_outside|the_inside of|on?] <art>? <piece>",
  "part: half finished dresser":
    "[half|halfway|partly|partially|mostly|nearly|almost|about_half|not_quite|sort_of|kind_of|kinda|sorta|basically|pretty_much|practically|just_about|close_to|90_percent] <~finish>",
  "part: desk almost finished":
    "<piece> [half|halfway|partly|partially|mostly|nearly|almost|not_quite <~finish>]",
  "part: still finishing dresser": "[still] <~finish>|<labor> !!<time>",
  "part: desk finishing": "<piece> [finishing|drying|curing] ;",
  "part: finished drying dresser":
    "<~finish> [drying|curing|soaking|airing_out|gathering|moving|loading|unloading|photographing|cleaning_out] <art>? <piece>",
  "part: finished drying": "<~finish> [drying|curing|soaking] ;",
});
