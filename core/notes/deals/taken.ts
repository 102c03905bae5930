import type { Day } from "../../calendar.ts";
import type { Cents } from "../../money.ts";
import type { Tok } from "../clause.ts";
import type { Mention } from "../reading.ts";
import type { Who } from "./somebody.ts";

/** What the words of a deal hold. */
export interface Taken {
  tokens: readonly Tok[];
  pieces: Mention[];
  /** Amounts outside of the bracket of its row, and those inside. */
  amounts: Cents[];
  bracket: Cents[];
  percent?: string;
  date?: Day;
  method?: string;
  who: Who;
}
