import { phrases, wordSet } from "./words.ts";

/** Words that describe a piece. Any other unknown word before a known noun is a trait too. */
export const TRAITS: readonly string[] = phrases(`
  drop_side white black gray grey brown blue green red pink yellow orange purple teal navy cream ivory
  beige sage terracotta charcoal burgundy maroon lavender lilac mauve taupe emerald cobalt indigo blush periwinkle chartreuse ombre two_tone eggshell robin_egg robins_egg tan gold silver brass copper turquoise mint aqua dark light tall short small big large little tiny
  huge long wide narrow skinny low high mini round oval square rectangular oak pine maple walnut cherry
  mahogany birch poplar teak cedar rosewood wood wooden metal iron steel glass marble leather velvet vinyl
  wicker rattan cane caned bamboo laminate veneer mcm midcentury mid century modern antique vintage retro
  rustic farmhouse industrial victorian colonial french provincial danish deco primitive shabby chic
  painted stained unfinished raw solid matching tufted upholstered carved bow front left right single
  double twin queen king full childs kids outdoor swivel corner old new spindle slatted mirrored curved
  tiled striped floral plaid brick chrome plain plastic folding heavy
`);

/** What is counted on a piece and is no count of pieces: "3 drawer dresser", "6 foot table". */
export const PARTS: ReadonlySet<string> = wordSet(`
  drawer drawers drwr door doors shelf shelves tier tiers leg legs legged foot feet ft inch inches panel
  panels seat seater light way person arm pane cube step rung leaf poster year yr cushion bulb hook basket
  sided dr
`);

/** What people say of a piece that tells no two apart. */
export const OPINIONS: ReadonlySet<string> = wordSet(`
  cute stupid nice beautiful ugly lovely dang darn freaking freakin frickin awesome amazing gorgeous
  pretty cool great sweet good super really very dumb crazy perfect adorable cheap random whole entire
  same other last first poor lil ole beat beatup nasty gross another extra actual bad dirty dusty fun
  fabulous killer sick awful terrible hideous wonderful stinking rest
`);
