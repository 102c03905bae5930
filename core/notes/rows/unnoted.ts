import { NOTED } from "./miswritten.ts";
import type { Row } from "./table.ts";

/**
 * That a note is to go. "out": it is; "maybe": so too, where the books hold what is named; "undo": what was said last is;
 * "again": it may have been noted before.
 */
export const UNNOTED: readonly Row<"out" | "maybe" | "undo" | "again">[] = [
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about the|that|those|my|what|it|this|about|both]",
    "out",
    "nix the paint",
  ],
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [drop|lose|kill|wipe|yank|pull|toss|dump|ditch|get_rid_of|get_rid the|that|those|my|of|it|this|both|one]",
    "maybe",
    "kill the paint note",
  ],
  [
    "^ please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [delete|remove|erase|void] <new>|<supply>|<piece>|sale|deposit|listing|drive|hold|payment",
    "out",
    "remove teos deposit",
  ],
  [
    "[forget|ignore|pretend|disregard that? i|we said|put|wrote|sent|never? that|it|anything|this? about|on]",
    "out",
    "forget i said that about the paint",
  ],
  ["[remove|delete|erase it|that|them|this] ;", "out", "the gas wasnt for the shop remove it"],
  [
    "please|pls|just|so|and|nope|no|oops|wait|ok|then|nvm|never_mind* [take|pull|get|leave] !!$ … out|off",
    "out",
    "take the drive out i rode with dad",
  ],
  ["[take|pull|get|leave the|that|my? $ … out|off|back_out|back_off]", "maybe", "take the 20 back out"],
  [
    "[logged|entered|put|in|recorded|noted|listed|there|sent|counted … twice|two_times|double|2_times|2x]",
    "maybe",
    "put the desk in twice",
  ],
  [
    `[i|we* already|alredy ${NOTED}|told|did|have|got|in|on|down|counted* that|it|this|those|the? one|there|in|down|earlier|on|yesterday|before|already|today* ] ;`.replace(
      " ]",
      "]",
    ),
    "again",
    "oops already had that one down",
  ],
  [
    "^ [thats|that_is|that_one_is|that_ones|it_is|its already in|on|down|logged|there|entered|recorded|noted there|the? books|list?] ;",
    "again",
    "thats already in there",
  ],
  [
    "^ please|pls|no|nope|oops|wait|nvm|never_mind|so|just|actually|ok|sorry* [delete|remove|erase|scratch|nix|void|undo|cancel|strike|disregard|ignore|forget|forget_about|take|take_back|pull|drop|lose|kill|pretend|get_rid_of the|that|my|it|this|i|about* last|latest|newest|what|thing|one|note|entry|text|message|thing|didnt|never* i|we|just* said|sent|put|typed|wrote|say|texted|told_you|logged|entered|have|off|out|back* that|it|this|anything|one? out|off|back?] ;",
    "undo",
    "take back the last thing i said",
  ],
  [
    "^ [no|nope|oops|wait|lol|sorry|ok|actually* that|it|this_one|that_one|this? never|didnt|did_not happen|happened|actually_happen lol|haha|sorry|actually|oops?] ;",
    "undo",
    "that never happened",
  ],
];
