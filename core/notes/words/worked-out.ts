import { wordSet } from "./words.ts";

/* How the sum of a cost is worked out in its note. Amounts stand as $ in what these patterns look at, percents as %. */

/** What may stand between the numbers of one sum. */
export const BETWEEN_SUMS = wordSet(
  "plus tax taxes plus_tax sales and with w at each apiece ea per so total total_of totals totaling totalled comes come came comes_to came_to to is was were of for in all in_all altogether a an it they that thats them those makes making i we i_got got get bought had used my the dollar dollars bucks off coupon coupons discount minus less after before then but both paid before_tax comes_out_to came_out ended_up ended ended_up_paying on sale on_sale only just",
);
/** Marks between them. */
export const MARKS_OF_SUMS: ReadonlySet<string> = new Set([",", "-", "+", "=", "(", ":", "&"]);

/** Before what it comes to. */
export const COMES_TO =
  /(?:^| )(?:so|total|total of|totaling|to|comes to|came to|=|making|makes|paid|tax|taxes|coupon|coupons|discount|sale|for|in all|altogether|ended up paying|ended up)(?: (?:it|was|is|a|of|only|just|i|we|at|,|total|was|them|for|comes to))*$/;
/** Behind what it comes to. */
export const IN_ALL =
  /^(?:(?:,|in|a) )?(?:total|altogether|in all|all in|all told|all together|with tax|w tax|with the tax|after tax|after|after taxes|tax included|including tax|incl tax)(?: |$)/;

/** Words that say no more than that an amount is all of it: dropped behind it, up to one of the second. */
export const TRAILS = wordSet(
  "total totaled with w tax taxes sales included including incl inc after the my all in in_all all_in out door out_the_door even altogether counting coupon coupons discount a member discounts together told everything grand",
);
export const TRAIL_ENDS = wordSet(
  "total tax taxes included altogether all_in in_all even door out_the_door coupon coupons discount discounts together told",
);
/** "half off", "20 percent off" behind it, and before it. */
export const PERCENT_OFF_BEHIND =
  /^,? ?(?:with |at |after |for )?(?:a |the |my )?(?:%|half)(?: ?off| price| discount| coupon| sale)+(?= |$)/;
export const PERCENT_OFF_BEFORE =
  /(?:^| |,)(?:(?:was|were|it was|they were|got it|got them|they had) )?(?:a )?(?:%|half|half off|half price)(?: off| price| discount| sale| coupon)*(?: (?:so|,|for|at|-))*$/;

/** What is put on top of a price and belongs to it: "12 plus 1 in tax". */
export const TAX_ON_TOP =
  /^(?:dollar |dollars |bucks )?(?:in |of |for )?(?:the )?(?:sales )?(?:tax|taxes)(?= |$)/;
/** No tax on what is bought is higher. */
export const TAX_MAX = 0.13;

/** Words by which one number is taken off another. */
export const TAKES_OFF = wordSet("minus less off coupon coupons discount sale on_sale");

/** Before what it is to others, or was. */
export const PRICED = wordSet("regularly normally usually reg regular retail originally typically list");

/** What brings a price down, and how that is said behind it. */
export const OFF_NOUNS = wordSet("coupon coupons discount discounts");
export const OPENS_OFF = wordSet("with w after");
