/** Sorts of supplies by what belongs to them: "hardware" asks for knobs and hinges as well. */
export const SORTS_OF_SUPPLIES: Readonly<Record<string, ReadonlySet<string>>> = {
  hardware: new Set(
    "knob pull handle hinge bracket latch magnet lock key hook screw nail brad staple bolt nut washer caster castor wheel glide slide corner cleat hasp escutcheon".split(
      " ",
    ),
  ),
  fastener: new Set("screw nail brad staple bolt nut washer".split(" ")),
  fuel: new Set("gas gasoline petrol diesel".split(" ")),
  petrol: new Set("gas gasoline fuel".split(" ")),
  gasoline: new Set("gas petrol fuel".split(" ")),
  abrasive: new Set("sandpaper emery scotchbrite wool".split(" ")),
};
