import type { Books, Piece } from "./books/books.ts";
import type { Fact, FactKind } from "./books/facts.ts";
import type { Day } from "./calendar.ts";
import { daysBetween } from "./calendar.ts";
import type { Cents } from "./money.ts";
import { percentOf, show } from "./money.ts";

/** A caution that was given: for a group that goes by the piece, the piece; else null. */
export interface Given {
  group: string;
  piece: number | null;
  day: Day;
}

/** One line to put under a reply, and what to remember of it. */
export interface Caution {
  line: string;
  group: string;
  piece: number | null;
}

/** What cautions look at: a fact just recorded and the words that recorded it. */
export interface Noted {
  kind: FactKind;
  /** The clause as typed. */
  text: string;
  day: Day;
  pieces: readonly Pick<Piece, "number" | "name" | "traits" | "listPrice">[];
  /** Cents of a buyer's deposit kept when the sale fell through. */
  kept?: Cents;
  given: readonly Given[];
}

type NotedPiece = Noted["pieces"][number];

interface CautionRule {
  group: string;
  /** Said once for each piece; else the first time, and then at most once a quarter. */
  oncePiece?: true;
  /** Kinds of note it may follow; absent: any. */
  kinds?: readonly FactKind[];
  /** Words in the note that call for it. */
  words?: RegExp;
  /** Names of pieces that call for it; with `words`, either will do. */
  names?: RegExp;
  /** Both the words and the name are needed. */
  both?: true;
  line: string;
}

const CRIBS = /\b(?:crib|cot|baby bed)\b/;
const CHILDRENS =
  /\b(?:bassinet|cradle|toddler bed|kids? bed|bunk bed|loft bed|changing table|high ?chair|play table|booster|gate|car seat)\b/;
const LIDDED = /\b(?:cedar chest|hope chest|blanket chest|toy ?(?:box|chest)|trunk|footlocker)\b/;
const TALL_CHESTS =
  /\b(?:dresser|(?<!(?:cedar|hope|blanket|toy|steamer) )chest|chest of drawers|drawer chest|armoire|wardrobe|bureau|highboy|tallboy|chifforobe|chiffonier|lingerie chest)\b/;
const SOFT =
  /\b(?:sofa|couch|loveseat|sectional|futon|recliner|armchair|wingback|chaise|ottoman|sleeper sofa|settee|club chair)\b/;
const REWORK: readonly FactKind[] = ["work", "spend", "start", "finish"];
const PAINT_WORK = /\b(?:paint\w*|sand(?:ed|ing)?|strip\w*|scrap(?:ed|ing))\b/;
const OLD_PAINT =
  /\b(?:chippy|milk paint|original paint|lead paint)\b|\b(?:old|vintage|antique|pre-?1978)\b.{0,40}\bpaint|\bpaint\w*.{0,40}\b(?:old|vintage|antique|pre-?1978)\b/;

/**
 * In order of weight: a note gets the first that is due. Each rule's source stands beside it; every line
 * defers to the rules of the place.
 */
const RULES: readonly CautionRule[] = [
  // 16 CFR 1219 and 1220, 28 June 2011: the sale of cribs that miss the standard, by anyone.
  {
    group: "crib",
    oncePiece: true,
    names: CRIBS,
    words: /\bdrop[- ]?sides?\b/,
    kinds: ["buy", "start", "work", "spend", "finish", "hold", "sell"],
    line: "Cribs made before mid-2011 and all drop-sides may not be sold in the US; check your local rules.",
  },
  // CPSC resale handbook (publication 254): selling what was recalled is unlawful, for individuals too.
  {
    group: "recall of children's piece",
    oncePiece: true,
    kinds: ["list"],
    names: new RegExp(`${CRIBS.source}|${CHILDRENS.source}|${LIDDED.source}`),
    line: "Before it sells: recalled pieces may not be sold. Look maker and model up in the recall list.",
  },
  // The trade rule on pieces sold under a recall, for dressers and chests (same handbook).
  {
    group: "recall",
    kinds: ["list"],
    names: TALL_CHESTS,
    line: "Some chests were recalled for tipping: look maker and model up in the recall list before it sells.",
  },
  // 16 CFR 1213 to 1235 (from memory).
  {
    group: "children's piece",
    oncePiece: true,
    names: CHILDRENS,
    line: "Children's furniture has safety standards of its own: when in doubt, do not sell; check local rules.",
  },
  // 16 CFR 1303 (42 FR 44199), effective 28 February 1978.
  {
    group: "old paint",
    oncePiece: true,
    words: OLD_PAINT,
    line: "Paint from before 1978 may hold lead: test first, keep it wet, no dry sanding, children away.",
  },
  {
    group: "old paint",
    oncePiece: true,
    kinds: REWORK,
    both: true,
    words: PAINT_WORK,
    names: new RegExp(`${CRIBS.source}|${CHILDRENS.source}`),
    line: "Children's pieces: test old paint for lead before sanding, and use ordinary new paint only.",
  },
  // CPSC notices: some twelve million self-latching chests of 1912 to 1987, recalled in 1996.
  {
    group: "latch",
    names: LIDDED,
    line: "A lid that latches by itself can trap a child: take the latch off, and check the recall list.",
  },
  // 84 FR 11420 (2019) and 89 FR 39254 (2024).
  {
    group: "methylene chloride",
    words: /\b(?:methylene|dcm|airplane stripper|aircraft stripper)\b/,
    line: "Methylene chloride vapour can kill in a small room and is banned for paint removal: use another.",
  },
  // Oregon Metro, page on paint strippers.
  {
    group: "stripper",
    words: /\b(?:strippers?|nmp|citrus strip\w*)\b/,
    line: "Any stripper: gloves, goggles, outdoors or a cross-draught, no flames; mind the label.",
  },
  // NFPA tip sheet on oily rags.
  {
    group: "oily rags",
    words: /\b(?:blo|linseed|danish oil|teak oil|tung oil|oil[- ]based|varnish|gel stain|oil stain)\b/,
    line: "Oily rags can catch fire by themselves: dry them flat outside, then a lidded metal can with water.",
  },
  // 16 CFR 1261 (88 FR 28403): units made after 1 September 2023.
  {
    group: "tip-over",
    kinds: ["list", "hold", "sell"],
    names: TALL_CHESTS,
    line: "Tall chests tip over: sell it with an anti-tip kit, or tell the buyer to anchor it to the wall.",
  },
  // 16 CFR 1640 (86 FR 18440), upholstery redone for sale since 25 June 2021.
  {
    group: "redone upholstery",
    words:
      /\b(?:reupholster\w*|upholster(?:ed|ing)|re-?cover(?:ed|ing)|new (?:foam|fabric)|foam|upholstery fabric)\b/,
    line: "Redone for sale, fabric and fill must meet the US smoulder rule and carry its label; check local rules.",
  },
  // FTC guidance and state rules, as summarized.
  {
    group: "mattress",
    names: /\b(?:mattress|box spring)\b/,
    words: /\b(?:mattress|box spring)\b/,
    line: "Used mattresses need cleaning and a tag in many states before resale: check yours, or pass.",
  },
  // Conn. Agencies Regs. 21a-235-14; EPA on bed bugs.
  {
    group: "used upholstery",
    kinds: ["buy"],
    names: SOFT,
    line: "Check seams and underside for bugs before it comes in; some states want used upholstery sanitized.",
  },
  {
    group: "used upholstery",
    words: /\b(?:bed ?bugs?|cushions?|smells musty)\b/,
    line: "Check seams and underside for bugs before it comes in; some states want used upholstery sanitized.",
  },
  // NIOSH and OSHA pages on wood dust.
  {
    group: "dust",
    kinds: REWORK,
    words: /\b(?:mdf|particle ?board|no mask|sand(?:ed|ing) (?:inside|indoors))\b/,
    line: "Sanding dust harms the lungs, that of MDF more so: dust collection and a fitted mask.",
  },
  // Police department page on safe trades.
  {
    group: "overpayment",
    words: /\b(?:cashier'?s? che(?:ck|que)|overpa(?:id|ying|yment)|my movers?)\b/,
    line: "Overpaying and asking for the rest back is a common fraud: cash, or see the bank clear it first.",
  },
  // Two police departments' pages on meeting buyers.
  {
    group: "meeting buyers",
    kinds: ["hold", "list", "sell", "fallthrough"],
    words: /\b(?:meet(?:ing|s)?|stranger|pick ?up|address|tonight)\b/,
    line: "Meeting a buyer: daylight, a public spot or the porch, and someone with you.",
  },
];

/** Days after which a caution of a quarter may come again: no calendar quarter is longer. */
const QUARTER_DAYS = 92;

/** At most one caution for a note, and only where something in it calls for one that is due. */
export function cautionsFor(noted: Noted): Caution[] {
  const deposit = depositCaution(noted);
  if (deposit && isDue(deposit, noted)) return [deposit];
  const text = noted.text.toLowerCase();
  for (const rule of RULES) {
    if (rule.kinds && !rule.kinds.includes(noted.kind)) continue;
    for (const piece of triggersOf(rule, text, noted.pieces)) {
      const caution = {
        line: rule.line,
        group: rule.group,
        piece: rule.oncePiece ? (piece?.number ?? null) : null,
      };
      if (isDue(caution, noted)) return [caution];
    }
  }
  return [];
}

/** The pieces for which a rule fires; the first of the note, or none at all, where its words alone fire it. */
function triggersOf(rule: CautionRule, text: string, pieces: readonly NotedPiece[]): (NotedPiece | null)[] {
  const named = rule.names ? pieces.filter((piece) => rule.names!.test(wordsOf(piece))) : [];
  const worded = rule.words?.test(text) ?? false;
  if (rule.both) return worded ? named : [];
  if (named.length > 0) return named;
  if (!worded) return [];
  return pieces.length > 0 ? [...pieces] : [null];
}

function wordsOf(piece: NotedPiece): string {
  return [...piece.traits, piece.name].join(" ");
}

/** Once a piece is for good; a group without a piece waits for the next quarter. */
function isDue({ group, piece }: Caution, { day, given }: Noted): boolean {
  return given.every(
    (before) =>
      before.group !== group ||
      before.piece !== piece ||
      (piece === null && daysBetween(before.day, day) >= QUARTER_DAYS),
  );
}

/** The most that the default sales law lets a seller keep of a deposit (UCC 2-718(2)(b)): cents. */
export function keptDepositMax(price: Cents): Cents {
  return Math.min(percentOf("20", price), 50_000);
}

/** A buyer's money kept beyond that: the price is what the pieces are listed at. */
function depositCaution({ kept = 0, pieces }: Noted): Caution | null {
  const price = pieces.reduce((sum, piece) => sum + (piece.listPrice ?? 0), 0);
  const most = keptDepositMax(price);
  if (price === 0 || kept <= most) return null;
  return {
    line: `Unless agreed otherwise, US sales law lets a seller keep at most ${show(most)} of it; check local rules.`,
    group: "kept deposit",
    piece: null,
  };
}

/** What cautions look at, from a fact on the books and the words that recorded it. */
export function notedOf(
  fact: Fact,
  { text, books, given }: { text: string; books: Books; given: readonly Given[] },
): Noted {
  const kept = (books.postings.get(fact.id) ?? [])
    .filter(({ account }) => account === "deposits kept")
    .reduce((sum, { cents }) => sum - cents, 0);
  return {
    kind: fact.kind,
    text,
    day: fact.day,
    pieces: fact.pieces.flatMap((number) => books.pieces.get(number) ?? []),
    ...(kept > 0 ? { kept } : {}),
    given,
  };
}
