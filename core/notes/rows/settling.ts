import type { Says } from "../words/settling.ts";
import type { Row } from "./table.ts";
import { tableOf } from "./table.ts";

const ROWS: readonly Row<Says>[] = [
  ["^ [she|he|they|shes|hes|theyre back] !for|from", "payer", "shes back, put 30 down"],
  ["[got|took|grabbed|bought it|them|that for] $", "fetched", "pete got it for 70"],
  [
    "[showed_up|turned_up|made_it|came_by|came_over|came finally|today? with|and|,*] $",
    "paid",
    "they finally showed up, 200 cash",
  ],
  [
    "[comes|coming|is_coming|picks_up|picking_up|picks_it_up|picking_it_up|gets_it|getting_it|wants|wants_it|can_come|will_come|pickup|pick_up now? to|on|is|for? next? <day>]",
    "comes",
    "pete is coming saturday",
  ],
  [
    "[now comes|coming|is_coming|picks_up|picking_up|picks_it_up|picking_it_up|gets_it|getting_it|wants|wants_it|can_come on|for? next? <day>]",
    "moved",
    "pete now comes saturday",
  ],
  ["<day> [instead]", "moved", "pete is coming sunday instead"],
  [
    "[cant|cannot|cant_do|cant_make|cant_come do|make|come? on|in? <day>]",
    "moved",
    "pete cant do monday, wants thursday",
  ],
  [
    "[moved|changed|pushed|bumped|rescheduled|switched the|his|her|their? hold|pickup|pick_up|it? back|out? to|till|until next? <day>]",
    "moved",
    "moved the pickup to wednesday",
  ],
  ["[got it|them] !back|from|for", "fetched", "pete got it this morning"],
  [
    "[came|came_by|came_over|stopped_by|swung_by and|to got|get|grabbed|collect|took|picked_up|pick_up]",
    "fetched",
    "neighbor came and got the bench",
  ],
  [
    "[came|came_by|came_over|stopped_by|swung_by|here for] <art>? <piece>|it|them",
    "fetched",
    "marcy came for the hutch",
  ],
  [
    "[found another|another_one|something_else|one_elsewhere|a_different_one|a_cheaper_one|one_closer|one_cheaper]",
    "out",
    "pete found another one, gave him the 25 back",
  ],
  [
    "[never|didnt|did_not|hasnt came|come|showed|show|turned|picked|called it? up? back?]",
    "out",
    "keeping pete's 25, he never showed",
  ],
  ["[passed on it|that|them?]", "out", "the neighbor passed on the bench"],
  ["[no_longer wants|needs|interested]", "out", "pete no longer wants it"],
  ["she|he|they [passed] ;", "out", "she passed"],
  ["[changed his|her|their mind|minds]", "out", "pete's wife changed her mind, sent the 25 back"],
  [
    "[deposit|money|that|it|its is|was? mine|ours|stays|stays_with_me|stays_here]",
    "kept",
    "pete never came back, deposit is mine now",
  ],
  [
    "[half of? what|the|her|his|their? he|she|they|rest|balance? owes|owed|owe? me|us?]",
    "half",
    "dana paid me half",
  ],
  [
    "[of|toward|towards what|the|her|his he|she|they|rest|balance? owes|owed|owe|balance|rest me|us?]",
    "owed",
    "40 of what she owes",
  ],
  ["[what|everything|all he|she|they owes|owed|owe me|us?]", "all", "dana paid what she owed"],
];

/** What several words beside a name on the books tell together. */
export const settlings = tableOf(ROWS);
