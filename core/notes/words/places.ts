import { phrases, wordSet } from "./words.ts";

/** Where pieces come from; each is known on its own, without "from" or "at". */
export const PLACES: readonly string[] = phrases(`
  hardware_store paint_store home_center home_improvement_store craft_store fabric_store lumber_yard
  big_box_store grocery_store dollar_store thrift_store thrift_shop thrift thrifting charity_shop
  charity_store second_hand_store secondhand_store consignment_store consignment_shop yard_sale yd_sale
  library_sale church_market garage_sale tag_sale rummage_sale estate_sale moving_sale church_sale
  church_rummage_sale school_sale barn_sale porch_sale sidewalk_sale neighborhood_sale block_sale
  community_sale jumble_sale boot_sale multi_family_sale flea_market flea swap_meet antique_store
  antique_shop antique_mall craft_fair craft_market craft_show farmers_market art_fair street_fair
  county_fair church_fair holiday_market christmas_market vintage_market vintage_fair maker_fair
  church_bazaar bazaar rummage antique_fair antique_market auction auction_house online_auction
  storage_auction curb curbside curb_alert roadside side_of_the_road side_of_road alley dumpster trash
  dump landfill transfer_station salvage_yard junk_yard junkyard reuse_store reuse_center neighbor
  neighbour online online_listing classifieds classified_ad free_pile vendor_mall furniture_store outlet
  clearance liquidation liquidation_sale warehouse_sale hotel_sale office_sale school_auction
  storage_clean_out storage_cleanout house_clean_out house_cleanout clean_out cleanout pawn_shop family
  friend barn skip tip_shop op_shop opshop nature_strip verge hard_rubbish council_cleanup
  council_clean_up council_pickup car_boot carboot car_boot_sale boot_fair jumble recycling_centre
  recycling_center house_clearance car_boot_fair salvage_shop junk_shop lawn_sale street_market
  bric_a_brac_stall church_jumble
`);

/** Those where used things are bought, and hardly ever sold by a shop. */
export const SELLS_USED =
  /(?:sale|thrift|thrifting|flea|auction|rummage|jumble|bazaar|swap meet|flea market|car boot|carboot|(?:thrift|charity|op|junk|salvage|second ?hand) ?(?:store|shop))$/;

/** "at our garage sale": there the shop sells; "the thrift store has a hutch for 60": it may stand there still. */
export const STAYS_THERE =
  /\b(?:my|our) (?:own )?(?:\w+ )?(?:sale|auction|boot)\b|\b(?:has|had|have|firm)\b/i;

/** Before whom a piece came from. */
export const FROM_SOMEBODY =
  /^(?!\W*\d[\d.,]* (?:for|from|on) ).*\w(?: \d[\d.]*)?,? (?:off|off of|from) (?:a|an|the|my|our|some|this|that) [a-z]/i;

/** "thrift run: stool 4": the way there, behind the place. */
export const OUTING =
  /\b(?:run|trip|haul|finds?|stop)(?= ?:)|^(?:i |we )?went (?:a (?:bit|little) )?(?:nuts|crazy|mad|overboard|bananas)\b[^\d:,]*[:,]/i;

/** Where a shop's own pieces stand: what leaves from there names no buyer and no seller. */
export const OWN_SPOTS: ReadonlySet<string> = new Set(
  (
    "garage driveway porch basement attic shed carport patio yard backyard lawn truck van trailer pickup car suv storage unit " +
    "locker workshop shop house home booth stall curb doorstep stoop deck"
  ).split(" "),
);

/** Where things lie that cost nothing. */
export const OUT_OF_BINS: readonly string[] = [
  "out of the trash",
  "out of the garbage",
  "out of the dumpster",
  "out of a dumpster",
  "out of the landfill",
  "from the trash",
  "from the landfill",
];

/** Places as they are shortened, each to its name. */
export const PLACES_IN_SHORT: Readonly<Record<string, string>> = {
  ...Object.fromEntries(OUT_OF_BINS.map((bin) => [bin, bin.slice(bin.lastIndexOf(" ") + 1)])),
  "est sale": "estate sale",
  "gar sale": "garage sale",
  "yd sale": "yard sale",
  "rum sale": "rummage sale",
  "flea mkt": "flea market",
};

/** Before the place where something was done. */
export const BEFORE_PLACE = wordSet("at in");

/** Boards on which things are offered for sale. */
export const SITES = wordSet(
  "app apps site sites website websites page pages group groups board boards market " +
    "forum forums classified classifieds online internet web feed story stories socials listings town_page town_group",
);

/** What is found at these costs nothing (common practice, no source), but where it is said to be bought. */
export const FREE_PLACES = wordSet(
  "curb curbside roadside side_of_the_road side_of_road alley dumpster trash",
);
