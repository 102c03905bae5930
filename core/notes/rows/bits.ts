/** Which classes something is in, or asks for: one bit each, in four numbers of 32. */
export interface Bits {
  a: number;
  b: number;
  c: number;
  d: number;
}

/** So many classes have a bit. */
export const BITS_MAX = 128;

export const noBits = (): Bits => ({ a: 0, b: 0, c: 0, d: 0 });

export const NO_CLASSES: Readonly<Bits> = noBits();

/** The bits at some places. */
export function bitsOf(places: readonly number[]): Readonly<Bits> {
  if (places.length === 0) return NO_CLASSES;
  const parts = [0, 0, 0, 0] as [number, number, number, number];
  for (const place of places) parts[place >> 5]! |= 1 << (place & 31);
  const [a, b, c, d] = parts;
  return { a, b, c, d };
}

export function addBits(into: Bits, { a, b, c, d }: Bits): void {
  into.a |= a;
  into.b |= b;
  into.c |= c;
  into.d |= d;
}

/** Whether two have a class in common. */
export const meet = (one: Bits, other: Bits): boolean =>
  ((one.a & other.a) | (one.b & other.b) | (one.c & other.c) | (one.d & other.d)) !== 0;

/** The numbers themselves, in their order. */
export const partsOf = ({ a, b, c, d }: Bits): readonly number[] => [a, b, c, d];

/** How many numbers there are, and one of them. */
export const BIT_PARTS = 4;
export const partOf = ({ a, b, c, d }: Bits, part: number): number =>
  part === 0 ? a : part === 1 ? b : part === 2 ? c : d;

/** The place of the lowest bit that is set in a part. */
export const placeIn = (part: number, bits: number): number => part * 32 + 31 - Math.clz32(bits & -bits);
