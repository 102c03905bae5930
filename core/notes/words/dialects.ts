import { phrases } from "./words.ts";

/* Verbs that some countries have for what others say otherwise, in one place: each file of a verb takes its own of them. */

const FLUNG = phrases("stuck popped whacked chucked bunged slapped lobbed shoved slung threw plonked got");

/** How a piece is put before buyers, and where. */
export const STUCK: readonly string[] = [...FLUNG, "banged", "plunked", "flung", "stick"];

export const UP: readonly string[] = [
  ...["up", "up for", "up at", "up on", "up online", "up for sale", "up for sale for", "up for sale at"],
  ...["online", "online for", "online at", "back up", "back up for", "back up at", "back online", "back on"],
];

/** How an advertisement is made. */
export const MADE_AN_AD: readonly string[] = ["stuck", "popped", "put", "whacked", "bunged"]
  .flatMap((verb) => [
    `${verb} an ad up for`,
    `${verb} up an ad for`,
    `${verb} an advert up for`,
    `${verb} up an advert for`,
    `${verb} ad for`,
  ])
  .concat(
    ["made ad for", "made an ad for", "made advert for", "made an advert for", "made listing for"],
    ["made a listing for", "made ad of", "published", "made post for", "made a post for"],
  );

/** The same of the net: how it is put, and where. */
export const PUT: readonly string[] = ["put", ...FLUNG];

export const ON_NET: readonly string[] = [
  ...[
    "internet",
    "net",
    "web",
    "line",
    "classifieds",
    "paper",
    "newspaper",
    "bulletin board",
    "notice board",
  ].flatMap((where) => ["on", "in", "to", "at"].flatMap((to) => [`${to} ${where}`, `${to} the ${where}`])),
  ...["market", "site", "board", "app", "page"].flatMap((where) => [`on ${where}`, `on the ${where}`]),
  ...["for sale", "for sale at", "for sale for"],
];

/** How a piece is carried to where it ends. */
export const CARRIED: readonly string[] = (
  "took popped hauled carried dropped ran run toted lugged dragged schlepped chucked threw slung bunged lobbed tossed " +
  "flung stuck put sent left taken hauled_off carted wheeled brought tipped"
)
  .split(" ")
  .map((verb) => verb.replace("_", " "));

const ENDS = phrases(`
  tip skip dump bin bins dumpster landfill burn_pile bonfire rubbish recycling_centre recycling_center
  junk_yard junkyard trash garbage fire_pit burn_barrel
`);

/** Where what nobody can use is brought, and that it went there. */
export const TO_ITS_END: readonly string[] = ENDS.flatMap((end) => [
  ...["to", "in", "into", "at", "on", "down"].map((to) => `${to} the ${end}`),
  ...["in a", "into a", "in", "on a"].map((to) => `${to} ${end}`),
  ...["off to", "out to", "down to", "over to"].map((to) => `${to} the ${end}`),
  `to ${end}`,
]);

export const TOSSED: readonly string[] = [
  ...["chucked", "slung", "bunged", "lobbed", "hoyed", "hoofed"].flatMap((verb) => [
    `${verb} … out`,
    `${verb} out`,
    `${verb} … away`,
  ]),
  "burnt",
];

export const WENT_OFF: readonly string[] = [
  "gone",
  "went",
  "is gone",
  "has gone",
  "has been taken",
  "was taken",
].flatMap((went) =>
  ENDS.flatMap((end) =>
    ["to the", "in the", "into the", "on the", "to", "in"].map((to) => `${went} ${to} ${end}`),
  ),
);

/** Those to whom a piece is given for nothing. */
const GIVEN_AT = phrases(`
  charity_shop op_shop charity hospice_shop hospice thrift_store thrift_shop
  shelter church donation_bin donation_centre donation_center food_bank mission jumble_sale
`);

export const BROUGHT: readonly string[] = "took dropped popped carried brought hauled taken sent".split(" ");

export const TO_CHARITY: readonly string[] = GIVEN_AT.filter((at) => at !== "church").flatMap((at) =>
  ["to", "at", "down", "round", "off at", "off to", "down to", "over to", "round to"].flatMap((to) => [
    `${to} the ${at}`,
    `${to} a ${at}`,
  ]),
);

export const WENT_TO_CHARITY: readonly string[] = ["gone", "went", "is gone", "has gone"].flatMap((went) =>
  GIVEN_AT.filter((at) => at !== "church").flatMap((at) => [`${went} to the ${at}`, `${went} to ${at}`]),
);
