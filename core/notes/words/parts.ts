import { wordSet } from "./words.ts";
/** What a piece is made of or dressed with: said of a piece, money for it is spending on that piece. */
export const PIECE_PARTS: ReadonlySet<string> = new Set(
  (
    "part parts drawer drawers bin bins basket baskets mat pad pads scarf switch switches backing base bases " +
    "organizer bottom bottoms top tops tabletop door doors leg legs foot feet arm arms armrest seat seats cover covers " +
    "slipcover rail rails hanger hangers shade shades harp finial runner runners slide slides glide glides track tracks " +
    "cushion cushions slat slats panel panels spindle spindles handle handles pull pulls knob knobs hinge hinges latch " +
    "latches lock locks key keys caster casters wheel wheels bracket brackets leaf leaves shelf shelves insert inserts " +
    "liner liners glass pane panes mirror hardware kit kits bulb bulbs cord cords plug plugs socket sockets wiring " +
    "upholstery fabric foam filling stuffing batting webbing strap straps spring springs molding moulding trim veneer " +
    "skirt skirting carcass carcase apron corner corners edging edge frame caning cane rush rung rungs stretcher stretchers riser risers " +
    "bolt bolts screw screws dowel dowels mount mounts mounting tip tips cap caps button buttons tassel tassels lid lids " +
    "divider dividers pegs peg catch catches rod rods topper mattress canopy headboard footboard pillow pillows"
  ).split(" "),
);

/** What is wrong with a piece, or a part of it. */
export const HURTS = wordSet(
  "cracked shot broken broke torn ripped chipped scratched warped trashed fried melted busted bust loose wobbly wobbles wobbled " +
    "wobbling rotten rotted rotting rusted rusty split peeling peeled bowed bent dented moldy mildewed smelled smells smelly " +
    "stinky stinks stunk squeaky squeaks squeaked stuck sticks stick sticking jammed jams jamming snapped missing cracking " +
    "splitting crooked uneven lopsided dead burned burnt frayed sagging sags sagged buckled delaminated gouged shattered " +
    "leaking leaks bubbling bubbled discolored yellowed blistered rattles rattled toast gross nasty ruined destroyed wrecked " +
    "worn_out worn faded water_damaged",
);

/** Marks of wear that a piece has. */
export const BLEMISHES = wordSet(
  "scratch scratches crack cracks dent dents chip chips gouge gouges ding dings nick nicks hole holes burn mold tear tears smell wobble " +
    "damage water_damage water_ring water_rings water_stain water_stains ring_marks scuff scuffs",
);

/** Words for things in general: bought "for the desk" they are spending on it. */
export const THINGS: ReadonlySet<string> = new Set(
  "stuff things thing something supplies bits odds ends parts pieces materials hardware replacements replacement whatnot goodies extras".split(
    " ",
  ),
);

/** What goes onto a piece, and tells it from no other. */
export const COATS: ReadonlySet<string> = wordSet("coat coats");

/** What is done of a piece before all of it is done. */
export const WORK_PARTS: ReadonlySet<string> = new Set(
  (
    "coat coats side sides half part parts section top tops bottom front back drawer drawers door doors leg legs shelf " +
    "shelves seat seats cushion cushions base arms inside outside edges corners trim sanding priming painting staining " +
    "stripping waxing sealing gluing cleaning prep repair repairs touchups patching upholstery wiring hardware layer round"
  ).split(" "),
);

/** What is done to a piece by somebody for money, in the forms that a note uses. */
export const SERVICES: ReadonlySet<string> = new Set(
  (
    "reupholster reupholstered reupholstering reupholstery upholster upholstered upholstering refinish refinished refinishing " +
    "repair repaired repairs repairing fix fixed fixing deliver delivered delivery delivering tow towed towing haul hauled " +
    "hauling move moved moving ship shipped shipping paint painted painting strip stripped stripping dip dipped sand sanded " +
    "sandblasted recovered recovering recane recaned caned recaning rewire rewired rewiring restore restored restoring clean cleaned cleaning reglue " +
    "reglued regluing weld welded welding cut resize resized appraise appraised appraisal appraising assemble assembled " +
    "assembly photograph photographed photos transport transported stained staining polished polishing powdercoated sprayed " +
    "treated fumigated reframed resilvered rekeyed"
  ).split(" "),
);

/** What a piece is called that goes into another. */
export const SPARES = wordSet("replacement spare");
