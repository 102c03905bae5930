import type { Tok } from "../clause.ts";

/** A run of tokens that makes one clause; `repeats` is the verb of the clause before, said once for both. */
export interface Cut {
  tokens: Tok[];
  /** A piece joined on after the price: nobody can say whether the price was for both. */
  ambiguous?: true;
  repeats?: Tok;
  /** What stood behind that verb: "up for" of "put the mirror up for 30 and the stool for 12" is said for both as well. */
  behind?: readonly Tok[];
  /** It only says of another piece that nothing has become of it: what follows with a verb is a clause of its own. */
  isOpen?: true;
  /** It was told of another piece, and is said to be the same of this one. */
  same?: true;
}
