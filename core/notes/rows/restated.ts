import type { TurnEffect } from "./afterwards.ts";
import { rowsOf } from "./row.ts";

const SAID_SO =
  "said|told|mentioned|noted|wrote|texted|stated|explained|reported|put|sent|posted|logged|recorded|entered";
const TO_YOU = "you|u|it|that|this|before|already|earlier|above|yesterday|previously|just_now|today";
const CAME_TO =
  "came_to|comes_to|came_out_to|came_out_at|comes_out_to|ran_to|runs_to|adds_up_to|added_up_to|works_out_to|worked_out_to|totals|totaled|totalled|amounts_to|amounted_to|ended_up_at|wound_up_at";

/** What is told once more, or told of as a sum: it may be on the books already. */
export const RESTATED = rowsOf<TurnEffect>({
  "doubt: as i said paint 12 for desk": `^ [like|as|just_like|just_as|exactly_as i|we have|had|just|already* ${SAID_SO} ${TO_YOU}* ,|:|-?]`,
  "doubt: spent 12 on paint like i said": `[,|-|.|(* like|as|just_like|just_as|exactly_as i|we have|had|just|already* ${SAID_SO} ${TO_YOU}*] ;`,
  "doubt: as mentioned bought desk 30":
    "^ [as|like previously|already? mentioned|stated|noted|said|reported|written|discussed|above|before before|above|earlier|already|previously* ,|:|-?]",
  "doubt: again: bought desk 30": "^ [again|once_again|once_more ,|:|-]",
  "doubt: to repeat: paint 12 for desk":
    "^ [to|just_to|let_me|ill|i|i_will? repeat|reiterate|recap|restate|summarize|summarise|sum_up|repeating|recapping myself|again|that|it|this* ,|:|-?]",
  "doubt: just a reminder, paint 12 for desk":
    "^ [reminder|a_reminder|just_a_reminder|fyi_again|in_case_you_missed_it|in_case_that_didnt_go_through|did_you_get ,|:|-?]",
  // What a piece came to with a cost in it: how much of it is that cost, nobody says.
  "doubt: the desk came to 35 with gas": `<piece> [${CAME_TO}] $ with|including|incl|counting|plus|and|after|w <art>? <supply>`,
  "doubt: the desk cost 30 and paint 12":
    "<piece> [cost|costs|was|is|ran|bought] $ and|plus|+|& <art>? <supply> ,|-|:|was|is|cost? $",
  "doubt: paid 5 more for the bench":
    "^ i|we|so|ok|and* [paid|gave|spent|threw_in|added|put_in] $ more|extra|additional for|on|toward|towards <art>? <piece>",
  "doubt: paid another 5 for the bench":
    "^ i|we|so|ok|and* [paid|gave|spent|threw_in|added|put_in another|extra|an_extra|an_additional|additional] $ for|on|toward|towards <art>? <piece>",
  // What comes of many notes is no amount of the newest one.
  "doubt: my total should be 260":
    "^ [my|our|the|your|a|grand|overall|running|so|well|hey|no* total|sum|number|count|tally|figure|balance|profit|income|subtotal|bottom_line|result|net|gross|earnings] should|should_be|should_have_been|should_read|should_say|ought|ought_to_be|is_supposed|supposed",
  // It is on the market again because a buyer is not there any more.
  "doubt: hutch relisted at 200, dana out":
    "<list>|<reprice> … [,|and|since|cause|because|cuz|bc|as|now|so|that|-|.* <new>|<person>|he|she|they|buyer is|was|s|has|have|just|now* out|gone|bailed|ghosted|flaked|vanished|disappeared|dropped_out|backed_out|pulled_out|changed_his_mind|changed_her_mind|not_coming|no_longer_wants_it] ;",
  "doubt: dana out, hutch relisted at 200":
    "^ <new>|<person>|he|she|they|buyer [is|was|has|just|now* out|gone|bailed|ghosted|flaked|vanished|disappeared ,|and|so|-|.*] <piece>|<list>|back|up|re_listed|relisted",
});
