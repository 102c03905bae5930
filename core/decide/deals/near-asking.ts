import type { Cents } from "../../money.ts";

/** What came of a piece lies in this part of what is asked for it; of less, or of more, it is rather something else. */
export const NEAR_LEAST = 0.5;
const NEAR_MOST = 1.25;

/** Whether a price, in cents, is one that may have come of what is asked or was agreed on, in cents. */
export const isNearAsking = (price: Cents, asked: Cents): boolean =>
  price >= asked * NEAR_LEAST && price <= asked * NEAR_MOST;
