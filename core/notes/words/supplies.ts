import type { Category } from "../reading.ts";
import { phrases, wordSet } from "./words.ts";

/** What money is spent on, by category. Plurals are made by rule; a supply is named back as said. */
export const SUPPLIES: Readonly<Record<Exclude<Category, "other">, readonly string[]>> = {
  materials: phrases(`
    spray cedar_spray odor_spray fabric_spray bug_spray bed_bug_spray spray_can deodorizer odor_remover
    odor_eliminator air_freshener baking_soda vinegar dryer_sheet carpet_shampoo upholstery_shampoo
    shampoo hair_remover pet_hair_remover stain_remover mold_killer moth_ball mothball steel_wool_pad
    toothbrush cotton_swab melamine_sponge painters_plastic plastic_sheeting plastic_sheet finial harp
    lamp_harp shelf_paper peel_and_stick peel_and_stick_paper transfer_sheet dowel_pin shim dust_cover
    cardboard shade glass_insert leather_insert seat_pad seat_cushion moving_pad cleaning_supply
    stick_on_tile led_strip light_strip odds_and_ends bits_and_pieces bits_and_bobs gold_leaf_kit
    repair_kit touch_up_kit hardboard backing_board lacquer_thinner methylene_chloride dcm lye
    lye_stripper caustic_stripper naphtha turps spirits xylene toluene muriatic_acid oxalic_acid ammonia
    peroxide contact_cement spar_varnish spar_urethane urethane catalyzed_lacquer spray_lacquer
    spray_primer clear_spray two_part_epoxy epoxy_resin table_top_epoxy granite quartz slate concrete
    vinyl_tile floor_tile mastic butane_torch torch respirator_cartridge picture_hanger furniture_pad
    contractor_paper kraft_paper garbage_bag trash_bag contractor_bag shop_towel wood_plug rewiring_kit
    wiring_kit mirror_glass cabinet_glass felt_dot leveler non_slip_pad corner_brace mending_plate
    wall_anchor furniture_anchor anti_tip_kit anti_tip_strap magnetic_catch cotton_swab cotton_swabs toothpick toothpicks zip_tie zip_ties goo_remover shellac_flake shellac_flakes oil_soap wood_soap lid_support piano_hinge
    drawer_track grommet upholstery_tack stretch_wrap moving_box tack_cloth stain_pad paint_strainer
    stir_stick wood_oil boiled_linseed_oil wood_restorer scratch_cover touch_up_paint touch_up_pen
    rust_remover paint_remover wood_hardener paint spray_paint spraypaint chalk_paint milk_paint
    mineral_paint latex_paint house_paint cabinet_paint wall_paint acrylic_paint enamel_paint enamel
    latex primer stain gel_stain wood_stain top_coat base_coat prime_coat seal_coat topcoat clear_coat
    clearcoat poly polyurethane varnish shellac lacquer sealer sealant wax furniture_wax paste_wax
    clear_wax dark_wax danish_oil linseed_oil tung_oil teak_oil hemp_oil mineral_oil lemon_oil
    finishing_oil wood_bleach bleach stripper paint_stripper citrus_stripper thinner paint_thinner
    mineral_spirits white_spirit white_spirits methylated_spirits meths sugar_soap emulsion undercoat
    pva wire_wool beeswax castors denatured_alcohol turpentine acetone deglosser degreaser cleaner tsp
    glaze glazing gel epoxy resin sandpaper sanding_belts kit kits belts sand_paper sanding_paper
    sanding_disc sander_disc sander_disk sander_pad sanding_disk sanding_pad sanding_block
    sanding_sponge sanding_sheet grit grit_paper steel_wool scouring_pad knob pull drawer_pull
    cabinet_pull cup_pull handle drawer_handle hinge hardware glide drawer_glide drawer_slide slide
    caster castor wheel leg table_leg furniture_leg hairpin_leg foot_pad felt_pad bracket corner_bracket
    latch magnet lock key hook screw wood_screw nail brad_nail finish_nail finishing_nail finish_washer
    finish_screw brad staple bolt nut washer dowel shelf_pin caulk filler wood_filler wood_putty putty
    spackle glue wood_glue super_glue hot_glue glue_stick adhesive spray_adhesive fabric
    upholstery_fabric velvet vinyl leather burlap muslin foam webbing batting cushion piping cording
    trim thread zipper button tack drop_cloth drop_clothes paint_supplies cleaning_supplies dropcloth
    tape painters_tape masking_tape duct_tape stencil decal transfer_paper decoupage_paper wallpaper
    contact_paper drawer_liner liner shelf_liner lining_paper lumber wood plywood shelf_peg sander_belt
    sanding_belt ply board pine_board chair_rail molding moulding veneer edge_banding applique glass
    acrylic_sheet marble tile cane caning cane_webbing rattan wicker rope twine rag paper_towel glove
    mask respirator dust_mask bulb light_bulb lamp_shade lampshade lamp_kit cord socket
    paint_brush_cleaner material supplies supply craft_supplies finish oil tarp moving_blanket
    bubble_wrap shrink_wrap packing_tape wood_dye dye tint gold_leaf metal_polish polish
    furniture_polish furniture_feet feet mdf blo wood_conditioner pre_stain conditioner mop slat
    bed_slat drawer_knob spring strap paint_can decoupage_glue paint_pen sponge paint_marker
    touch_up_marker wood_marker
  `),
  tools: phrases(`
    power_strip ear_plug earplug headlamp work_lamp moisture_meter wet_vac vac_filter floor_sander
    drum_sander edge_sander pocket_hole_jig extension_pole stud_finder miter_box speed_square
    paint_mixer palette_knife wire_brush scraper_set bit_set drill_set clamp_set brush_set nail_set
    sanding_drum respirator_filter dust_bag sander_bag stencil_brush paint_bucket paint_can_opener
    pliers_set rubber_mallet dead_blow_hammer spokeshave rasp wood_file awl tin_snips soldering_iron
    label_maker price_gun tagging_gun luggage_scale hand_cart moving_dolly cargo_net bungee bungee_cord
    tool sander orbital_sander belt_sander palm_sander detail_sander hand_sander drill drill_bit bit
    drill_press impact_driver screwdriver screwdriver_set saw table_saw miter_saw mitre_saw circular_saw
    jig_saw jigsaw hand_saw saw_blade blade clamp bar_clamp hammer mallet chisel router router_bit
    planer hand_plane scraper paint_scraper putty_knife utility_knife knife heat_gun glue_gun staple_gun
    nail_gun router_table tool_chest tool_cart nailer brad_nailer stapler paint_sprayer sprayer
    spray_gun compressor air_compressor vac shop_vacuum vacuum dust_extractor brush paint_brush
    paintbrush wax_brush foam_brush chip_brush roller paint_roller foam_roller roller_cover paint_tray
    ladder dolly furniture_dolly hand_truck sawhorse saw_horse square level tape_measure measuring_tape
    wrench socket_set ratchet plier pliers multi_tool multitool rotary_tool steamer sewing_machine
    extension_cord battery charger charger_pack work_light toolbox tool_box ratchet_strap steam_cleaner
    carpet_cleaner upholstery_cleaner grinder bench_grinder bench_sander bench_vise vise vice_grips
    tool_belt allen_key safety_glasses goggles caulk_gun lathe jointer pry_bar crowbar flashlight
    shop_light
  `),
  vehicle: phrases(`
    gas gasoline fuel diesel gas_money toll bridge_toll parking parking_meter parking_fee truck_rental
    van_rental trailer_rental truck_rent van_rent trailer_rent rental_truck rental_van trailer
    trailer_hitch hitch oil_change motor_oil tire tires brake brake_pads car_wash truck_wash car_repair
    truck_repair van_repair wiper_blades car_insurance truck_insurance registration tow towing mechanic
    gas_for_truck van_hire truck moving_truck car_battery truck_battery mileage bus_fare ferry cargo_van
    van
  `),
  fees: phrases(`
    bad_check bounced_check overdraft overdraft_fee bank_fee returned_check_fee fee booth_fee
    listing_fee selling_fee sale_fee sold_fee closing_fee sales_commission platform_fee buyers_fee
    buyer_fee buyer_premium auction_fee market_fee vendor_fee consignment_fee booth_rent booth_rental
    booth table_fee entry_fee dump_fee landfill_fee disposal_fee card_fee processing_fee transaction_fee
    transfer_fee permit license seller_permit boost boosted_listing boosted_post listing_boost
    paid_listing paid_ad ad_fee commission_fee late_fee service_fee membership_fee listing_upgrade
    vendor_booth permit_fee license_fee buyers_premium payment_fee
  `),
  help: phrases(`
    help helper helpers mover movers labor labour moving_help delivery_help hired_help delivery_guy
    delivery_driver handyman hauler assistant upholsterer upholstery_guy upholstery_lady upholstery_shop
    locksmith welder glazier glass_guy carpenter joiner french_polisher cabinet_maker cabinetmaker
    electrician refinisher seamstress caner powder_coater moving_guys moving_guy junk_guy truck_guy
    paint_guy repair_guy repair_shop metal_guy babysitter muscle contract_labor day_labor photographer
    loading_help
  `),
  storage: phrases(`
    storage storage_unit storage_unit_rent storage_rent storage_locker unit_rent storage_fee garage_rent
    shop_rent rent workshop_rent space_rent warehouse warehouse_rent storage_pod studio_rent
    storage_shed shed_rent
  `),
};

/** Spending of category `other` that is plainly spending, verb or no verb. */
export const OTHER_SPENDING: readonly string[] = phrases(`
  dump_run dumpster_rental early_bird_entry early_entry entry admission sale_entry craft_fair_booth
  craft_show_booth po_box post_office post_office_box receipt_book notebook printer_paper ledger_book
  envelope thank_you_card flyer banner lunch dinner breakfast coffee snack snacks pizza donuts food drinks
  insurance hosting web_hosting domain domain_name website internet phone phone_bill business_cards stamps
  postage shipping printer_ink ink office_supplies electric_bill electricity utilities software
  app_subscription subscription signs sign price_tags tags labels
`);

/** Supplies that are also things one does to a piece: "paint dresser 20" could be minutes or money. */
export const SUPPLY_VERBS: ReadonlySet<string> = wordSet(`
  paint stain wax glue oil glaze polish trim tape nail tile lacquer varnish shellac bleach finish drill
  hammer vacuum clamp tow boost help store
`);

/** What a supply comes in: "2 cans of primer", "3 sheets sandpaper". */
export const CONTAINERS: ReadonlySet<string> = wordSet(`
  pair pairs can cans gallon gallons gal quart quarts qt qts pint pints box boxes pack packs bag bags
  sheet sheets roll rolls tube tubes bottle bottles bundle bundles yard yards foot ft pound lb lbs tub
  tubs jar jars bucket buckets stick sticks tin tins oz tank tanks load loads month months case cases
  piece pcs length lengths
`);

/** What is filled up or parked: "gas 20 truck". */
export const VEHICLES: ReadonlySet<string> = new Set([
  "truck",
  "van",
  "car",
  "trailer",
  "pickup",
  "suv",
  "minivan",
]);

/** The grits that sandpaper and steel wool are sold in (common practice, no source): "sandpaper 220" names no price. */
export const GRITS: ReadonlySet<string> = wordSet(`
  00 000 0000 60 80 100 120 150 180 220 240 320 400
`);

/** What is paid to have a listing seen: the words describe no piece. */
export const FEE_VERBS: readonly string[] = [
  ...["boosted", "boosting", "promoted", "promoting", "renewed", "renewing", "featured", "bumped"],
];

const BE = ["was", "were", "is", "are", "s", "went", "got"];

/** Why a tool or what one works with is bought anew, as alternatives of a row: "sander died, new one 65". */
export const WORN_OUT = [
  ..."died broke quit failed burned_out burnt_out gave_out gave_up gave_up_the_ghost wore_out fell_apart went_bad".split(
    " ",
  ),
  ..."dried_out dried_up bit_the_dust kicked_the_bucket crapped_out conked_out snapped seized_up ran_out ran_dry".split(
    " ",
  ),
  ...[
    "dead",
    "shot",
    "junk",
    "toast",
    "fried",
    "worn_out",
    "worn",
    "dull",
    "ruined",
    "trash",
    "useless",
    "like_straw",
  ].flatMap((state) => BE.map((be) => `${be}_${state}`)),
].join("|");

/** Behind a cost: it is for all that there is, or for later. */
export const OF_NO_PIECE =
  /\b(?:shared|restock(?:ed|ing)?|stock(?:ed|ing)? up|on hand|(?:shop|general) (?:shop )?(?:suppl(?:y|ies)|stock|use|stuff|inventory)|not for (?:just |only )?(?:any |one |a |any one |a single |a particular |any particular |a specific )(?:piece|project|item|thing|job)|(?:for|on) (?:the |my |our )?(?:shop|garage|workshop|studio|barn|shed|business(?! card)|stock|everything|all (?:of )?(?:them|it|(?:the |my |our )?(?:pieces|projects))|(?:any|every) (?:piece|project)|(?:several|multiple|other) (?:pieces|projects)|whatever|later|next time|general use|the next (?:one|piece|project)))\b/i;
