import { wordSet } from "./words.ts";

/** Words by which a standing note gets another amount. */
export const CHANGED: ReadonlySet<string> = wordSet(`
  is is_now now goes_up_to went_up_to up_to goes_to goes went up down to was will_be will be change raise
  lower update increase bump make goes_down_to went_down_to are are_now costs raised lowered dropped
  increased drops drops_to rises_to set its dropped_to set_to
`);

/** Words beside a standing note that tell nothing of it. */
export const BESIDE_STANDING: ReadonlySet<string> = wordSet(`
  the my a payment payments note rent fee bill thing cost price our anymore any_more going_forward
  from_now_on automatic charge charges stop recurring repeating standing monthly weekly yearly recording
  logging counting paying please for on of any more now income money again one ones ok
`);

/** Words of setting up a standing note that are none of the note: "record … by itself", "storage is 60". */
export const SETTING_UP: ReadonlySet<string> = wordSet(`
  is are will_be costs runs runs_me record log note write put put_down enter add by_itself itself
  automatically automatic auto repeat repeating recurring please goes_out comes_in comes_out due due_on
  set_up its is_now always regularly remember keep_recording standing = :
`);

/** Days of a month in words; the 31st is the last of a shorter one. */
export const MONTH_DAYS: Readonly<Record<string, number>> = {
  last: 31,
  end: 31,
  first: 1,
  start: 1,
  beginning: 1,
  middle: 15,
  mid: 15,
};

/** Beside a loan and no payment: how much of it is left. */
export const BALANCE_SAID = wordSet("is was are now balance left owe owed stands");

export const PAYMENTS = wordSet("payment payments paying pay");
