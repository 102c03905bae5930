import type { Day } from "../calendar.ts";
import type { Cents } from "../money.ts";

/** What a picture shows, as plain data: bars with their words, or lines over days. */
export type Chart =
  | { kind: "bars"; title: string; bars: { label: string; value: number; told: string }[] }
  | {
      kind: "lines";
      title: string;
      from: Day;
      to: Day;
      lines: { name: string; points: { day: Day; cents: Cents }[] }[];
    };
