import { phrases } from "./ways.ts";

/*
 * Phrases that ask a whole question by themselves: they say both what is measured and what rows go by.
 */

/** Spending, by its category. */
export const MONEY_GOES = phrases(`
  where does my money go, where did my money go, where is my money going, where does the money go,
  where did the money go, wheres my money going, wheres the money going, where all the money went,
  where my money goes, what do i spend on, what do i spend my money on, what eats my money
`);

/** What came in, by buyer. */
export const BUYERS_PAID = phrases(`
  each buyer paid, each buyer pay, each buyer spent, each buyer has paid, each customer paid, every buyer paid,
  each buyer brought in, who paid me, who all paid me, who has paid me, whos paid me, who all has paid me,
  who paid me what, who paid what, who paid me how much, who paid how much
`);
