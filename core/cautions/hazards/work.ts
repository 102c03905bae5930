import { type Hazard, WORKING } from "../hazard.ts";
import { CHILDRENS, CRIBS, either, OLD } from "../names.ts";

/** Taking off what is on the wood: by hand, machine, heat or chemistry. */
const TAKING_OFF =
  /\b(?:re ?sand(?:ed|ing)?|hand sand(?:ed|ing)|sand(?:s|ed|ing|paper)?|scrap(?:e|ed|ing|er)s?|strip(?:ped|ping|per|s)?|heat ?guns?|heat ?gunn(?:ed|ing)|torch(?:ed|ing)?|wire brush(?:ed|ing)?|grind(?:ing|er)?|sander)\b/;
const PAINT_OFF =
  /\b(?:lead paint|original paint|milk paint|chippy|chipping paint|flaking paint|peeling paint|alligatored)\b|\b(?:strip\w*|scrap\w*|sand\w*|heat ?gun\w*|grind\w*)\b.*\b(?:(?:off|old|layers?|coats?) .*paint|paint off)|\b(?:stripp\w*|scrap\w*) (?:the |all )?paint\b|\bpaint (?:removal|stripping|scraping)\b|\bpaint \w* ?(?:sanded|scraped|stripped) off\b/;
const OLD_PAINT =
  /\b(?:old|vintage|antique|pre ?19\d\d)\b.{0,40}\bpaint|\bpaint\w*.{0,40}\b(?:old|vintage|antique|pre ?19\d\d)\b/;
const STONE =
  /\b(?:marble|granite|quartz|slate|soap ?stone|lime ?stone|stone|concrete|terrazzo|travertine|tiles?)\b/;
const SHAPING =
  /\b(?:cut\w*|grind\w*|ground|sand(?:ed|ing)|drill\w*|polish(?:ed|ing)|saw\w*|hon(?:ed|ing)|chisel\w*|rout(?:ed|ing)|plan(?:ed|ing)|turn(?:ed|ing)|strip\w*|scrap\w*)\b/;
const TROPICAL =
  /\b(?:teak|rosewood|mahogany|ebony|wenge|ipe|cocobolo|iroko|padauk|zebra ?wood|purple ?heart|satin ?wood)\b/;

/** Work on a piece: what is in old coats, dust, mold and wires. */
export const WORK_HAZARDS: readonly Hazard[] = [
  {
    id: "children's paint",
    weight: 1,
    of: "piece",
    when: [
      {
        piece: either(CHILDRENS, CRIBS),
        words: either(TAKING_OFF, /\b(?:re)?paint(?:ed|ing|s)?\b/),
        doing: WORKING,
      },
    ],
    line: "Child's piece: lead test before sanding, only ordinary new paint; local rules.",
    source:
      "16 CFR 1303 (42 FR 44199): paint over the lead limit is banned on furniture and children's goods",
  },
  {
    id: "old paint",
    weight: 1,
    of: "piece",
    when: [{ piece: OLD, words: TAKING_OFF }, { words: PAINT_OFF }, { words: OLD_PAINT }],
    line: "Old paint may hold lead: test, keep it wet, no dry sanding; see local rules.",
    source:
      "16 CFR 1303 (42 FR 44199), paint sold before 28 February 1978; 40 CFR 745 on lead-safe work (from memory)",
  },
  {
    id: "asbestos",
    weight: 1,
    of: "piece",
    when: [
      {
        words:
          /\basbestos\b|\b(?:old|black|vintage) (?:adhesive|glue|mastic|linoleum|lino|vinyl|tiles?|floor(?:ing)? tiles?)\b|\b(?:popcorn (?:texture|ceiling)|heat shields?|insulat(?:ing|ion) pads?|stove pads?|stove boards?|vermiculite|linoleum|vinyl floor tiles?)\b/,
      },
    ],
    line: "It may hold asbestos: do not sand, drill or break it; licensed test, local rules.",
    source: "EPA, Protect Your Family from Exposures to Asbestos; from memory",
  },
  {
    id: "stone dust",
    weight: 1,
    of: "piece",
    when: [
      { piece: STONE, words: SHAPING, doing: WORKING },
      { words: /\bsilica\b|\bcut(?:ting)? (?:the |a )?(?:marble|granite|slate|stone|concrete|tiles?)\b/ },
    ],
    line: "Stone dust scars lungs: cut it wet, fitted respirator, or a licensed shop.",
    source: "29 CFR 1910.1053 (respirable crystalline silica); from memory",
  },
  {
    id: "wiring",
    weight: 1,
    of: "piece",
    when: [
      {
        words:
          /\b(?:re ?wir(?:e|ed|ing)|(?:re)?wiring kits?|lamp kits?|(?:new|replaced?|frayed|bad) (?:the )?(?:lamp )?(?:cords?|plugs?|wires?|wiring|light sockets?|lamp sockets?)|lamp (?:cords?|sockets?|wire))\b/,
      },
      {
        piece: /\b(?:lamps?|chandeliers?|sconces?|pendants?|lanterns?)\b/,
        words: /\b(?:cords?|sockets?|plugs?|wir(?:e|ed|ing))\b/,
      },
    ],
    line: "Bad wiring burns and kills: if unsure of cord or plug, a licensed electrician.",
    source: "NFPA 70 (National Electrical Code), article 410 on luminaires; from memory",
  },
  {
    id: "mold",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:molds?|moulds?|moldy|mouldy|mildew\w*|musty|water ?damaged?|water ?logged|flooded)\b(?! making)/,
      },
    ],
    line: "Mold: mask on, dry it outside; soft ones rarely come clean; see local rules.",
    source: "EPA, A Brief Guide to Mold, Moisture and Your Home; from memory",
  },
  {
    id: "dust of old finish",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:sand\w*|scrap\w*)\b.*\b(?:old|original|off) (?:\w+ )?(?:finish|varnish|lacquer|shellac|stain|poly\w*|wax)|\b(?:varnish|lacquer|shellac|finish) (?:sanded|scraped|sanding) off\b/,
      },
    ],
    line: "Old finish dust can hold lead: fitted mask, not indoors; see local rules.",
    source: "NIOSH and OSHA pages on wood dust; 40 CFR 745 on lead-safe work (from memory)",
  },
  {
    id: "tropical wood",
    weight: 2,
    of: "piece",
    when: [{ piece: TROPICAL, words: either(SHAPING, /\bsand\w*/), doing: WORKING }],
    line: "Some tropical wood dust hurts skin and lungs: mask, gloves; see local rules.",
    source: "NIOSH and OSHA pages on wood dust (sensitizers); the list of woods: common practice, no source",
  },
  {
    id: "dust",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:mdf|particle ?board|chip ?board|fiber ?board|(?:no|without a?|forgot my) ?(?:dust )?mask|sand(?:ed|ing)?\b.*\b(?:inside|indoors|in the (?:house|basement|kitchen)))\b/,
      },
    ],
    line: "Board and sanding dust hurt the lungs: fitted mask, not indoors; local rules.",
    source: "NIOSH and OSHA pages on wood dust; IARC group 1; formaldehyde of board: wood-dust summaries",
  },
  {
    id: "wood dust",
    weight: 3,
    of: "trade",
    when: [{ doing: { kinds: ["work"], words: /\bsanding\b/ }, words: /\b(?:re ?)?sand(?:ed|ing)\b/ }],
    line: "Wood dust hurts the lungs: collect it, wear a fitted mask; see local rules.",
    source: "NIOSH and OSHA pages on wood dust; IARC group 1",
  },
  {
    id: "lifting",
    weight: 3,
    of: "trade",
    when: [
      {
        words:
          /\b(?:lift(?:ed|ing)?|stairs|stairwell|staircase|(?:2nd|3rd|4th|second|third|fourth) (?:floor|story)|(?:one|two|three|\d) flights?|walk ?up|heavy|(?:2|two) ?(?:person|man) (?:lift|job|carry)|threw (?:out )?my back|hurt my back)\b(?! chair| stairs neighbor)/,
      },
      { piece: /\bpianos?\b(?! (?:bench|stool))/ },
    ],
    line: "Heavy lifting: straps, a dolly, two people; or hire licensed movers.",
    source: "Common practice, no source",
  },
  {
    id: "power tools",
    weight: 2,
    of: "trade",
    when: [
      {
        words:
          /\b(?:(?:table|miter|mitre|circular|band|jig|chop|reciprocating|radial arm|scroll) ?saws?|routers?(?! bit storage)|router table|jointers?|planers?|lathes?|angle grinders?|grinders?|nail(?:er| gun)s?|brad nailers?|belt sanders?|power tools?|drill press|impact drivers?)\b/,
      },
    ],
    line: "Power tools: guards on, eyes and ears covered, manual first; local rules hold.",
    source: "29 CFR 1910 subpart P (hand and portable powered tools); from memory",
  },
];
