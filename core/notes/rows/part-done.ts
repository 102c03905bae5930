import type { TurnEffect } from "./afterwards.ts";
import type { Row } from "./table.ts";

/** Only a part of the work, or of the piece. */
export const PART_DONE: readonly Row<TurnEffect>[] = [
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
