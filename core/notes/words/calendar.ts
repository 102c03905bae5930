import { inOrder } from "./words.ts";

/** Weekday words to 0 (Sunday) … 6. */
export const WEEKDAYS = inOrder(`
  sunday=sun=sunda monday=mon=mondy tuesday=tue=tues=tusday=tuesdy wednesday=wed=weds=wensday=wednsday
  thursday=thu=thur=thurs=thrusday friday=fri=firday saturday=sat=saterday=satuday=saturdy
`);
/** Month words to 1 … 12. "may", "mar", "march" are months only beside a day or after "in", "of", "for". */
export const MONTHS = inOrder(
  `
    january=jan february=feb=febuary march=mar april=apr may june=jun july=jul august=aug september=sept=sep
    october=oct november=nov december=dec
  `,
  1,
);
/** Ordinals in words: "the third". */
export const ORDINALS: Readonly<Record<string, number>> = {
  ...inOrder(
    `
      first second third fourth fifth sixth seventh eighth ninth tenth eleventh twelfth thirteenth fourteenth
      fifteenth sixteenth seventeenth eighteenth nineteenth twentieth
    `,
    1,
  ),
  thirtieth: 30,
};
