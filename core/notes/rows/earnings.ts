import type { OwnerEffect } from "./hands.ts";
import type { Row } from "./table.ts";

const METAL = "metal|brass|copper|iron|aluminum|steel|tin";
const SCRAP = `${METAL}|wood|lumber`;

/** Money that comes in beside the pieces: scrap, rents, classes and jobs by their names. */
export const EARNINGS: readonly Row<OwnerEffect>[] = [
  ["[ran|running|placed|posted|took_out <art>? ads|ad] … $", "cost", "ran ads 15"],
  [
    "[<supply>|<labor>|<trait>|<part> <supply>? class|classes|workshop|workshops|lesson|lessons|course|courses]",
    "stream",
    "110 for teaching the chalk paint class",
  ],
  ["[!ads|ad|videos|blog <stream> payment|payments]", "stream", "lessons payment 40"],
  ["[<stream> payout|payouts|deposit|money|revenue|proceeds|earnings] !down", "stream", "class payout 40"],
  ["[<stream> check] came|arrived|in|hit|cleared|landed|of|for|,", "stream", "workshop check came 62.15"],
  [
    "paid|pd|spent $ for|on <art>? [repair|repairs|tune_up|tuneup|oil_change|inspection|fix] ;",
    "cost",
    "paid 55 for a repair",
  ],
  [
    `^ [sold|cashed_in|turned_in|recycled|scrapped <art>|some|old|that* scrap ${SCRAP}? money?] … $`,
    "scrap",
    "sold scrap metal 14",
  ],
  [
    `^ [sold|cashed_in|turned_in|recycled <art>|some|old|that* ${SCRAP} <art>? for_scrap|as_scrap] … $`,
    "scrap",
    "sold old brass for scrap 9",
  ],
  [`^ <art>? [scrap ${SCRAP}? money|cash|income|sales|proceeds|run|haul] $`, "scrap", "scrap money 14"],
  [`<buy>|paid|spent … [scrap ${SCRAP}]`, "supply", "bought scrap wood 6"],
  [`^ <art>? [scrap ${METAL}] $`, "scrap", "scrap brass 14"],
  [
    `^ i|we|got|made|received|earned* $ [for|from <art>|some|old* scrap ${SCRAP}? yard|money?] ;`,
    "scrap",
    "14 for scrap brass",
  ],
  [
    "^ <art>? [scrap_yard|scrapyard|recycler|recycling_center|metal_yard gave|paid me|us] $",
    "scrap",
    "scrap yard gave me 14",
  ],
  [
    "[<art>|my|our|<trait>|<plain>* <supply>|truck|van|trailer|tool|equipment rental|rentals income|money|cash|payment] $",
    "rental",
    "sander rental income 25",
  ],
  [
    "^ i|we|just? [rented|leased|loaned|lent out <art>|my|our|<trait>|<plain>* <supply>] … $",
    "rental",
    "rented out the sander 25",
  ],
  [
    "^ i|we|just? [rented|leased <art>|my|our|<trait>|<plain>* <supply> out|to_a|to_the|to_my|to_our <person>|<new>|<kin>?] … $",
    "rental",
    "rented the sander to a neighbor for 25",
  ],
  [
    "^ <art>? [<person>|<new> rented|leased|borrowed the|my|our <trait>|<plain>* <supply>] for|and|,? paid? $",
    "rental",
    "neighbor rented the sander for 25",
  ],
  [
    "got|made|received|earned $ [for|from|by renting|leasing|lending|loaning out? <art>|my|our|<trait>|<plain>* <supply> out?]",
    "rental",
    "got 30 for lending out the trailer",
  ],
  [
    "got|made|received|earned $ [for|from|off the|my|our <trait>|<plain>* <supply> rental|rentals]",
    "rental",
    "got 25 from the sander rental",
  ],
  [
    "got_paid|was_paid|were_paid|get_paid|getting_paid $ for|from <art>? <opinion>|<trait>? [<stream>]",
    "stream",
    "got paid 60 for a repair job",
  ],
  ["[<stream> fee|fees] $ received|came_in|paid_me|in", "stream", "consult fee 40 received"],
];
