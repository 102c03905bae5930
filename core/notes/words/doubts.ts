/* What makes a fact doubtful or takes it back. */

import { wordSet } from "./words.ts";

/** Words by which a note takes back what it has just said: nobody can say how much of it. */
export const TAKEN_BACK =
  /^(?:(?:no |or )?i mean|i meant|scratch that|strike that|wait no|no wait|or no|or wait|(?:no )?make (?:that|it)|correction|(?:i )?(?:sent|texted|entered) (?:it |that |this )?twice|dupe?|duplicate)\b/;

export const OPENS_TAKEN_BACK = wordSet(
  "no or i scratch strike wait make correction sent texted entered dup dupe duplicate er err erm nope nah sorry oops whoops actually rather",
);

/** Between two values the last of them holds: "130 er 140", "five sorry six dollars". */
export const CORRECTING = wordSet(
  "no nope nah er err erm sorry oops whoops actually rather or_no or_actually or_rather no_actually no_sorry sorry_no actually_no",
);

/** What may stand between such words and the value that holds: "no actually it was an hour and a half". */
export const BEFORE_RIGHT_VALUE = wordSet(
  "it was its is thats that make it_was it_is that_was make_it make_that",
);

/** With these between two values nobody has said which one holds. */
export const UNSURE_WHICH = wordSet(
  "or or_wait or_no or_was was_it think guess maybe might perhaps twice dup dupe duplicate between ?",
);

/** "bought lamp 12 actually it mightve been 15" */
export const DOUBTED = wordSet(
  "mightve mightve_been might_have_been may_have_been couldve_been could_have_been or_was_it",
);

/** Words by which a note takes back everything. */
export const JOKES = wordSet("jk j/k kidding just_kidding joking just_joking psych");

export const CONDITIONS = wordSet("once if unless as_soon_as in_case");

export const WISHES = wordSet(
  "want_to wanna want would_like id_like would need_to have_to lets let_me going_to gonna will ill should plan planning_to trying_to",
);

export const PLANS = wordSet(
  "needs need needs_to need_to gonna going_to want_to will ill planning_to plan plans hope_to hoping",
);

export const NEAR_AMOUNT =
  /^(?:about|around|roughly|approximately|approx|like about|less than|more than|at least|at most|up to|close to|something like|(?:a (?:little|bit|hair) |just )?(?:under|over)|a little (?:more|less) than|(?:just )?shy of|(?:nor|sou)th of|between|upwards of)$/;

export const BECAUSE = wordSet("because cause cuz bc since");
