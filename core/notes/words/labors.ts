import { phrases, wordsAlike } from "./words.ts";

/** Work one does on a piece, as "-ing" and in the past. */
const STEMS = wordsAlike(`
  sanding=sanded painting=painted stripping=stripped staining=stained priming=primed waxing=waxed
  gluing=glued regluing=reglued fixing=fixed repairing=repaired cleaning=cleaned refinishing=refinished
  reupholstering=reupholstered recovering=recovered upholstering=upholstered sealing=sealed polishing=polished
  scrubbing=scrubbed power_washing=power_washed pressure_washing=pressure_washed prepping=prepped
  assembling=assembled disassembling=disassembled building=built rebuilding=rebuilt scraping=scraped
  peeling=peeled patching=patched filling=filled drilling=drilled rewiring=rewired distressing=distressed
  antiquing=antiqued varnishing=varnished oiling=oiled lacquering=lacquered spraying=sprayed
  stenciling=stenciled recaning=recaned caning=caned sewing=sewed cutting=cut shopping=shopped
  cleanup=cleaned_up_after clamping=clamped nailing=nailed screwing=screwed photographing=photographed
  staging=staged washing=washed dusting=dusted degreasing=degreased bleaching=bleached glazing=glazed
  dyeing=dyed touching_up=touched_up topcoating=topcoated top_coating=top_coated detailing=detailed
  restoring=restored redoing=redid taping=taped lining=lined leveling=leveled tightening=tightened
  hauling=hauled stapling=stapled buffing=buffed deep_cleaning=deep_cleaned detail_sanding=detail_sanded
  hand_sanding=hand_sanded scuff_sanding=scuff_sanded spot_sanding=spot_sanded
  finish_sanding=finish_sanded rough_sanding=rough_sanded resanding=resanded repainting=repainted
  decoupaging=decoupaged whitewashing=whitewashed tearing_down=tore_down gutting=gutted replacing=replaced
  installing=installed attaching=attached moving=moved_around loading=loaded reinforcing=reinforced
  veneering=veneered reveneering=reveneered dry_scraping=dry_scraped heat_gunning=heat_gunned
  wet_sanding=wet_sanded power_sanding=power_sanded routing=routed sawing=sawed planing=planed
  epoxying=epoxied airing_out=aired_out lifting=lifted carrying=carried rubbing_down=rubbed_down
  sprucing_up=spruced_up smartening_up=smartened_up doing_up=did_up titivating=titivated fettling=fettled
  french_polishing=french_polished hoovering=hoovered sugar_soaping=sugar_soaped wiping_down=wiped_down
  wiping=wiped wiping_off=wiped_off hosing_off=hosed_off hosing_down=hosed_down hosing=hosed
  degunking=degunked de_gunking=de_gunked vacuuming=vacuumed vacuuming_out=vacuumed_out masking=masked
  masking_off=masked_off shimming=shimmed rubbing_out=rubbed_out rubbing=rubbed rinsing=rinsed
  rinsing_off=rinsed_off soaping=soaped spackling=spackled deodorizing=deodorized chiseling=chiseled
  straightening=straightened straightening_out=straightened_out bracing=braced splinting=splinted
  unstapling=unstapled destapling=destapled restuffing=restuffed papering=papered wallpapering=wallpapered
  mending=mended darning=darned freshening_up=freshened_up mothproofing=mothproofed delousing=deloused
  debugging=debugged fumigating=fumigated derusting=derusted de_rusting=de_rusted descaling=descaled
  wire_brushing=wire_brushed dry_brushing=dry_brushed soldering=soldered lubing=lubed greasing=greased
  aligning=aligned rehanging=rehung refitting=refitted resizing=resized
  putting_back_together=put_back_together taking_apart=took_apart tearing_apart=tore_apart
  ripping_out=ripped_out ripping_apart=ripped_apart pulling_apart=pulled_apart breaking_apart=broke_apart
  digging_out=dug_out rehabbing=rehabbed reviving=revived overhauling=overhauled dolling_up=dolled_up
  tuning_up=tuned_up unscrewing=unscrewed unbolting=unbolted dismantling=dismantled
  piecing_together=pieced_together caulking=caulked puttying=puttied plugging_holes=plugged_holes
  scuffing=scuffed_up recoating=recoated basecoating=basecoated clear_coating=clear_coated
  burnishing=burnished shellacking=shellacked touch_sanding=touch_sanded block_sanding=block_sanded
  steaming=steamed whittling=whittled doweling=doweled rescreening=rescreened reglazing=reglazed
  resealing=resealed rewaxing=rewaxed restaining=restained restapling=restapled rewebbing=rewebbed
  respraying=resprayed tidying_up=tidied_up cleaning_out=cleaned_out cleaning_off=cleaned_off
  knocking_apart=knocked_apart weaving=wove
`);

/** Work as a noun: "touch ups on the vanity". */
const JOBS = ["touch ups", "touchups", "touch up work", "prep work", "assembly", "disassembly", "repairs"];

/** Work whose past says how a piece is: a carved chest, a tufted chair. */
const DOINGS = phrases(`
  hammering pinning tacking padding tufting stitching ironing trimming carving welding grinding gilding
  graining blending chipping_away_at plugging_away_at plugging_away slaving_over laboring_over
  toiling_over hacking_at hacking_away_at going_over tinkering_with tinkering puttering_with puttering
  futzing_with futzing fiddling_with fussing_with fussing_over messing_with wrestling_with wrestling
  banging_on beating_on grinding_away_at wrangling fabricating embellishing tweaking brushing feathering
  picking prying digging coaxing measuring unsticking unjamming tying knotting springing color_matching picking_at pecking_at poking_at working_over fooling_with
`);

export const LABORS: readonly string[] = [...STEMS.flat(), ...JOBS, ...DOINGS];

/** A word by which what stands behind it is time at work. */
export const WORKING: ReadonlySet<string> = new Set([...LABORS, "worked", "working", "work"]);

/** What is done to a piece, as one says it of work to do, as alternatives of a row. */
export const TO_WORK =
  "sand|strip|paint|prime|stain|refinish|clean|fix|repair|glue|wax|buff|scrape|patch|polish|assemble|reupholster|recover|seal";

const nameOfWork = (base: string): string =>
  STEMS.find(([name]) => name.startsWith(base.replace(/e$/, "")))?.[0] ?? base;

/** The name of the work, whichever form was typed: "sanded" and "sand" are "sanding". */
export const LABOR_NAMES: ReadonlyMap<string, string> = new Map([
  ...STEMS.map(([name, past = name]) => [past, name] as const),
  ...TO_WORK.split("|").map((base) => [base, nameOfWork(base)] as const),
]);

/** "gave the desk a good rub down": work told as a thing that is given. */
export const GIVEN_WORK: readonly string[] = phrases(`
  a a_good a_quick a_light a_proper a_final a_last a_second a_first another one_more a_wee a_thorough a_bit_of_a a_little
`).flatMap((what) =>
  phrases(`
    rub_down rubdown rub wipe_down wipe sand sanding light_sanding scrub clean cleaning polish buff scrape strip wash wax
    once_over going_over go_over coat hoover dust tidy_up touch_up tune_up spruce_up scrub_down
  `).map((work) => `${what} ${work}`),
);
