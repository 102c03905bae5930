/**
 * A month of an invented flipper, as typed. Every note names its day, so that the figures never move. Worked out
 * by hand beside it, in cents:
 *
 *   #1 oak dresser: 40.00 + paint 12.50 + knobs 6 x 2.50 = 67.50; sold 165.00, fee 4.95: profit 92.55
 *   #2 nightstand: 12.00, sold 55.00: 43.00
 *   #3 desk: free + stain 9.99; sold 120.00, 10.00 given back: 100.01
 *   #4–#6 chairs: 100.00 = 33.34 33.33 33.33; spray paint 10.00 = 3.34 3.33 3.33
 *      #4, #5 sold together for 95.00 at equal list prices: 47.50 each: 10.82 and 10.84
 *      #6: deposit 20.00, 5.00 given back, 15.00 kept; unsold at 36.66: profit so far 15.00 - 36.66 = -21.66
 *   #7 mirror, #8 lamp: 25.00 = 12.50 12.50; mirror given away: -12.50; lamp sold 22.00: 9.50
 *   #9 trunk: 30.00, kept for home; #10 bench: 20.00, sold 45.00: 25.00
 *
 *   proceeds     55 + 165 + 95 + 120 + 22 + 45 = 502.00, + kept 15.00 - given back 10.00  = 507.00
 *   cost of sold 12 + 67.50 + (36.68 + 36.66) + 9.99 + 12.50 + 20                          = 195.33
 *   overhead     sander 59 + gas 18 + primer 17.49 = 94.49; fees 4.95; written off 12.50
 *   flip profit  507.00 - 195.33 - 4.95 - 94.49 - 12.50                                    = 199.73
 *   other income tips 20 + ads 33.40 = 53.40; tax 10% of 253.13 = 25.31 (25.313)
 *   for the loan 199.73 + 53.40 - 25.31 = 227.82; paid 150.00; due to the loan 77.82
 *   loan         12,000 at 5.5%, 28 days: 50.63 interest (also row L-10 of tests/published), principal 99.37
 *                11,900.63 left; two more days 3.58649 = 3.59; balance 11,904.22
 *   cash in      502 + deposit 20 + 53.40 = 575.40
 *   cash out     67.50 + 12 + 9.99 + 4.95 + 59 + 100 + 10 + 5 + 10 + 18 + 25 + 30 + 17.49 + 20 = 388.93
 */
export const octoberNotes: readonly string[] = [
  "loan 12000 at 5.5% 2026-10-01",
  "set aside 10% for tax 2026-10-01",
  "bought oak dresser 40 yard sale 2026-10-01",
  "paint 12.50 for dresser 2026-10-02",
  "knobs 6x2.50 for dresser 2026-10-02",
  "2.5h sanding dresser 2026-10-03",
  "finished dresser 2026-10-04",
  "listed dresser 190 2026-10-04",
  "bought nightstand 12 thrift store 2026-10-04",
  "free desk off the curb 2026-10-05",
  "stain 9.99 for desk 2026-10-06",
  "drove 24 miles 2026-10-06",
  "finished nightstand 2026-10-06",
  "listed nightstand 55 2026-10-06",
  "sold nightstand 55 cash 2026-10-08",
  "dropped dresser to 170 2026-10-09",
  "sold dresser 165 transfer fee 4.95 2026-10-11",
  "sander 59 2026-10-11",
  "picked up 3 chairs 100 estate sale 2026-10-12",
  "spray paint 10 for 3 chairs 2026-10-13",
  "finished 3 chairs 2026-10-14",
  "listed 3 chairs 150 2026-10-14",
  "sold 2 chairs 95 cash 2026-10-16",
  "deposit 20 on chair 2026-10-17",
  "finished desk 2026-10-18",
  "listed desk 120 2026-10-18",
  "buyer backed out of chair, refunded 5 2026-10-19",
  "sold desk 120 cash 2026-10-21",
  "tips 20 cash 2026-10-21",
  "ads 33.40 2026-10-22",
  "gas 18 2026-10-22",
  "refunded 10 on the desk 2026-10-23",
  "bought mirror and lamp 25 flea market 2026-10-23",
  "listed mirror 40 and lamp 22 2026-10-24",
  "sold lamp 22 2026-10-25",
  "donated mirror 2026-10-26",
  "bought trunk 30 2026-10-27",
  "primer 17.49 2026-10-27",
  "keeping the trunk 2026-10-28",
  "paid loan 150 2026-10-29",
  "45 min on chair 2026-10-30",
  "bought bench 20 2026-10-30",
  "sold bench 45 card 2026-10-31",
  "spent 15 on lunch 2026-10-31",
  "undo",
];

export const octoberEnd = "2026-10-31";

/** The figures of the month's end, worked out by hand above. */
export const octoberFigures = {
  profits: {
    1: "92.55",
    2: "43.00",
    3: "100.01",
    4: "10.82",
    5: "10.84",
    6: "-21.66",
    7: "-12.50",
    8: "9.50",
    9: "0.00",
    10: "25.00",
  },
  month: {
    month: "2026-10",
    flipped: 7,
    proceeds: "507.00",
    costOfSold: "195.33",
    fees: "4.95",
    overhead: "94.49",
    writtenOff: "12.50",
    flipProfit: "199.73",
    otherIncome: "53.40",
    taxSetAside: "25.31",
    forLoan: "227.82",
    paidToLoan: "150.00",
    cashIn: "575.40",
    cashOut: "388.93",
  },
  loan: {
    name: "loan",
    rate: "5.5",
    principal: "11900.63",
    accruedInterest: "3.59",
    balance: "11904.22",
    paid: "150.00",
    interestPaid: "50.63",
  },
  earmarked: "77.82",
  depositsHeld: "0.00",
  unsoldCost: "36.66",
} as const;
