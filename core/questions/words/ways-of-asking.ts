import type { WayRow } from "../plainer.ts";
import { OF_BOOKKEEPING } from "./ways/bookkeeping.ts";
import { OF_CHATTER } from "./ways/chatter.ts";
import { OF_COUNTS } from "./ways/counts.ts";
import { OF_DEEDS } from "./ways/deeds.ts";
import { OF_FIGURES } from "./ways/figures.ts";
import { OF_LISTS } from "./ways/lists.ts";
import { OF_LOANS } from "./ways/loans.ts";
import { OF_PRICE_CUTS } from "./ways/price-cuts.ts";
import { OF_PRICES } from "./ways/prices.ts";
import { OF_SIDES } from "./ways/sides.ts";
import { OF_SUMS } from "./ways/sums.ts";
import { OF_TIMES } from "./ways/times.ts";
import { OF_WORK } from "./ways/work.ts";
import { OF_WORTH } from "./ways/worth.ts";
import { OF_WRAPPINGS } from "./ways/wrappings.ts";

/** Ways to ask that say the same as plainer ones: they are put so before any word is looked up, one after the other. */
export const WAYS_OF_ASKING: readonly WayRow[] = [
  ...OF_COUNTS,
  ...OF_WRAPPINGS,
  ...OF_CHATTER,
  ...OF_WORTH,
  ...OF_PRICE_CUTS,
  ...OF_PRICES,
  ...OF_SUMS,
  ...OF_FIGURES,
  ...OF_DEEDS,
  ...OF_LOANS,
  ...OF_TIMES,
  ...OF_LISTS,
  ...OF_SIDES,
  ...OF_WORK,
  ...OF_BOOKKEEPING,
];
