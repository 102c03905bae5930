/** The parts of the job whose figures can be checked from outside, in the order in which the report names them. */
export const PARTS = [
  "one price over several pieces",
  "deposits",
  "a piece's profit and the month",
  "double entry of the export",
  "daily interest",
  "interest before principal",
  "unpaid interest carried",
  "a payment over several loans",
  "changes of a loan's terms",
  "payoff estimate",
  "tax set aside",
  "self-employment tax",
  "days when estimated tax is due",
  "miles",
  "rounding",
  "days and time zones",
  "refunds, returns and what is given away",
  "goals and pace",
  "corrections and undo",
] as const;

export type Part = (typeof PARTS)[number];
