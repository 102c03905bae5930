import type { Hazard } from "./hazard.ts";
import { MATERIAL_HAZARDS } from "./hazards/materials.ts";
import { PIECE_HAZARDS } from "./hazards/pieces.ts";
import { TRADE_HAZARDS } from "./hazards/trade.ts";
import { WORK_HAZARDS } from "./hazards/work.ts";

/** Every hazard, worst first: where several are due, the first is said. */
export const HAZARDS: readonly Hazard[] = [
  ...PIECE_HAZARDS,
  ...WORK_HAZARDS,
  ...MATERIAL_HAZARDS,
  ...TRADE_HAZARDS,
].sort((a, b) => a.weight - b.weight);
