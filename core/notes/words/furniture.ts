import { wordsAlike } from "./words.ts";

/**
 * Kinds of furniture: the canonical singular name, then other spellings of the same word. Another word for
 * the same thing is a name of its own, kept as said. "+" joins a word that is also written apart
 * ("night+stand"); names of two words are also read joined ("endtable"); plurals are made by rule.
 */
export const FURNITURE = wordsAlike(`
  dresser=drssr=dressser set_of_drawers chest_of_drawers=chest_o_drawers=chest_of_drawer drawer_chest
  bureau=buro tall+boy high+boy=hiboy=hi_boy low+boy lingerie_chest=lingere_chest=lingire_chest semainier
  chifforobe=chifferobe=chiffarobe=shifferobe=chifarobe chiffonier=chifonier=chiffonnier
  armoire=armoir=amoire media_armoire wardrobe schrank clothes_rack
  night+stand=nite_stand=nitestand=nightstnd=nite_stnd=night_stnd bedside_table=bed_side_table
  bedside_cabinet night_table=nite_table vanity=vanty=vanitie bathroom_vanity=bath_vanity dressing_table
  makeup_table=make_up_table makeup_vanity=make_up_vanity vanity_stool vanity_bench bed
  bed_frame=bedframe=bed_fram bed+stead head+board=headbord=hdbd foot+board=footbord crib=cribb cot
  bassinet=basinet=bassinett cradle toddler_bed=todler_bed kid_bed=kids_bed bunk_bed loft_bed day+bed
  trundle=trundel trundle_bed sleigh_bed canopy_bed four_poster_bed=4_poster_bed platform_bed wall_bed
  fold_down_bed changing_table=changing_tbl high_chair toy_box toy_chest
  cedar_chest=ceder_chest=seeder_chest hope_chest blanket_chest blanket_box chest trunk
  steamer_trunk=stemer_trunk foot+locker locker sofa=sofie couch=couche davenport settee=setee settle
  chesterfield love+seat=lovesit=love_sit sectional=sectionl corner_sofa sleeper_sofa sofa_bed
  fold_out_sofa=foldout_sofa fold_out_couch=foldout_couch pull_out_bed=pullout_bed
  pull_out_couch=pullout_couch pull_out_sofa=pullout_sofa futon=futton=fouton chaise=shaise
  chaise_lounge=chaise_longue=chase_lounge fainting_couch chair=chiar=chr arm+chair easy_chair
  accent_chair=accnt_chair lounge_chair sun_lounger wing+back=wingbak wing+back_chair wing_chair
  recliner=reclyner=recliener lift_chair rocking_chair=rockin_chair rocker=rockr glider club_chair
  tub_chair barrel_chair slipper_chair parlor_chair=parlour_chair side_chair dining_chair=dinning_chair
  dining_room_chair=dinning_room_chair kitchen_chair captains_chair=captain_chair=captains_chr
  windsor_chair=winsor_chair ladder+back_chair folding_chair office_chair desk_chair task_chair
  swivel_chair school_chair lawn_chair patio_chair beach_chair egg_chair bowl_chair saucer_chair
  butterfly_chair bean_bag_chair reclining_armchair adirondack_chair=adirondak_chair=adarondack_chair
  outdoor_chair porch_swing porch_rocker stool bar_stool counter_stool step_stool piano_stool
  milking_stool foot+stool foot_rest ottoman=otoman=ottomon=ottaman pouf hassock bench=bnch entry_bench
  entryway_bench storage_bench locker_bench deacons_bench=deacon_bench piano_bench organ_bench park_bench
  garden_bench window_bench window_seat church_pew pew table=tabel=tbl
  dining_table=dinning_table=dining_tbl dining_room_table=dinning_room_table kitchen_table=kitchen_tbl
  breakfast_table drop+leaf_table=drop_leafe_table gate+leg_table
  pedestal_table=pedastal_table=pedistal_table pedestal=pedastal=pedistal tulip_table
  farmhouse_table=farm_house_table=farm_house_tbl farm_table harvest_table trestle_table
  coffee_table=cofee_table=coffee_tbl cocktail_table end_table=end_tbl side_table=side_tbl lamp_table
  accent_table occasional_table parlor_table=parlour_table nesting_table stacking_table
  console_table=consol_table=consul_table console=consol sofa_table entry_table entryway_table hall_table
  drum_table tray_table game_table card_table folding_table pub_table bistro_table picnic_table
  patio_table garden_table play_table train_table work_table work+bench drafting_table library_table
  console_stereo telephone_table phone_table telephone_bench telephone_stand gossip_bench
  sewing_table=sewing_tbl sewing_cabinet sewing_machine_cabinet tea_table tea_cart plant_stand fern_stand
  plant_table smoking_stand umbrella_stand desk=dsk writing_desk writing_table computer_desk corner_desk
  executive_desk standing_desk kids_desk=kid_desk school_desk student_desk teachers_desk=teacher_desk
  secretary=secratary=secretery secretary_desk=secratary_desk=secretery_desk secretaire drop_front_desk
  slant_top_desk roll+top_desk roll+top tambour_desk filing_cabinet=file_cab file_cabinet book+case
  book+shelf=bookshelve=book_shelve barrister_bookcase=barrister_book_case etagere=étagère=etejair
  shelf=shelve shelving_unit shelf_unit display_shelf floating_shelf wall_shelf corner_shelf ladder_shelf
  leaning_shelf cube_shelf hutch=huch=hutche china_hutch kitchen_hutch desk_hutch corner_hutch
  china_cabinet=chyna_cabinet=chyna_cab=china_cab china_closet display_cabinet
  curio_cabinet=curious_cabinet curio vitrine buffet=buffay=bufet=buffett credenza=credensa=credenca
  media_credenza side+board hunt+board server cabinet=cabnet=cab corner_cabinet bar_cabinet bar_cart bar
  dry_bar wine_cabinet wine_rack liquor_cabinet gun_cabinet pie_safe tallboy meat_safe pouffe whatnot
  tea_trolley drinks_trolley hostess_trolley clothes_horse drinks_cabinet sugar_chest huntboard
  ottoman_box hallstand plan_chest dumb_waiter towel_rail canterbury churn wingback jam_cupboard
  clothes_airer saddle_rack flour_chest corner_unit wall_unit display_unit bed_settee bed_base
  telephone_seat monks_bench settle_bench footstool bureau_bookcase church_chair jelly_cabinet
  jelly_cupboard bakers_cabinet=bakers_cab=baker_cabinet bakers_rack=baker_rack flour_cabinet
  flour_bin_cabinet medicine_cabinet storage_cabinet kitchen_cabinet apothecary_cabinet
  card_catalog=card_catalogue kitchen_island=kitchen_iland island kitchen_cart butcher_block pantry_cabinet
  pantry cup+board=cuboard=cubbard=cubboard corner_cupboard larder tv_stand=tv_stnd=television_stand
  tv_console tv_cabinet tv_table media_console media_cabinet media_center
  entertainment_center=ent_ctr=ent_center=entertainment_centre entertainment_armoire=ent_armoire
  record_cabinet record_stand record_player_stand stereo_cabinet mirror=miror=mirrow wall_mirror
  floor_mirror cheval_mirror vanity_mirror dresser_mirror hall_tree hall_stand hall_bench coat_rack
  coat_tree coat_stand hat_rack shoe_rack shoe_cabinet magazine_rack towel_rack quilt_rack blanket_rack
  blanket_ladder luggage_rack room_divider=room_devider folding_screen wash+stand commode=comode dry_sink
  sink_base lamp=lmp floor_lamp table_lamp desk_lamp chandelier lantern dining_set=dinning_set
  dining_room_set=dinning_room_set dinette_set dinette kitchen_set bedroom_set bedroom_suite bed_set
  patio_set bistro_set=bisto_set living_room_set table_set table_and_chair_set=table_and_chairs_set
  vanity_set office_set outdoor_set sofa_set couch_set nightstand_set chair_set piano organ doll+house
  mantel=mantle corbel=corbal crate grandfather_clock mantel_clock=mantle_clock clock picture_frame
  painting_rack easel rug mattress box_spring hamper wagon cart utility_cart potting_bench room_screen
  swing hammock jewelry_armoire jewelry_box jewelry_cabinet music_stand nail_table podium bookend
  spice_rack pot_rack plate_rack gun_rack bike_rack stand rack divider kitchenette_table headboard_bench
  night_chest gentlemans_chest=gentleman_chest=gents_chest bachelors_chest=bachelor_chest accent_cabinet
  accent_chest console_cabinet nightstand_cabinet six_drawer_chest spinning_wheel wagon_wheel milk_can
  bird+cage cuckoo_clock cash_register bed_warmer coal_scuttle candlestick candelabra snowshoe sled
  andiron wine_barrel barrel washboard sconce planter platter tray decanter pitcher barn_door gramophone
  phonograph cobbler_bench cobblers_bench lobster_trap divan hourglass hitching_post lectern butter_churn
  weathervane typewriter birdbath wash_tub wine_crate milk_crate soda_crate rocking_horse oil_lamp
  hurricane_lamp barometer telescope valet valet_stand pie_cupboard linen_cabinet linen_cupboard
  linen_press pantry_cupboard welsh_dresser kitchen_dresser sea_chest army_trunk steamer_chest
  apothecary_chest map_chest map_cabinet flat_file icebox=ice_box radio_cabinet console_radio sewing_chest
  sewing_box step_table butlers_table=butler_table nest_of_tables wine_table magazine_table magazine_stand
  potting_table garden_stool vanity_chair boudoir_chair corner_chair hall_chair nursing_chair gaming_chair
  sling_chair directors_chair=director_chair bar_chair swivel_rocker platform_rocker high_top_table
  pub_set dining_bench kitchen_bench mud+room_bench boot_bench shoe_bench toy_bench bed_bench hall_chest
  hall_cabinet hall_console entry_cabinet entry_console display_case curio_case fire_screen tractor_stool
  shop_stool storage_ottoman storage_cube cube_organizer changer bunks
`);

/** A name that ends in one of these is a set: pieces that go together, kept and priced together. */
export const SET_WORDS: ReadonlySet<string> = new Set(["set", "suite", "dinette"]);

/** Spellings that look like furniture and mean two things: they are never read on their own. */
export const CLASHING_SHORT_FORMS: ReadonlySet<string> = new Set(["ns", "cod", "hb", "dt", "ct", "et", "dc"]);
