import { BUYING, type Hazard, LISTING, OFFERING, WORKING } from "../hazard.ts";
import { CHILDRENS, CRIBS, DRAWERED, either, LIDDED, SOFT, TALL } from "../names.ts";

/** What a piece is: cribs, children's pieces, lids, tall pieces, bedding, upholstery, what may not be sold. */
export const PIECE_HAZARDS: readonly Hazard[] = [
  {
    id: "crib",
    weight: 1,
    of: "piece",
    when: [
      { piece: CRIBS },
      { words: /\bdrop ?(?:down )?sides?\b.*\b(?:crib|cot|bab(?:y|ies)|bed)|\b(?:crib|cot|baby) .*\bdrop/ },
    ],
    line: "US law bars selling drop-sides and cribs from before mid-2011; see local rules.",
    source:
      "16 CFR 1219 and 1220 (full-size and non-full-size cribs), in force for sale by anyone from 28 June 2011",
  },
  {
    id: "children's piece",
    weight: 2,
    of: "piece",
    when: [{ piece: CHILDRENS }],
    line: "Children's pieces have safety rules: if in doubt, do not sell; see local rules.",
    source:
      "16 CFR 1213 (bunk beds), 1217 (toddler beds), 1218 (bassinets), 1231 (high chairs), 1235 (changing tables); 49 CFR 571.213 (car seats). Numbers from memory",
  },
  {
    id: "recall of children's piece",
    weight: 1,
    of: "piece",
    when: [{ doing: LISTING, piece: either(CRIBS, CHILDRENS, LIDDED) }],
    line: "Recalled pieces may not be sold: look up maker and model; see local rules.",
    source: "CPSC, Resellers Guide to Selling Safer Products (publication 254), on recalled products",
  },
  {
    id: "latch",
    weight: 1,
    of: "piece",
    when: [{ piece: LIDDED }],
    line: "A self-latching lid can trap a child: take the latch off; see local rules.",
    source:
      "CPSC notice of the 1996 recall of some twelve million self-latching chests of 1912 to 1987, as reported in 2014",
  },
  {
    id: "tip-over",
    weight: 1,
    of: "piece",
    when: [{ doing: OFFERING, piece: TALL }],
    line: "Tall pieces tip over: sell it with an anti-tip kit or anchored; local rules.",
    source:
      "16 CFR 1261 (88 FR 28403) for clothing storage made after 1 September 2023; anchoring shelves and TV stands: common practice, no source",
  },
  {
    id: "recall",
    weight: 2,
    of: "piece",
    when: [{ doing: LISTING, piece: DRAWERED }],
    line: "Some chests were recalled for tipping: look up maker, model and local rules.",
    source: "CPSC, Resellers Guide to Selling Safer Products (publication 254), on recalled products",
  },
  {
    id: "mattress",
    weight: 2,
    of: "piece",
    when: [
      { piece: /\b(?:mattress(?:es)?|box ?springs?|futon pads?)\b/ },
      { words: /\b(?:used|old) bedding\b/ },
    ],
    line: "Used mattresses may need cleaning and a tag before resale: see local rules.",
    source: "State bedding rules as summarized by the FTC; 16 CFR 1632 and 1633 (from memory)",
  },
  {
    id: "bugs",
    weight: 2,
    of: "piece",
    when: [
      {
        words: /\b(?:bed ?bugs?|fleas\b(?! market)|roach(?:es)?|moths?|woodworms?|powder ?post|termites?)\b/,
      },
    ],
    line: "Bugs: keep it outside, check seams and joints; licensed pest help, local rules.",
    source: "EPA, How to Find Bed Bugs (seams, tufts, dust cover), as reported in 2013",
  },
  {
    id: "used upholstery",
    weight: 3,
    of: "piece",
    when: [
      { doing: BUYING, piece: SOFT },
      { doing: BUYING, words: /\bcushions?\b/ },
    ],
    line: "Check seams for bugs before it comes in; local rules may want it sanitized.",
    source: "Conn. Agencies Regs. 21a-235-14 (second-hand upholstery); EPA, How to Find Bed Bugs",
  },
  {
    id: "redone upholstery",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:re ?upholst\w*|upholster(?:ed|ing)? (?!\w* ?(?:fabric )?(?:cleaner|tack))(?:the|it|them|seats?|chairs?)|(?:\d+h?|hours?|h) upholster\w*|re ?cover(?:ed|ing)?(?! charge)|new (?:foam|fabric|batting|upholstery|cushions?)|foam(?! (?:brush|roller|board|cleaner))|upholstery (?:fabric|foam|batting)|batting|re ?stuff(?:ed|ing)?)\b/,
      },
      { doing: WORKING, piece: SOFT, words: /\bfabric|upholster|velvet|leather|vinyl\b/ },
    ],
    line: "Redone upholstery must meet the US smolder rule, labeled; local rules.",
    source: "16 CFR 1640 (86 FR 18440): upholstery redone for sale since 25 June 2021, label since June 2022",
  },
  {
    id: "restricted material",
    weight: 1,
    of: "piece",
    when: [
      {
        words:
          /\b(?:(?:real|genuine|elephant|walrus|carved|bone and|antique) ivory|ivory (?:inlays?|inlaid|keys?|knobs?|pulls?|handles?|escutcheons?|carvings?|keytops?|veneer)|tortoise ?shell|sea turtle|whale ?bone|scrimshaw|coral inlay)\b/,
      },
      { words: /\b(?:brazilian |rio |jacaranda |solid )?rosewood\b/ },
      { piece: /\brosewood\b/ },
    ],
    line: "Ivory, tortoiseshell, rosewood: sale may be banned; see federal and local rules.",
    source: "50 CFR 17.40(e) (ivory) and CITES appendices I and II (sea turtles, Dalbergia); from memory",
  },
  {
    id: "radium",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:radium|(?:glow|glowing|glows|luminous)(?: in the dark)? (?:dial|hands|numbers)|uranium glaze)\b/,
      },
    ],
    line: "Radium dials radiate: keep them closed, do not scrape; ask a local authority.",
    source: "EPA, Radioactivity in Antiques; from memory",
  },
];
