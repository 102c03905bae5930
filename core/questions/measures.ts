import type { Measure } from "./measure.ts";
import { NOTE_MEASURES } from "./measures-of-notes.ts";
import { PIECE_MEASURES } from "./measures-of-pieces.ts";
import type { MeasureName } from "./query.ts";

/** One entry for each thing that can be measured. */
export const measures: Readonly<Record<MeasureName, Measure>> = { ...PIECE_MEASURES, ...NOTE_MEASURES };
