import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";
import type { RetireHow } from "../notes/reading.ts";

/** Why a fact cannot stand on the books as they are: one name a rule, with the data that explains it. */
export type Problem =
  | { kind: "no such piece"; number: number }
  | { kind: "not bought yet"; number: number; bought: Day }
  | { kind: "piece gone"; number: number; how: "sold" | RetireHow; on: Day }
  | { kind: "piece not sold"; number: number }
  | { kind: "piece not listed"; number: number }
  | { kind: "cut below zero"; number: number; listPrice: Cents }
  | { kind: "piece not held"; number: number }
  | { kind: "deposit held"; number: number; held: Cents }
  | { kind: "more than held"; held: Cents }
  | { kind: "more than brought in"; number: number; broughtIn: Cents }
  | { kind: "no loan" }
  | { kind: "no such loan"; name: string }
  | { kind: "loan name taken"; name: string }
  | { kind: "loan not open yet"; name: string; opened: Day }
  | { kind: "more than owed"; owed: Cents }
  | { kind: "below interest due"; interest: Cents };
