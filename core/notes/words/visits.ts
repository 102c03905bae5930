/* What is told of when somebody comes for a piece that is kept for them. */

import { wordSet } from "./words.ts";

/** What they do then. */
export const VISITS = wordSet(
  "come comes coming back return returns returning pick picks picking pickup pick_up picks_up picking_up get gets getting grab grabs grabbing fetch fetches fetching collect collects collecting swing swings swinging stop stops stopping make",
);

/** How somebody came who then does something. */
export const COMES_HERE = wordSet(
  "came stopped swung ran popped dropped showed pulled drove walked wandered rolled turned biked rode arrived visited returned hit",
);
export const OVER = wordSet("over round by");

/** What they bring then. */
export const BRINGS_REST = wordSet("rest balance remainder");

/** With what they come. */
export const RIDES = wordSet(
  "truck trucks van vans car cars trailer suv minivan pickup wagon flatbed dolly straps blankets ride boat",
);
export const COMES_ALONG = wordSet(
  "help helper helpers muscle friend friends buddies buddy movers mover brothers sons",
);

/** What stands around it. */
export const BESIDE_VISIT = wordSet(
  "up by over it them out here off can could will would ll gonna going to is are be being he she they hes shes theyre hell shell theyll w with in on at for and then when once as soon after before only not_before first later tomorrow tonight soon next week weekend morning afternoon evening noon day the a his her their borrowed bigger pay pays paying bring brings bringing due left off work school church shift class practice lunch her_shift his_shift",
);

/** They cannot, before a day that they can. */
export const CANNOT = wordSet("cant cannot can_not couldnt wont isnt arent not");
export const TILL = wordSet("until till til before");

/** Somebody has put something down, or we hold it. */
export const PUTS_OR_HOLDS = wordSet(
  "put left gave sent paid handed took got dropped made wired hold holding held reserved reserving saving keeping",
);

/** Not who was told of before, or not what they said. */
export const OF_SOMEBODY_ELSE = wordSet(
  "else another other different instead second next no not never didnt wont refused declined",
);
