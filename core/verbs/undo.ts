import { phrases } from "../notes/words/words.ts";
import { defineVerb } from "./verb.ts";

declare module "../notes/reading.ts" {
  interface ReadingFields {
    undo: Record<never, never>;
  }
}

export const undo = defineVerb({
  kind: "undo",
  example: "undo",
  page: "slips",
  reads: {
    says: [
      {
        say: phrases(
          "undo undo_that undo_last undo_it scrap_that scrap_that_last_one scrap_the_last_one strike_last strike_the_last strike_the_last_one strike_last_one strike_it dup dupe duplicate sent_twice i_sent_that_twice sent_that_twice thats_a_dup thats_a_duplicate thats_a_double that_was_a_duplicate that_was_a_double remove_one dup_remove_one disregard disregard_that ignore_that_one scratch_that scratch_this remove remove_this remove_it delete scratch_last scratch_the_last scratch_it delete_last delete_that delete_it delete_the_last delete_this remove_last remove_that remove_the_last cancel_that cancel_last cancel_the_last take_that_back take_it_back strike_that forget_that_last forget_that_last_one revert revert_that oops_undo erase_that erase_last erase_the_last undo_the_last undo_last_one undo_the_last_one delete_last_one delete_the_last_one remove_last_one remove_the_last_one cancel_last_one cancel_the_last_one erase_last_one erase_the_last_one scratch_last_one scratch_the_last_one take_back_the_last_one ignore_that ignore_last ignore_the_last ignore_the_last_one reverse_that void_that void_last get_rid_of_that get_rid_of_it get_rid_of_that_one that_was_a_mistake that_was_an_error that_one_was_a_mistake",
        ),
      },
    ],
    slots: {},
    bears: ["things beside", "corrects"],
    absorbs: phrases(
      "last one note entry wrong mistake nope no nvm wait oops that never_mind sorry my_bad was_wrong",
    ),
    whole: true,
    dateless: true,
    judge: (_, clause) =>
      clause.signs.has("number") || clause.signs.has("piece") ? { kind: "undoMore" } : null,
  },
});
