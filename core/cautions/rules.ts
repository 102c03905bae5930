import type { FactKind } from "../books/facts.ts";

/** When a caution is called for, and its one line. */
export interface CautionRule {
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
export const RULES: readonly CautionRule[] = [
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
    line: "Recalled pieces may not be sold: look up maker and model in the recall list first.",
  },
  // The trade rule on pieces sold under a recall, for dressers and chests (same handbook).
  {
    group: "recall",
    kinds: ["list"],
    names: TALL_CHESTS,
    line: "Some chests were recalled for tipping: look up maker and model in the recall list first.",
  },
  // 16 CFR 1213 to 1235 (from memory).
  {
    group: "children's piece",
    oncePiece: true,
    names: CHILDRENS,
    line: "Children's furniture has safety rules of its own: if in doubt, do not sell; check local rules.",
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
    line: "Methylene chloride vapor can kill in a small room and is banned for paint removal: use another.",
  },
  // Oregon Metro, page on paint strippers.
  {
    group: "stripper",
    words: /\b(?:strippers?|nmp|citrus strip\w*)\b/,
    line: "Any stripper: gloves, goggles, outdoors or a cross-draft, no flames; mind the label.",
  },
  // NFPA tip sheet on oily rags.
  {
    group: "oily rags",
    words: /\b(?:blo|linseed|danish oil|teak oil|tung oil|oil[- ]based|varnish|gel stain|oil stain)\b/,
    line: "Oily rags can set themselves on fire: dry flat outside, then a lidded metal can with water.",
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
    line: "Redone upholstery must meet the US smolder rule and carry its label; check local rules.",
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
    line: "Check seams and underside for bugs before it comes in; some states want it sanitized.",
  },
  {
    group: "used upholstery",
    words: /\b(?:bed ?bugs?|cushions?|smells musty)\b/,
    line: "Check seams and underside for bugs before it comes in; some states want it sanitized.",
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
    line: "An overpayment to be sent back is a common fraud: take cash, or wait until the bank clears it.",
  },
  // Two police departments' pages on meeting buyers.
  {
    group: "meeting buyers",
    kinds: ["hold", "list", "sell", "fallthrough"],
    words: /\b(?:meet(?:ing|s)?|stranger|pick ?up|address|tonight)\b/,
    line: "Meeting a buyer: daylight, a public spot or the porch, and someone with you.",
  },
];
