import type { Hazard } from "../hazard.ts";

/** Dealing with people and with the state: once a year in a ledger. */
export const TRADE_HAZARDS: readonly Hazard[] = [
  {
    id: "overpayment",
    weight: 2,
    of: "trade",
    when: [
      {
        words:
          /\b(?:cashiers? (?:check|cheque)s?|certified (?:check|cheque)s?|(?<!\bi )over ?pa(?:id|ying|yment|y|ys)|(?:his|her|their|my|the) (?:own )?movers?(?: will| is| are|s)? (?:pick|com|collect|get)\w*|my movers?|send (?:the )?(?:extra|rest|difference|balance) back|refund the difference|shipping agent|verification code|sight unseen)\b/,
      },
    ],
    line: "Sending back an overpayment is a common fraud: cash only; ask local police.",
    source: "Police department page on safe trades (San Marcos), on checks and overpayment",
  },
  {
    id: "meeting",
    weight: 2,
    of: "trade",
    when: [
      {
        words:
          /(?<!\b(?:swap|track|flea|board|parent teacher|pta|staff|church|first) )\bmeet(?:s|ing|up| up)?\b(?! (?:notes|market))|\bmet (?:a |the |some |him|her|them|up)|\b(?:stranger|my address|gave (?:him|her|them) (?:my |the )?address)\b|\b(?:guy|lady|man|woman|buyer|someone|somebody|dude|couple) (?:is |are |was )?(?:coming|comes|swinging|stopping|picking|showing)\b|\b(?:pick ?up|picking up|coming by|swinging by|coming|stopping by) .*\b(?:tonight|tomorrow|at \d|after dark|at (?:six|seven|eight|nine|noon|five))\b|\bwith cash (?:at|tonight|tomorrow)\b/,
      },
      {
        doing: { kinds: ["hold", "list", "fallthrough"], words: /^$/ },
        words: /\b(?:pick ?up|picking up|tonight|address)\b/,
      },
    ],
    line: "Meeting strangers: daylight, public, not alone; ask local police for a place.",
    source: "Two police departments' pages on meeting buyers (Newport News, San Marcos)",
  },
  {
    id: "sales tax",
    weight: 3,
    of: "trade",
    when: [
      {
        words:
          /\b(?:sales tax|sellers? permits?|resale (?:certificates?|permits?|licen[sc]es?)|vendors? (?:permits?|licen[sc]es?)|business licen[sc]es?|tax exempt|tax id|craft fair|vendors? (?:booth|mall|market)|booth (?:fee|rent|rental)|flea market (?:booth|table|stall|spot)|table fee|market fee)\b/,
      },
    ],
    line: "Resale may need a permit and sales tax: licensed preparer, local rules.",
    source: "State revenue departments on occasional sales and sellers' permits; from memory",
  },
  {
    id: "helpers",
    weight: 3,
    of: "trade",
    when: [
      { spentOn: "help" },
      {
        words:
          /\b(?:paid|pay|paying|tipped|gave) (?:my |the |a |some |two |\d )?(?:\w+ )?(?:helpers?|cousin|nephew|niece|brother|sister|son|daughter|friend|buddy|neighbor|kids?|teen(?:ager)?s?|guys?|movers?|handyman|laborers?|students?)\b.*\b(?:\d+|help|to|for)\b/,
      },
      {
        words:
          /\b(?:hired|hire|hiring) (?:a |some |two |my |\d )?(?:\w+ )?(?:help|helpers?|guys?|kids?|movers?|teens?|hand|hands|someone)\b|\bday labor\b/,
      },
    ],
    line: "Paid helpers may mean forms and tax: ask a licensed preparer; local rules.",
    source:
      "IRS publication 15-A, Employer's Supplemental Tax Guide (from memory); contractor form from 2,000 dollars since 2026, P.L. 119-21 section 70433",
  },
];
