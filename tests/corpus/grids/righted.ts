import type { Cell } from "./cells.ts";

/* A number put right in the same breath: each note, each way to say so, at each joint, with what people add behind. */

const TODAY = "2026-06-13";
const SHOP: readonly string[] = [
  "new loan 9000 at 5.5%",
  "bought dresser 35",
  "bought desk 50",
  "listed dresser 150",
];

/** A note with {} for the number, the number said first and the one that is meant. */
interface Base {
  note: string;
  wants: Record<string, unknown>;
  was: string;
  now: string;
}

const BASES: readonly Base[] = [
  { note: "bought a bench {}", wants: { kind: "buy", pieces: [3], amount: "26.00" }, was: "24", now: "26" },
  {
    note: "paint {} for the desk",
    wants: { kind: "spend", pieces: [2], amount: "26.00" },
    was: "24",
    now: "26",
  },
  {
    note: "listed the desk at {}",
    wants: { kind: "list", pieces: [2], amount: "126.00" },
    was: "124",
    now: "126",
  },
  {
    note: "sold the dresser for {}",
    wants: { kind: "sell", pieces: [1], amount: "126.00" },
    was: "124",
    now: "126",
  },
  { note: "paid {} on the loan", wants: { kind: "pay", amount: "126.00" }, was: "124", now: "126" },
  {
    note: "deposit {} on the dresser",
    wants: { kind: "hold", pieces: [1], deposit: "26.00" },
    was: "24",
    now: "26",
  },
  { note: "drove {}", wants: { kind: "drive", miles: "26" }, was: "24 miles", now: "26" },
  {
    note: "{} on the desk",
    wants: { kind: "work", pieces: [2], minutes: 180 },
    was: "2 hours",
    now: "3 hours",
  },
  {
    note: "dropped the dresser to {}",
    wants: { kind: "reprice", pieces: [1], amount: "126.00" },
    was: "124",
    now: "126",
  },
  { note: "bought {} 40", wants: { kind: "buy", pieces: [3, 4, 5] }, was: "2 stools", now: "3 stools" },
];

const WAYS: readonly string[] = [
  ...[
    "no",
    "no wait",
    "wait no",
    "sorry",
    "oops",
    "actually",
    "i mean",
    "scratch that",
    "correction",
    "nope",
  ],
  ...["hm no", "no it was", "sorry it was", "actually it was", "no actually", "well more like", "oh wait"],
  ...["actually lets do", "i meant", "er", "sorry i mean", "actually make that", "my bad"],
];

const JOINTS: readonly string[] = [" ", ", ", ". ", " - "];
const TAILS: readonly string[] = ["", " lol", ", they were on sale", " today"];

export function righted(): Cell[] {
  return BASES.flatMap(({ note, wants, was, now }) =>
    WAYS.flatMap((way) =>
      JOINTS.flatMap((joint) =>
        TAILS.flatMap((tail) => {
          const behind = `${note.replace("{}", was)}${joint}${way} ${now}${tail}`;
          const within = `${note.replace("{}", `${was}${joint}${way} ${now}${joint === " " ? "" : ","}`)}${tail}`;
          return [behind, ...(note.endsWith("{}") ? [] : [within])].map((line) => ({
            id: `${note} | ${way} | ${line}`,
            class: "a number put right in the same breath",
            on: TODAY,
            before: [...SHOP],
            line,
            facts: [wants],
            ask: false as const,
          }));
        }),
      ),
    ),
  );
}
