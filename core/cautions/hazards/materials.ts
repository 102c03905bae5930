import type { Hazard } from "../hazard.ts";

/** What is brushed, sprayed and wiped: solvents, fumes, oils, bleach and the wrong paint. */
export const MATERIAL_HAZARDS: readonly Hazard[] = [
  {
    id: "methylene chloride",
    weight: 1,
    of: "piece",
    when: [
      {
        words:
          /\b(?:methylene(?: chloride)?|dichloromethane|dcm|air(?:plane|craft) (?:paint )?(?:stripper|remover))\b/,
      },
    ],
    line: "Methylene chloride can kill indoors, banned for stripping; see local rules.",
    source: "84 FR 11420 (2019) and 89 FR 39254 (8 May 2024), 40 CFR 751 subpart B",
  },
  {
    id: "lye",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:lye|caustic(?: soda)?|sodium hydroxide|dip(?:ped)? and strip|dip ?stripp\w*|hot tank(?:ed)?|oven cleaner|muriatic(?: acid)?)\b/,
      },
    ],
    line: "Lye and acid burn: face shield, gloves, water near; mind label and local rules.",
    source: "NIOSH Pocket Guide to Chemical Hazards, sodium hydroxide; from memory",
  },
  {
    id: "oily rags",
    weight: 1,
    of: "piece",
    when: [
      {
        words:
          /\b(?:blo|(?:boiled |raw )?linseed(?: oil)?|(?:danish|teak|tung|hemp|walnut|rosewood|finishing|wood|hardwax|hard wax|furniture) oil|oil (?:finish|stain|varnish|wax)|oil based(?: \w+)?|(?:spar )?varnish(?:ed|ing)?(?! off)|(?:gel|wood|oil|dark|walnut|cherry|mahogany|oak) stain|oiled (?:it|the|up)|oily rags?|oiling|oil for)\b/,
      },
      { spentOn: "materials", words: /\bstain\b/ },
      { doing: { kinds: ["work"], words: /\bstaining\b/ }, words: /\bstain(?:ed|ing)\b/ },
      { words: /\b(?:cans?|quarts?|qts?|pints?|gal(?:lon)?s?) (?:of )?stain\b/ },
    ],
    line: "Oily rags can ignite: dry flat outside, then a lidded can of water; local rules.",
    source: "NFPA tip sheet, Oily Rags (self-heating of drying oils, oil stains and varnishes)",
  },
  {
    id: "solvents",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:mineral spirits?|white spirits?|(?:paint |lacquer )?thinners?|acetone|turpentine|turps|denatured alcohol|methylated spirits?|naphtha|xylene|toluene|mek|benzene|rubbing alcohol)\b/,
      },
    ],
    line: "Solvents burn, fumes harm: open air, gloves, no flame; label, local rules.",
    source: "NIOSH Pocket Guide to Chemical Hazards (Stoddard solvent, acetone, turpentine); from memory",
  },
  {
    id: "stripper",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:(?:paint |varnish |citrus |safe |gel |chemical )?strippers?|nmp|paint removers?|citrus stripp\w*|strip ?it gel|chemically stripp\w*|chemical strip\w*)\b/,
      },
    ],
    line: "Stripper: gloves, goggles, open air, no flames; mind the label and local rules.",
    source: "Oregon Metro, page on paint strippers",
  },
  {
    id: "fumes",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:spray ?paint\w*|sprayed|spraying|sprayers?|spray (?:guns?|primer|lacquer|finish|adhesive|glue|cans?|varnish|can)|rattle ?cans?|aerosol|lacquer(?:ed|ing)?|poly|polyurethane|urethane|epox(?:y|ied|ying)|resin|contact cement|fumes|dizzy|shellac)\b/,
      },
    ],
    line: "Spray and finish fumes harm: open air, cartridge mask; label and local rules.",
    source: "NIOSH guidance on organic vapor cartridges for spraying; cartridge choice from memory",
  },
  {
    id: "bleach",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:wood bleach|bleach(?:ed|ing)?|oxalic(?: acid)?|hydrogen peroxide|peroxide|ammonia|fum(?:ed|ing) oak)\b/,
      },
    ],
    line: "Bleach burns skin, eyes, lungs: gloves, never mix it; label and local rules.",
    source: "NIOSH Pocket Guide to Chemical Hazards (oxalic acid, hydrogen peroxide, ammonia); from memory",
  },
  {
    id: "wrong paint",
    weight: 2,
    of: "piece",
    when: [
      {
        words:
          /\b(?:(?:marine|industrial|road|barn|traffic|machine|boat) (?:paint|enamel|varnish)|old (?:cans? of |stock )paint|leftover (?:old |lead )?paint)\b/,
      },
    ],
    line: "Use current consumer paint: old or marine paint may break local rules.",
    source: "16 CFR 1303 (consumer paint and furniture: lead limit); 90 ppm since August 2009 from memory",
  },
];
