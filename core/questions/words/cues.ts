import { phrases, ways } from "./ways.ts";
import { BUYERS_PAID, MONEY_GOES } from "./whole.ts";

/** What has not been done to a piece, or not yet, but for the deed. */
const NOT_YET = [
  "|that|which|but|and|i|we|that i|that we|still|thats|it",
  "hasnt|havent|has not|have not|hasnt been|havent been|never|never got|never been|not been|aint been",
] as const;
const HAVENT_I = "havent i|havent we|have i not|have we not|have i never";

/** It made a loss. */
const WENT_UNDER = [
  ...["flopped", "tanked", "bombed", "went south", "belly up"],
  ...ways("at|for", "a loss"),
];

/** Lists of phrases by their names, put together when they are first asked for: a start does not wait for thousands. */
const lists = <Name extends string>(make: () => Record<Name, readonly string[]>) => make;

/**
 * What the words of a question point at. A cue is no measure yet: "sold" may be counted, asked the day of or only
 * narrow what is asked; `measures.ts` says which measure which cues make.
 */
export const cuesSaid = lists(() => ({
  traded: ["traded", "trade", "trades", "swapped", "swap", "swaps", "traded in", "traded away", "bartered"],
  /** What came out of it. */
  earn: [
    "spread on",
    "the spread on",
    "over cost",
    "above cost",
    ...WENT_UNDER,
    ...phrases(`
      pocket, pocketing, dollar margin, margin in dollars, better off, better off am i for,
      better off am i from, better off for, pays off better, pay off better, pays off best, pays better,
      pays off the best, pays out better, mke, profit or loss, profit and loss, p and l, pnl, loss, losses,
      lost, lose, losing, my take, our take, my cut, take from, made, make, makes, making, earn, earns, earned,
      earning, earnings, profit, profits, profited, profitable, profitability, gain, gains, gained, cleared,
      pocketed, come out ahead, came out ahead, come out, came out, make money, made money, making money,
      money made, earned money, profit wise, earner, earners, moneymaker, moneymakers, money maker,
      money makers, return, winnings, net profit on, turn a profit, turned a profit, net on, clear, clearing,
      takehome on, upside, ahead, flip profit, flipping profit, pay off, pays off, paying off, been paying,
      been paying off, pay for itself, pay for themselves, worth it to me, returns on, return on, banked, bank,
      banking, gives me, in my pocket, into my pocket
    `),
  ],
  /** The same, said of a stretch of time. */
  net: [
    ...ways("|how", "deep", "in the hole|in the red"),
    ...ways(
      "after|net of|less|minus",
      "overhead|the overhead|all costs|all expenses|my expenses|everything i spent",
    ),
    ...phrases(`
      in the hole, in the green, underwater, under water, nets, netting, final number, final figure,
      final tally, net, bottom line, net profit, netted, take home, takehome, come out with, net income,
      net result, net earnings, in the black, in the red, result, results, after expenses, after costs,
      after everything, total profit, break even, broke even, breaking even, breakeven, end up making,
      we end up with, i end up with, we ended up with, i ended up with, we wound up with, i wound up with,
      my take home, our take home, how far ahead, take home pay, left over after costs,
      left over after expenses, left after costs, left after expenses, left over after everything,
      left after everything, did i end up with, did we end up with, do i end up with, come away with,
      came away with, walk away with, walked away with, walk off with in, were we left with, i was left with,
      i left with
    `),
  ],
  /** "How did the lamps do". */
  fared: [
    ...ways("where did|whered|how did|howd", "i|we", "end up|land|finish up|wind up|close out|come out"),
    ...ways("how did|howd", "that", "go|look|turn out|work out"),
    ...ways("where|how", "do i|do we|am i|are we", "stand|at|sitting"),
    ...ways("where", "i|we|things", "stand|are at"),
    ...phrases(`
      treat me, treat us, treats me, been good to me, treating me, treated me, been treating me, coming along,
      coming, did i do ok on, did i do okay on, did i do good on, did i do well on, did i do alright on,
      did we do ok on, do ok on, did i do better, did we do better, did i do worse, did we do worse,
      how bad did i do on, how bad did we do on, how badly did i do on, how bad did i do, how badly did i do,
      how well did i do on, how well did i do, how did i do, how did we do, howd i do, howd we do, did i do on,
      did we do on, do on, did i do with, made out on, make out on, did i make out on, hows it going,
      how is it going, hows it looking, how does it look, how did it go, it going, hows business,
      how is business, hows things, how are things, doing, do, done, go, went, going, fare, fared, looking,
      look, looks, perform, performed, performing, turn out, turned out, work out, worked out, pan out,
      panned out, shaping up, shake out, shook out, shakes out, any good, bad month, a bad month, how bad,
      how good, how strong, how slow, what kind of month was, what sort of month was, stack up, stacked up
    `),
  ],
  /** What came in for pieces. */
  revenue: [
    ...phrases(`
      gross receipts, total receipts, cash receipts, sales receipts, receipts from sales, receipts from selling,
      hand me, hands me, handed us, handed over, has handed over, collected, collect, sales wise, paid me,
      pay me, pays me, handed me, bring, brings, brought in, bring in, brings in, bringing in, revenue,
      revenues, took in, take in, taken in, taking in, takings, grossed, gross, grossing, proceeds, turnover,
      came in, come in, comes in, coming in, pulled in, pull in, raked in, rake in, rung up, rang up, ring up,
      sales total, total sales, sales money, sale money, sales revenue, sales income, sales proceeds,
      sales volume, sales amount, sales figure, sales figures, dollars in sales, money in sales,
      money from sales, worth of sales, in sales, gross sales, intake, money in from, sell through money,
      dollar volume, given me, gave me, handed over to me, paid us, given us, sales like, sales look like,
      sales been like
    `),
    ...BUYERS_PAID,
    ...phrases(`
      brought, brought more, brings more, people pay me, people paid me, people have paid me, buyers pay me,
      buyers paid me, received, receive, money received, gives us, give us
    `),
  ],
  /** What one piece was sold for. */
  soldFor: [
    ...ways("|the", "going rate|going price", "|for|of|on"),
    ...phrases(`
      has brought, has it brought, brought me, sold for, sell for, sells for, selling for, went for, go for,
      goes for, going for, fetched, fetch, fetches, got for, get for, getting for, gotten for, sale price,
      sale prices, selling price, selling prices, sold price, sold at, sell at, price sold, final price,
      flipped for, flip for, paid me for, pay me for, buyer paid, buyers paid, buyers pay, fetching,
      brought me in, highest selling, lowest selling, top selling price
    `),
  ],
  sale: ["sale", "sales", "deals", "transactions", "transaction"],
  sold: phrases(`
    percent sold, percent i sold, percentage sold, bought from me, buy from me, buys from me, bought off me,
    busiest, sell the most of, sold the most of, sell most of, sold, sell, selling, sells, flipped, flip, flips,
    flipping, gone to buyers, went to buyers, gone to a buyer, went to a buyer, unloaded, unload, moved,
    found a buyer, found buyers, found a home, got rid of, sold off, sell off, seller, sellers, out the door,
    went out the door, sold already, changed hands, seling, made a sale, make a sale, made any sales,
    had a sale, made my last sale, total sold, anyone buy, anybody buy, someone buy, somebody buy,
    anyone bought, anybody bought, someone bought, somebody bought, get rid of, getting rid of, flew out,
    flew out the door, flew off, flew off the board, flew, move
  `),
  gone: phrases(`
    leave, leaves, went out the door, go out the door, walk out the door, out the door, left the house,
    leave the garage, leave the house, go, went, goes, gone, left the garage, left the shop, no longer here,
    out of here
  `),
  took: phrases(`
    ended up with, end up with, took, takes, take home, walked off with, has it now, got it in the end, took it,
    went to, account for, accounted for
  `),
  bought: phrases(`
    scoop up, scooped up, snag, nab, nabbed, buy the most of, bought the most of, came home, come home,
    came into the shop, come in the door, came in the door, brought back home, taken home, bought, buy, buying,
    buys, purchased, purchase, purchases, purchasing, picked up, pick up, picking up, pickups, acquired,
    acquire, brought home, bring home, hauled home, snagged, scored, grabbed, took home, acquisitions,
    acquisition, finds, find, buys made, haul, hauls, came home with, buyin, newest piece, latest piece,
    newest find, newest purchase
  `),
  purchases: ["purchases", "purchase", "buys", "acquisitions"],
  got: ["got", "get", "gets", "gotten", "found", "came from", "come from", "comes from"],
  /** What pieces were bought for. */
  price: phrases(`
    spent getting, spend getting, getting furniture, getting pieces, when i got them, when i bought them,
    when i got it, when i bought it, when we got it, when we bought it, price wise, price, prices,
    purchase price, purchase prices, buying price, buying prices, buy price, price paid, bought for, buy for,
    purchased for, got it for, picked up for, paid up front, initial cost, original cost, purchase cost,
    purchase costs, buying cost, buying costs, cost to buy, cost to get, acquisition cost, acquisition costs,
    spent on buying, spend on buying, spent buying, spend buying, spending on buying, money into purchases,
    money into buying, money on purchases, money on buying, put into buying, went into buying, went to buying,
    spent on purchases, spend on purchases, spent on purchase, spent on pieces, spend on pieces,
    spent on furniture, spend on furniture, spent on inventory, spend on inventory, spent on stock,
    spend on stock, spending on pieces, spending on furniture, spending on purchases, money on furniture,
    money on pieces, money into pieces, money into furniture, put into furniture, furniture purchases,
    furniture buying, piece purchases, purchase total, purchases total, total purchases, buying total,
    entry price, sourcing cost, sourcing costs, paid for pieces, paid for furniture, shelled out for,
    handed over for, forked over for, cough up for, coughed up for, outlay on pieces, outlay on furniture,
    laid out for, lay out for, plunked down for, gave for, give for, shell out for, shelling out for,
    fork out for, forked out for, fork over for, hand over for, plunk down for, pony up for, ponied up for,
    pay out for, paid out for, paying out for
  `),
  paid: phrases(`
    paid for, pay for, paying for, paid, pay, pays, paying, payed, payment, payments
  `),
  /** All that went into a piece. */
  cost: [
    ...ways("|have i|have we|do i have|i have|ive", "got into"),
    ...ways(
      "purchase|purchase price|the purchase|the purchase price|buying it|materials|supplies|paint|the price",
      "and all|and everything|and all that",
    ),
    ...phrases(`
      out of pocket, out of pocket on, out of my pocket, out of pocket for, everything in on, price and all,
      all in on, standing me, standing me at, stand at, stands at, standing at, put into, running me, ran me,
      run me, runs me, setting me back, sets me back, deep, how deep in, how deep into, deep into, cash in,
      cash into, cost, costs, costed, costing, cost basis, all told, all in cost, all in, total cost, full cost,
      sunk in, sunk into, sank into, sink into, sunk, ive got in, have i got in, i have in, do i have in,
      got in, have in, invested in, invested, investment in, investment, money into, whats in, what is in,
      is in, into it, stand me, stands me, stand me at, set me back, sitting in, buried in, tied into, im into,
      am i into, im in for, in deep, basis, set us back, damage on, the damage on, it cost me in,
      it costs me in, it costing me in, it cost us in, in for on, am i in for, am i in for on, into it for,
      total in on, in on, price plus materials, price and materials, purchase plus materials,
      price plus supplies, price plus spending, sink, sank, in it, cost wise
    `),
  ],
  spent: [
    ...ways("left|leave|leaves", "my|our", "pocket|wallet|purse|account"),
    ...ways("went|gone|going|goes|go", "out the door"),
    ...phrases(`
      burned, burnt, filled up, fill up, fill ups, fillup, filled up on, fill up on, filled the tank, tanked up,
      went through, spending wise, spended, spent, spend, spends, spending, spendings, bill, bills, expense,
      expenses, expenditure, expenditures, outlay, outlays, went on, gone on, going on, went into, go into,
      gone into, went to, goes to, going into, blown on, blew on, blew, blow, blown, laid out, lay out,
      shelled out, shell out, forked out, fork out, dropped on, drop on, burned on, burned through, burn,
      cough up, coughed up, put toward supplies, costs for, outgoings, out of pocket, paid out, pay out,
      went out, money out, money going out, used up, sunk on, gone toward, dropped, spnt, expensed, receipts,
      fixing up, fix up, fixing, to fix, to fix up, fixing it up, doing up, to do up, refinishing, restoring,
      redoing, going to fix
    `),
    ...MONEY_GOES,
    ...phrases(`
      used on, used for, used in, put out for, outlaid, go through on, went through on, drop at, dropped at,
      blew at, ate, eaten, eats, eat, ate up, eaten up, eating, eating up, swallowed, use
    `),
  ],
  /** Leaves the purchase out: what `spent` does anyway. */
  withBuying: [
    ...ways(
      "including|incl|counting|with|plus",
      "|the|my",
      "furniture|pieces|purchases|buys|buying|buying furniture|buying pieces|furniture purchases|what i bought|inventory|stock",
      "|included|counted|in",
    ),
    ...ways("furniture|pieces|purchases|buying|buys|inventory", "included|counted"),
  ],
  withoutBuying: [
    ...ways(
      "not|no|without|minus|excluding|except|except for|besides|other than|aside from|apart from",
      "furniture|the furniture|buying furniture|buying pieces|purchases|furniture purchases|piece purchases",
    ),
    ...phrases(`
      leaving out what i paid for it, leaving out what i paid for them, leaving out what i paid,
      leaving out the price, leaving out the purchase, leaving out the purchase price, leaving out buying it,
      leave out what i paid for it, leave out what i paid, leave out the price, minus what i paid for it,
      minus what i paid, without what i paid for it, without what i paid, not buying them, not buying it,
      not buying em, not the buying, not on buying, not to buy, besides the purchase price,
      on top of the purchase price, not counting the purchase price, without the purchase price,
      minus the purchase price, excluding the purchase price, after the purchase price, after the purchase,
      after buying, after purchase, since buying it, on top of the purchase, on top of the price,
      on top of what i paid, besides the price, besides the purchase, beyond the price,
      beyond the purchase price, without buying, not counting the price, not counting the purchase,
      not counting purchases, without the purchase, without the price, apart from the price,
      apart from the purchase price, other than the price, other than the purchase price, minus the purchase,
      excluding the purchase, excluding the price, on top, other than buying it, not counting buying it,
      besides what i paid for it, not counting what i paid, not counting what i paid for it, after i bought,
      beyond buying it, besides pieces, apart from pieces, other than pieces, not counting furniture,
      not counting pieces, excluding pieces, except pieces, other than buying them, apart from buying them,
      besides buying
    `),
  ],
  fees: phrases(`
    selling and booth fees, booth and selling fees, sale and booth fees, fees, fee, sale fees, sale fee,
    selling fees, selling fee, platform fees, platform fee, site fees, listing fees, listing fee, seller fees,
    transaction fees, commission, commissions, platform and sale fees, sale and platform fees,
    selling and platform fees, fees and commissions, platform cut, platforms cut, taken by the platform,
    platforms taken, platform taken, platforms took, taken in fees
  `),
  miles: phrases(`
    miles on the truck, miles on the van, miles on the car, miles on my truck, miles on my van, how far, miles,
    mileage, mile, mi, drove, driven, drive, driving, drives, distance, on the road, on the odometer,
    road miles, odometer, milage, put on the truck, put on the van, put on the car, truck miles, car miles,
    van miles, trips
  `),
  minutes: phrases(`
    clock, time wise, how much time, hours, hour, hrs, minutes, mins, minute, time, labor, labour, work, worked,
    working, time spent, man hours, manhours, work time, working time, labor time, labor hours, work hours,
    hours worked, time logged, hours logged, minutes logged, bench time, time in, hours in, put in, time put in,
    clocked, hours put in, workbench time, logged, work sessions, sessions
  `),
  income: [
    ...phrases(`
      ancillary income, auxiliary income, secondary income, sundry income, supplementary income,
      supplemental income, misc income, non sales income, non sale income, non flipping income, passive income
    `),
    ...ways(
      "|income|money|earnings",
      "other than|besides|aside from|apart from|outside of|outside|not from",
      "flipping|flips|furniture|selling furniture|the flips",
    ),
    ...phrases(`
      side jobs, gigs, other income, extra income, side money, extra money, other money, non flip income,
      income, incomes, additional income, on the side, side hustle money, side earnings, outside income,
      other earnings, extra earnings, other streams, streams
    `),
  ],
  everything: phrases(`
    tips too, tips included, including tips, plus tips, tips and all, all in all, other income too,
    other income included, with workshops, workshops included, and everything, n everything, with tips,
    with tips and ads, and all that, with all my income, with the ads, with tips and all, with ads and all,
    in all, with everything, everything in, with other income, including other income, with the other income,
    all income, with extra income, including side income, with ads, with ads and tips, counting ads,
    including ads, counting everything, everything together, all streams, with side income,
    counting other income, plus other income, plus ads
  `),
  loanPaid: phrases(`
    kick in, chip in, throwing, hit, hitting, chuck, chucking, put, puts, putting, throw, add, paid to the loan,
    sent to the loan, put on the loan, put toward the loan, put towards the loan, put to the loan,
    paid on the loan, paid off, paid down, pay down, pay off, paid back, pay back, loan payments, loan payment,
    put on, put toward, put towards, put against, sent, send, sending, thrown at, threw at, throw at, gone to,
    went toward, went towards, gone toward, gone towards, gone against, repaid, repayments, repayment,
    knocked off, chipped off, debt payments, debt payment, payments made, paid toward, paid towards,
    paid against, paid into, poured into, shoveled at, transferred, threw, chucked, tossed at, adding
  `),
  loan: ["loan", "loans", "debt", "debts", "lender", "lenders", "loan company"],
  interest: phrases(`
    interest charged, interest ive been charged, interest i was charged, interest ive paid,
    interest theyve charged, save in interest, save on interest, saves in interest, saved in interest, interest,
    intrest, interest paid, finance charge, finance charges, interest part, interest portion
  `),
  /** What a piece was first listed at. */
  firstAsked: [
    ...ways(
      "|listed for|listed at|up for|up at",
      "the first time|first time around|to begin with|to start with|initially|the first go",
    ),
    ...phrases(`
      originally, list for originally, at first, listed for at first, listed at at first, first price,
      first prices, first listed at, first listed for, listed first at, originally listed at,
      originally listed for, first asking price, original asking price, original asking, original list price,
      first list price, starting price, start out at, started out at, originally asking, first ask,
      original price
    `),
  ],
  /** What a loan costs a year. */
  rate: phrases(`
    rate, rates, interest rate, interest rates, apr, what percent, percent rate, yearly rate, rate of interest
  `),
  /** What is earned for the loan and not sent yet. */
  ready: phrases(`
    due to the loan, due to the loans, due for the loan, ready for the loan, ready for the loans,
    ready to go to the loan, earmarked, earmarked for the loan, set aside for the loan,
    should i send to the loan, should i send the loan, can i send to the loan, could i send to the loan,
    should i put on the loan, can i put on the loan, do i send to the loan, to send to the loan, should i send,
    sent ahead, send ahead, paid ahead, pay ahead, ahead on the loan, ahead on the loans, behind on the loan,
    behind on the loans, to earn back, waiting for the loan
  `),
  payoff: phrases(`
    history, toast, out of my life, out of my hair, off my back, off my plate, behind me, done for,
    done and dusted, kaput, off the books, die, dies, dead, killed, killed off, paid off, debt free,
    clear of debt, out of debt, rid of, rid of the loan, done paying, done with the loan, done with it,
    free of it, free of debt, payoff, payoff date, pay it off, pay off, pay them off, be free, gone for good,
    loan free, all paid, kill, kill off, wiped out, wipe out, knock out, finish off, zero out, get rid of,
    done with, be done with, finished paying, finish paying, be done, out from under, paid in full, over with,
    last payment, final payment, finish line
  `),
  ends: ["clear", "gone", "done", "zero", "free", "cleared", "finished", "over", "end", "ends"],
  pace: [
    ...ways(
      "|if i|if we|i|we|just",
      "keep going|keep it going|keep on|keep paying|carry on|stay on",
      "|like this|like that|at this rate|at this pace|this way|the way i am",
    ),
    ...phrases(`
      at this pace, at this rate, at my pace, at the pace, at the current pace, at my current pace,
      if i keep this up, keep this up, at this speed, at the rate im going, the way its going, the way im going,
      like this, at current pace, at the current rate, keep it up, pace
    `),
  ],
  suppose: phrases(`
    does what, do what, what changes, what difference does it make, does it help, would it help, what if, if,
    suppose, supposing, say i, lets say, assuming, were to, imagine, what happens if, what would happen if,
    bumped, bump, upped, raise, raised, doubled up, double up
  `),
  extra: phrases(`
    more, extra, additional, another, on top, over and above, added, more each, further
  `),
  saves: phrases(`
    save, saves, saved, saving, savings, shave off, shaves off, cut, spare me, save in interest,
    save on interest
  `),
  once: ["one time", "lump sum", "lump", "once", "today only", "in one go", "right away", "at once", "now"],
  until: ["until", "till", "til"],
  take: phrases(`
    needed, need to pay, do i need, need, would it take, will it take, does it take, should i pay, must i pay,
    have to pay, required, do i have to pay, have to send, need to send
  `),
  advice: [
    "too high",
    "too high for",
    ...ways("too", "low|cheap|little", "|for"),
    ...phrases(`
      too steep, too steep for, too pricey, too pricey for, too expensive, value of, worth it, worth paying,
      worth, good deal, a deal, deal, good price, fair price, fair, too much, overpriced, steal, should i buy,
      should i get, should i pay, should i take, should i offer, would you pay, would you buy, can i pay,
      could i pay, what should i pay, how much should i pay, what to pay, what can i pay, most i should pay,
      pay at most, max i should pay, highest i should pay, should i spend, should i go, good buy, worth buying,
      worth grabbing, i should pay, okay to pay, ok to pay, top dollar for, max to pay, max for, most to pay,
      reasonable, how much can i pay, bother with, grab, guy wants, lady wants, he wants, she wants, they want,
      seller wants, someone wants, somebody wants, theyre asking, they are asking, hes asking, shes asking,
      guy is asking, seller is asking
    `),
  ],
  askFor: phrases(`
    priced right, priced ok, priced okay, priced well, priced fairly, priced about right, priced correctly,
    would you ask for, would you ask, what would you ask for, would you list, would you charge for,
    should i ask, should i ask for, what should i ask for, should i price, should i charge, what to ask for,
    what to ask, to ask for, what price for, should i list it for, should i list it at, good asking price,
    right price for, what to charge for, what should i sell, should i sell, what could i get for,
    what can i get for, could i get for, can i get for, should i want for, what would i get for,
    what price should i put on, price should i put on, price should i ask, should i put on, list price for,
    could i ask for, could i ask, can i ask for, can i ask, could i list, could i charge, could i sell,
    should i put, should i want, should i sell it for
  `),
  todo: [
    ...phrases(`urgent, most urgent, pressing, most pressing, overdue, falling behind, slipping, on fire`),
    ...ways(
      "what|which ones|which|what all|which pieces",
      "can|could|might|do i need to|do i have to|must|shall",
      "i|we",
      "list|post|put up",
      "|next|now|right now|today|first",
    ),
    ...ways(
      "what|which ones|which|what all|which pieces",
      "do i|do we",
      "need to|have to|still need to|still have to|got to",
      "list|post|put up|finish|start|work on",
      "|next|now|right now|today|first|still",
    ),
    ...ways(
      "could use|needs|need|due for|ready for|deserves|deserve|wants|calls for|would benefit from|in need of",
      "|a|its",
      "price drop|price cut|markdown|lower price|repricing|price reduction|price change",
    ),
    ...ways(
      "needs|need|should|ought|has|have|want|wants",
      "to",
      "come down in price|drop in price|be marked down|get cheaper|be cheaper|be repriced|be reduced|be dropped in price",
    ),
    ...ways(
      "worth",
      "finishing|fixing|fixing up|working on|listing|starting|doing|doing next|working on next|finishing first|finishing next|starting on",
    ),
    ...ways(
      "|whats the|wheres the|where is the",
      "quickest|fastest|easiest",
      "money|cash|buck|dollar|payoff now",
    ),
    ...phrases(`
      plan, todays plan, plan for today, plan today, drop price on, to drop price on, to drop the price on,
      fix up first, should i fix, should i fix up first, fix first, should i fix next, should i fix first,
      what to list, what to list next, what to fix, what to fix next, do first, tackle first, start with,
      need attention, need my attention, need some attention, needs some attention, needs love, need love,
      need some love, closest to being done, closest to done, closest to finished, closest to being finished,
      closest to being ready, closest to ready, nearest to done, nearest to being done, nearest to finished,
      nearest to ready, almost done, nearly done, tomorrow, waiting on me, waiting for me, on my plate,
      price cut, price cuts, a price cut, marked down, marking down, next, what should i do, what to do,
      should i do, what next, what should i do next, should i do next, to do, todo, to dos, needs doing,
      need doing, need to do, should i work on, work on next, should i tackle, tackle next,
      what should i tackle, should i list next, should i list, list next, should i finish, should i finish next,
      finish next, price drop, price drops, needs a drop, needs finishing, need finishing, needs work,
      need work, needs working on, need working on, needs to be finished, need to be finished, needs to be done,
      need to be done, needs to get done, mark down, needs my attention, needs attention, priorities, priority,
      prioritize, should i start, should i start next, start next, should i drop, should i lower,
      should i mark down, needs marking down, do next, focus on, plan for, game plan, get to,
      best use of my time, should i get to, what now, do i work on, to work on, can i work on, could i work on,
      do i need to do, do i tackle, do i finish next, do i start next, do i finish, do i start,
      should i drop the price, should i drop the price on, drop the price on, should i lower the price,
      should i lower the price on, should i reduce, should i cut the price on, should i come down on,
      should i discount
    `),
  ],
  recap: phrases(`
    in short, in a nutshell, in brief, short version, in review, review, recap, recaps, summary, rundown,
    wrap up, wrapup, monthly summary, month summary, overview, monthly recap, month recap, weekly recap,
    run down
  `),
  tax: [
    ...ways("|the", "mileage deduction|deduction|deductions|write off|write offs|writeoff|writeoffs"),
    ...ways("can|could|do|will|may", "i|we", "deduct|write off|claim", "|for"),
    ...phrases(`
      deduct, tax, taxes, irs, self employment, self employment tax, tax estimate, estimated tax,
      estimated taxes, tax time, tax bill, tax money, set aside for tax, set aside for taxes, put aside for tax,
      put aside for taxes, put away for tax, put away for taxes, for taxes, for tax, for the tax man,
      for the taxman, tax man, taxman, do i set aside, need to set aside, have i set aside, did i set aside,
      to set aside, i set aside, should i put aside, do i put aside, do i owe the government, set aside rate
    `),
  ],
  goal: phrases(`
    close to, anywhere near, near my goal, behind on my goal, behind my goal, behind on the goal,
    ahead of my goal, ahead of the goal, how far behind, to hit my goal, to reach my goal, short of my goal,
    away from my goal, to meet my goal, goal, goals, on track, on pace, target, targets, how close, how far off,
    ahead or behind, progress, pacing, hit my goal, reach my goal, make my goal, to go, from my goal,
    to my goal, to the goal, to goal, making my goal
  `),
  help: phrases(`
    help, commands, menu, instructions, what can you do, what can i say, how do i use, what can i ask, halp
  `),
  /** What is not worked out, ratios and the cash in hand: no measure takes it, so that it is refused by name. */
  unasked: phrases(`
    say about, said about, says about, think of, thinks of, thought of, best spent, money best spent,
    daily interest, interest a day, interest per day, interest each day, minimum wage, labor cost, labor costs,
    cost of labor, labour cost, time of day, what time of day, what time, what time did, stand to make,
    stand to gain, sell through, sell through rate, sellthrough, money do i have left, money have i got left,
    cash do i have left, money left, cash left, both, double the, twice the, triple the, half the, half my,
    half of, markup, mark up, too long, too much time, going up,
    going down, growing, improving, trending, increasing, getting better, getting worse, cash flow
  `),
  /** So much of a whole. */
  share: [
    "percent sold",
    "percent unsold",
    "percent i sold",
    "percentage sold",
    ..."share percent percentage fraction part portion proportion pct chunk slice"
      .split(" ")
      .flatMap((word) => [
        `${word} of`,
        `what ${word}`,
        `what ${word} of`,
        `which ${word} of`,
        `how many ${word} of`,
        `how big a ${word} of`,
        `how much ${word} of`,
      ]),
    "% of",
    "what % of",
    "how many percent",
  ],
  /** What went back to buyers. */
  refunds: phrases(`
    refunds, refunded, money back, gave back, given back, paid back to buyers, returned money, refund,
    refunding, give back, gave them back, had to give back, had to refund, returned to buyers
  `),
  depositsKept: [
    ...ways(
      "keep|kept|get to keep|got to keep|hang on to",
      "any|the|a|some|that",
      "deposit|deposits|deposit money",
    ),
    ...phrases(`
      kept deposits, deposits kept, deposits i kept, deposits we kept, forfeited deposits, deposits forfeited,
      deposits i got to keep, deposit money i kept, kept from deposits, deposits i hung on to,
      deposits i held onto after
    `),
  ],
  /** What is done so and so often is counted, not summed. */
  times: ["how many times", "how often", "how many time", "number of times", "times"],
  principal: ["principal"],
  /** "The most common": how many is put in order. */
  common: phrases(`
    most common, most popular, most used, most frequent, commonest, most often used, least common
  `),
  /** Listed for less than before. */
  /** "What have i had the desk listed at", told as one by one. */
  pricesHad: ["prices asked over time for"],
  beforeDrop: ["asked before the drop"],
  priceCut: phrases(`
    price drops, price reductions, get a price cut, got a price cut, had a price cut, price cut, price cuts,
    get marked down, got marked down, been marked down, marked down, get reduced, been reduced,
    come down in price, drop in price, dropped in price, drop the price on, dropped the price on,
    lower the price on, lowered the price on, lower the price, drop the price, cut the price on, mark down,
    a price drop, get a price drop, price drop
  `),
  howMany: phrases(`
    mny, many, buy the most of, bought the most of, sell the most of, sold the most of, sell most of,
    total pieces, pieces total, pieces in total, total flips, total sold, total bought, total number, number,
    how many, count, number of, num of, tally, total count, head count, headcount, quantity, howmany, nr of,
    no of, amount of pieces, how many times, piece count
  `),
  finished: phrases(`
    fixed, done, finished, finish, finishing, completed, complete, completing, got done, wrapped up, refinished,
    done with, finished up, finishes, fixed up
  `),
  /** Started and not finished. */
  inProgress: phrases(`
    started but never finished, started and never finished, started but never got finished, in progress,
    being worked on, underway, under way, on the bench, mid project, half finished, work in progress,
    working on now, am i working on, are we working on, currently working on, i am working on, im working on,
    in the works, working on right now, half done, on the go, whats in progress, what is in progress,
    whats in the works, started but not finished, started and not finished, started but havent finished,
    started but not yet finished, started but unfinished
  `),
  unfinished: [
    ...ways(
      "left|still|yet|still left|remaining",
      "to",
      "fix|fix up|finish|refinish|redo|work on|do up|complete",
    ),
    ...ways(
      "need|needs|has|have|ought|still need|still needs|got",
      "to be|to get",
      "finished|fixed|fixed up|done|refinished|completed",
    ),
    ...ways(...NOT_YET, "finished|completed|fixed|fixed up|refinished", "|yet"),
    ...ways(HAVENT_I, "finished|completed|fixed", "|yet"),
    ...ways("waiting|still waiting|left|yet", "to be", "finished|fixed|fixed up|completed|refinished"),
    ...phrases(`
      not fixed, never done, unfinished, incomplete, not finished, not done, arent finished, isnt finished,
      arent done, isnt done, not yet finished, still unfinished, that arent finished, that isnt finished,
      that arent done, that isnt done, i didnt finish, but not finished, but not done, and not finished
    `),
  ],
  started: ["been touched", "touched", "started", "start", "starting", "began", "begin", "begun"],
  listed: phrases(`
    go up, went up, gone up, goes up, listed, list, listing, listings, posted, post, posting, put up,
    advertised, up for sale, for sale, put up for sale, on the market, put on the market, on sale, online now,
    live, active listings, active, currently up, out there
  `),
  unsold: [
    ...phrases(`
      holding onto, holding on to, hanging on to, hanging onto, stuck with, sitting on, still sitting on,
      lying around, laying around, hanging around, knocking about, kicking about, kicking around,
      knocking around, on my hands, on our hands, gathering dust, collecting dust, taking up space
    `),
    ...ways(
      "|that|which|but|and|still|and still|but still|that still",
      "isnt|arent|aint",
      "sold|gone|moved",
      "|yet",
    ),
    ...ways("and still|but still|that still", "hasnt|havent", "sold|gone|moved", "|yet"),
    ...ways(...NOT_YET, "sold|moved|found a buyer", "|yet"),
    ...ways("that|which|but|and", "didnt|did not|wont|doesnt", "sell|move"),
    ...ways(HAVENT_I, "sold|moved|flipped", "|yet"),
    ...phrases(`
      percent unsold, didnt i sell, did i not sell, did we not sell, waiting to be sold, waiting for a buyer,
      waiting on a buyer, unsold, left, still have, still got, on hand, in stock, inventory, stock, remaining,
      remain, in the garage, in my garage, garage, not sold, didnt sell, did not sell, not yet sold, still here,
      sitting around, still around, left over, leftover, left to sell, to sell, in the shop, waiting to sell,
      still own, sitting here, not gone, yet to sell, still sitting, sitting in the garage, in the barn,
      in the workshop, in the queue, nobody has bought, nobody bought, no one has bought, no one bought,
      no one has taken, nobody has taken, nobody took, nobody wanted, nobody wants, without a buyer,
      with no buyer, have no buyer, has no buyer, no buyer yet, no takers, no buyers, didnt get sold, lft,
      still there, still got left, but not sold, and not sold, that i have left, i have left, that are left,
      i own now, whats in the shop, what is in the shop, whats in the garage, whats in my garage,
      what is in the garage, whats in my shop, whats in stock, what is in stock, whats in the barn,
      still holding, still holding on to, still holding onto
    `),
  ],
  tiedUp: phrases(`
    sitting in, unsold value, inventory value, stock value, inventory worth at cost, stock worth at cost,
    worth at cost, cash locked up, cash locked, cash parked, cash sunk, cash stuck, money locked up,
    money locked, money parked, dollars locked up, dollars tied up, cash locked up in, cash tied up in,
    money tied up in, money locked up in, tied up, tied up in, tied, locked up, locked in, locked up in,
    sitting in the garage money, sunk in inventory, sunk in stock, parked in, stuck in, garage total,
    inventory cost, inventory value at cost, stock at cost, inventory at cost, money sitting in, money sitting,
    money in the garage, cash tied up, capital tied up, money tied up, money stuck, money waiting in,
    is sitting, am i sitting on, sitting on, dollars sitting, cash sitting, inventory worth, stock worth,
    unsold pieces worth, value at cost, value of what im holding at cost, value of what i have at cost,
    value of my stock at cost, value of my inventory, value of my stock, value of the inventory,
    worth of my inventory
  `),
  asking: [
    ...phrases(`
      list value, total list value, asking value, value at list, value at list price, value at asking,
      retail value, list total, listing total, total list, total listings, listed total
    `),
    ...ways(
      "if",
      "all|all of|every one of",
      "the|my",
      "listings|listed pieces|listed stuff|listed ones",
      "sell|sold|go|went",
    ),
    "what if everything sold at asking",
    ...ways(
      "what",
      "would|will",
      "it all|everything|all of it|they all",
      "bring|bring in|fetch|sell for|go for|make",
      "at list|at asking|at list price|at asking price|at the asking price|at full price",
    ),
    ...phrases(`
      total asking, if it all sells, if everything sells, if they all sell, if all of it sells, asking,
      asking price, asking prices, list price, list prices, listed at, listed for, posted at, posted for,
      ask for, ask, asked, priced at, priced, sticker price, sticker prices, listing price, listing prices,
      listed price, listed value, asking total, tagged at, up for, price tag, price tags, sum of listings,
      listed at all together, listings add up to, listings come to, listings total, listings worth,
      listings amount to, if everything sold at list, if everything sells at list, if it all sold at list,
      if it all sells at list, if everything sold at asking, if it all sold at asking,
      if everything sold at list price, if i sold everything at list price, if i sold everything at list,
      if it all went at list, if everything listed sold at asking, if everything listed sold at list,
      if everything listed sold, if i sold everything at asking, if i sold it all at asking,
      if i sold them all at asking, if i sold it all at list, if i sold all of it at asking
    `),
  ],
  agreed: [
    ...["agreed price", "price agreed", "price we agreed on", "price agreed on", "agreed"],
    ...["agree on", "agreed on", "agree to", "agreed to", "agree to pay", "agreed to pay", "agree to for"],
    ...["held at", "hold at", "on hold at", "held for how much", "settle on", "settled on"],
  ],
  deposits: [
    ...ways("deposits|deposit money", "in hand|on hand"),
    ...ways(
      "|of",
      "other peoples|somebody elses|someone elses|buyers|customers|peoples",
      "deposit money|deposits|money i hold",
    ),
    ...phrases(`
      whose money, whose cash, do i owe anyone a deposit, do i owe anybody a deposit, i owe a deposit,
      owe anyone a deposit, owe anybody a deposit, owe someone a deposit, owe a deposit, deposit, deposits,
      down payment, down payments, money down, earnest money, put down, deposit money, holding money,
      downpayment, downpayments, prepaid, buyers money, buyer money, that isnt mine yet, that isnt mine
    `),
  ],
  /** Whether there ever was one. */
  hadDeposit: ["have a deposit on it", "had a deposit on it", "ever have a deposit", "ever had a deposit"],
  held: [
    ...ways("someone|somebody|anyone|anybody", "holding|hold"),
    ...phrases(`
      taken, on hold, held, hold, holds, reserved, spoken for, holding, put aside, set aside, promised,
      saved for, reserve, earmarked for buyers, waiting for pickup, awaiting pickup, pending
    `),
  ],
  unlisted: [
    ...ways(
      "need|needs|has|have|ought|still need|still needs|got|still has|still have",
      "to be|to get",
      "listed|posted|put up|up for sale",
    ),
    ...ways("need|needs|still needs|still need", "a listing|listing|posting|putting up"),
    ...ways(...NOT_YET, "listed|posted|advertised|put up|put up for sale|gone up", "|yet"),
    ...ways(HAVENT_I, "listed|posted|put up", "|yet"),
    ...ways("waiting|still waiting|ready|left|yet", "to go up|to be put up|to be listed|to be posted"),
    ...phrases(`
      without being listed, without listing it, without having been listed, not up, but not up,
      finished but not up, done but not up, but not listed, but not posted, unlisted, not listed, not posted,
      finished but not listed, finished not listed, done but not listed, done not listed, ready to list,
      nobody posted, nobody listed, left to list, to list, not for sale yet, not up for sale, isnt listed,
      isnt posted, arent listed, without a listing, isnt up, arent up, waiting on a listing, not advertised,
      unposted, sitting unlisted, waiting for a listing, forgot to list, not yet listed, not yet posted,
      that isnt listed, that arent listed, that isnt up, that arent up, isnt up for sale, arent up for sale,
      should be listed, should get listed, should be posted, ready to post
    `),
  ],
  /** Nothing done to it yet. */
  unstarted: [
    ...ways("need|needs|has|have|ought|still need|still needs|got", "to be|to get", "started|worked on"),
    ...ways(...NOT_YET, "started|touched|begun|worked on", "|yet"),
    ...ways(HAVENT_I, "started|touched|begun|worked on", "|yet"),
    ...ways("waiting|still waiting|left|yet", "to be", "started|worked on|touched"),
    ...phrases(`
      unstarted, not started, not yet started, arent started, isnt started, that arent started,
      that isnt started, not begun, untouched, not touched yet, yet to start, still to start, left to start,
      not worked on, but not started, and not started
    `),
  ],
  /** Bought for one price with others. */
  together: ["set of", "pair of", "lot of"],
  owed: [
    "tab",
    "on their tab",
    "on his tab",
    "on her tab",
    ...ways(
      "|money",
      "coming to me|coming my way|coming in from buyers|owed to us|to collect|still to collect|im owed",
    ),
    ...phrases(`
      into me for, owe me, owes, owed to me, owed by buyers, buyers owe, owing, owed, outstanding from buyers,
      unpaid by buyers, havent paid me, hasnt paid me, still to pay me, ious, outstanding, who hasnt paid,
      who still hasnt paid, who has not paid, still has to pay, still have to pay
    `),
  ],
  owe: phrases(`
    owe on, owe, left on, left to pay, remaining on, balance, loan balance, balance on, payoff amount, to go on,
    still open on, balances, loan balances, balances on, total debt, in debt, still outstanding on
  `),
  daysToSell: [
    ...ways("take|takes|took|taking", "long|a long time|forever|ages|a while", "to sell|to move|to go"),
    ...ways(
      "before|until|till|til",
      "things|stuff|pieces|a piece|something|one|chairs|dressers|they|it",
      "sell|sells|move|moves|go|goes",
    ),
    ...ways("how long|how many days", "before|until|till|to", "sale|a sale|the sale"),
    ...ways(
      "how many days|how long|the days|days|the time",
      "to sell|to move|to flip|to get sold|to sell one|to sell them",
    ),
    ...phrases(`
      til it sold, til they sold, til it was sold, til sold, till it sold, till they sold, till it was sold,
      till sold, until it sold, until they sold, until it was sold, until sold, it takes me to flip,
      it takes to flip, time it takes, it takes to sell, it takes to sell one, it takes to sell a piece,
      it takes me to sell, it takes to sell something, takes longer, take longer, took longer,
      days between buying and selling, between buying and selling, before it sold, before they sold,
      before it was sold, faster than, slower than, sell faster than, sell slower than, faster, slower, quicker,
      sell faster, sell quicker, sell slower, sells faster, sells quicker, move faster, moves faster, go faster,
      take to sell, takes to sell, took to sell, taken to sell, time to sell, days from buying to sold,
      days from buy to sale, days from bought to sold, buy to sell, buying to sold, buying to selling,
      bought to sold, buy to sale, buying to sale, purchase to sale, turnaround, turn around, turnaround time,
      take to flip, takes to flip, took to flip, time to flip, to turn over, days until sold, days till sold,
      days before they sell, days before selling, to move, sitting time, days in the garage before selling,
      holding time, hold time, days held, days on hand, days i keep, before selling, from buying to selling,
      sell through time, days from purchase to sale, days from buying to sale, takes longer to sell,
      take longer to sell, took longer to sell, longer to sell, sells slower, take me to sell, takes me to sell,
      took me to sell, take us to sell, usually take me to sell, usually take to sell, take to go, takes to go,
      took to go, usually take to go, to get sold, take to get sold
    `),
  ],
  takes: ["take", "takes", "took", "taken"],
  /** Two deeds between which days are asked for. */
  lapse: ways(
    "bought-to-started|bought-to-finished|bought-to-listed|bought-to-sold|started-to-finished|started-to-listed|started-to-sold|finished-to-listed|finished-to-sold|listed-to-sold",
  ),
  daysListed: phrases(`
    time on market, days between listing and selling, days from listing to selling, days from listing to sale,
    between listing and selling, between listing and sale, from listing to selling, from listing to sale,
    listing to sale, listing to selling, days listed, sat listed, been listed, been up, on the market for,
    days on the market, days on market, time on the market, listed longest, days up, listing age, been for sale,
    been posted, been on the market, spend listed, stay listed, stays listed, stayed listed, sit listed,
    listing time, days posted, time listed
  `),
  sat: phrases(`
    hang around, hangs around, stick around, sticks around, linger, lingers, lie around, lies around,
    sit around, sits around, been sitting, sat, sit, sits, sitting, sat around, lingered, hung around,
    collecting dust, gathering dust
  `),
  /** Profit over the sale price. */
  margin: [
    ...ways("|profit|net|my|percent|percentage", "margin|margins"),
    ...ways("margin|profit", "percent|percentage"),
  ],
  /** Profit over the cost. */
  roi: [
    "roi",
    ...ways("|percent|percentage|rate of", "return on investment"),
    ...ways("|percent|percentage", "return on", "|my", "money|cost|costs"),
    "percent return",
    "rate of return",
    "percentage return",
  ],
  hourly: phrases(`
    per hour of work, hourly, per hour, an hour, by the hour, wage, wages, hourly rate, hourly wage, hour rate,
    profit per hour, per hour worked, time worth, every hour, hourly profit, for an hour of work, hourly pay,
    pay rate, profit an hour, per hr, an hr, each hour of work, worth my time, worth the time
  `),
  reached: [
    ...ways(
      "what|how much|how many|which",
      "percent|percentage|share|pct|part",
      "of list|of asking|of the list price|of the asking price|of my asking price|of my list price|of list price|of asking price|of what i ask|of what i asked|of what i list for",
    ),
    ...phrases(`
      percent of list price, percent of the list price, percent of my list price, percent of asking price,
      percent of the asking price, percentage of asking, percentage of list, percentage of list price,
      share of asking price, share of my asking price, how close to asking, how close to list,
      percent of asking, percent of list, share of asking, share of list, share of the list price,
      of the list price, of list price, of asking, of the asking price, of asking price, of my asking price,
      of my list price, of what i ask, of what i asked, sale to list, sold to list, list to sale, sale vs list,
      reached, reach, of list, of first list price, of the first list price, of my first price, of first asking,
      of the first price, of the first asking price, of first asking price, of my first asking price
    `),
  ],
  /** Sold for no less than what was first asked, and for more. */
  fullPrice: phrases(`
    full price, full asking price, full asking, full list price, full list, what i asked, what i was asking,
    what i wanted for it, what i listed it at, what it was listed at, what it was listed for
  `),
  overAsking: phrases(`
    over asking, above asking, over the asking price, above the asking price, over asking price, over list,
    above list, over list price, above list price, more than asking, more than i asked, more than i was asking,
    more than the asking price, more than list price, more than the list price
  `),
  /** All but what is named on the other side. */
  rest: phrases(`
    other spending, other expenses, everything else, all else, rest, others, anything else, everyone else,
    other pieces, all other sources, everywhere else, all other kinds, everybody else
  `),
  /** What somebody would give for a piece of ours. */
  offered: phrases(`
    guy offered, guy offers, lady offered, lady offers, someone offered, someone offers, somebody offered,
    somebody offers, buyer offered, buyer offers, he offered, he offers, she offered, she offers,
    got an offer of, got offered, take it, take that, should i take it, an offer of, the offer, should i take,
    do i take, accept, accepting, offered, offers, is offering, take an offer of, let it go for,
    let them go for, how low can i go, how low should i go, how low do i go, how low to go, lowest i can go,
    lowest i should go, lowest i should take, least i should take, lowest to take, lowest offer to take
  `),
  comeDown: [
    ...ways("how much off", "did|do|does"),
    "how far down",
    "how much off list",
    "how much off asking",
    "how much lower",
    ...ways(
      "people|buyers|folks|customers|they",
      "talk me|haggle me|beat me|knock me|bargain me|talk us",
      "down",
    ),
    ...ways(
      "|get|got|getting|gets",
      "talk me|talked me|talk us|haggle me|haggled me|beat me|knock me|bargain me|talking me|haggling me|talked|haggled|bargained|knocked|beaten|beat",
      "down",
    ),
    ...ways(
      "less than|lower than",
      "asking|i asked|i was asking|list|list price|i listed it for|i listed it at|the asking price|the list price|i wanted|my asking price",
    ),
    ...phrases(`
      markdown, markdowns, haggle, haggling, knock off, knocked off of, under list, under list price,
      below list price, under the list, below the list, percent off, knocked off the list price,
      knocked off the asking price, knocked off list, knocked off asking, knock off the list price,
      knock off the asking price, knock off the price, knocked off the price, take off the price,
      take off the asking price, taken off the price, off the price, how far under asking, how far below asking,
      how far off asking, how far under list, how far below list, how far off list, how much under asking,
      how much below asking, how far do i come down, how far below the list price, how far under the list price,
      off the first price, from the first price, from asking, below the asking price, under the asking price,
      come down, came down, coming down, give up on price, drop from list, discount, discounts, below asking,
      below list, under asking, off the list price, off list, off asking, off the asking price, negotiated down
    `),
  ],
  average: [
    ...ways("|the", "going rate|going price", "|for|of|on"),
    ...phrases(`
      averaging, averages out to, average out to, average, avg, averaged, averages, mean, on average, typical,
      typically, usual, usually, per piece, normally, generally, avrage, averge, as a rule, a piece, apiece,
      each time, per flip, per sale, a pop
    `),
  ],
  median: ["median", "middle", "in the middle"],
  total: phrases(`
    asking total, listings total, total asking, total, totals, sum, in total, total up, add up, added up,
    grand total, all together, altogether, combined, together, totaled, totalled, tot, ttl, sum total,
    overall total, summed, totalling, running total, running totals, tally up, tallied up, tot up
  `),
  when: phrases(`
    whend, since when, when, what day, which day, what date, which date, date, day, what was the date, date of,
    day of, on what day, on which day, on what date, whens
  `),
  where: phrases(`
    whered, where was, where did, where is, where, wheres, origin, origin of, source of, where from, from where,
    what place, which place, came from where, provenance, which source did, what source did, from which source
  `),
  who: phrases(`
    whodve, who has, who got, whos, who, whod, who did, to whom, whom, who was
  `),
  buyerName: phrases(`
    buyer of, buyer for, name of the buyer, name of buyer, whos the buyer, the buyer of, purchaser of,
    buyers name, buyer name, new owner of, who owns, buyer
  `),
  whose: ["whose money", "whose cash", "whose"],
  /** Days are counted, and nothing else. */
  inDays: ["how many days", "number of days"],
  /** Of no single piece. */
  overhead: phrases(`
    overhead, overheads, shop cost, shop costs, running costs, fixed costs, shop expenses, operating costs,
    operating expenses, operating cost, running expenses
  `),
  /** What came out of it is below nothing. */
  loss: [
    ...WENT_UNDER,
    "lose",
    "losing",
    "lost",
    ...ways("lost|lose|losing|loses", "|me|us", "money"),
    ...ways("lost|lose|losing|loses", "me|us"),
    "loss",
    "losses",
    "in the red",
  ],
  howLong: phrases(`
    how long til, how long till, how long until, how long before, how long, how many days, how long ago,
    number of days, days, how much time, how long does, days since, how old, age of, since when, how quick,
    how quickly, how fast, how old is, how old are, how soon
  `),
  which: ["which", "which one", "which ones", "whichever"],
  /** All that there is to tell of a piece. */
  story: phrases(`
    timeline, timeline for, whats with, the deal with, whats the deal with, full story, full story on,
    rundown on, rundown of, the skinny on, everything you have on, everything on, everything there is on,
    everything i have on, story, history of, tell me about, info on, info, everything about, details,
    details on, update on, whats up with, do i know about, the story on, the whole story on, the lowdown on,
    run me through, fill me in on, whats going on with, whats happening with, what is going on with,
    what is happening with
  `),
  whatStatus: phrases(`
    status, status of, state of, where are we with, how far along, happened to, happened with, became of,
    become of, what happened to, what became of, whatever happened to, hows the story on
  `),
  list: phrases(`
    show, show me, list out, display, see, view, pull up, give me a list of, list of, lists of, bring up,
    look up, print, enumerate
  `),
  notes: phrases(`
    write down, jot down, happen, happens, did i write, did i enter, i wrote, notes, notes did i make,
    notes did i write, notes have i made, note, entries, entry, recorded, record, logged, noted, wrote down,
    entered, log, things i did, messages, typed in, jotted, put in the books, what happened, happened, activity
  `),
  did: phrases(`
    did i do, i did, have i done, did we do, ive done, i been up to, have i been up to, got done, was done,
    did i get done, did i get up to
  `),
  last: phrases(`
    last time, most recently, last, latest, newest, most recent, recent, past, previous, newest piece,
    latest piece, newest find, newest purchase
  `),
  first: ["first time", "the first time", "first", "earliest"],
  chart: phrases(`
    chart, graph, picture, plot, bar chart, line chart, draw, pie chart, diagram, in a chart, in a graph,
    visualize
  `),
  lent: ["lent", "lend", "lending", "loaned out", "borrowed", "borrow", "is borrowing"],
  kept: phrases(`
    keep for myself, keeping for myself, kept, keep, keeping, kept for myself, kept for ourselves, keepers,
    keeper
  `),
  given: phrases(`
    given away, gave away, donated, donate, gifted, give away, gave, giveaways, donations, giving away,
    donating, gift
  `),
  scrapped: phrases(`
    trash, toss, junk, throw out, throw away, threw away, thrown away, dump, scrapped, trashed, tossed,
    thrown out, threw out, junked, dumped, scrap, scrapping, written off, tossing, chuck out, chucked out,
    binned
  `),
  returned: phrases(`
    returned, came back, come back, returns, sent back, brought back, refunded, refund, refunds, give back,
    gave back, given back
  `),
  free: phrases(`
    zero for, paid zero for, pay zero for, free, for free, get for free, got for free, get for nothing,
    got for nothing, get free, got free, for nothing, freebies, freebie, gratis, cost nothing, cost me nothing,
    costs nothing, costs me nothing, paid nothing for, pay nothing for, didnt cost anything,
    didnt cost me anything, came free, came for free, come free
  `),
  have: phrases(`
    do i have, have i got, i have, ive got, are there, have, own, got left, have left, do i still have
  `),
  /** Nothing is owed on it any more. */
  paidUp: ["been paid for", "paid up", "all paid up", "fully paid", "fully paid for", "in full"],
  /** How long ago something was done the last time. */
  ageOf: phrases(`
    days since, how many days since, how long since, how long ago did, how long ago was, how long ago,
    how long has it been since, been since, how long is it since, time since
  `),
  /** In what ways buyers pay. */
  payWays: phrases(`
    how do people usually pay, how do people pay, how do buyers pay, how do buyers usually pay,
    how do most buyers pay, how do most people pay, how do customers pay, how do they usually pay,
    most common payment method, most common way to pay, most popular payment method, how am i getting paid,
    how do i get paid, how do i usually get paid
  `),
  howPaid: [
    ...ways(
      "how did",
      "people|he|she|they|the buyer|buyers|the buyers|everybody|everyone",
      "pay",
      "|for it|me|for them",
    ),
    ...phrases(`
      how do people pay, how do buyers pay, how they pay, how was it paid, paid how, how paid,
      how did i get paid, method of payment, payment method, how did i pay, paid by what, how it was paid,
      how was i paid, how they paid, what kind of payment
    `),
  ],
  had: phrases(`
    around here, had, have i had, ive had, owned, been here, in my possession, been in the garage, sitting here,
    had it, around, been around, held onto, days old, weeks old, months old, how old, how old is, how old are,
    here
  `),
  money: phrases(`
    for how much, for what, how many money, how many dollars, how many bucks, how mush, worth it, money,
    cash money, dollars, bucks, usd, how much, how much money, amount, what amount, total amount, hows much,
    howmuch, figure, figures, numbers, dough, moolah, in dollars, much, ammount, mch, moneywise, money wise,
    dollar wise, dollars wise, in dollars and cents
  `),
  /** Buyers who still come for what they hold. */
  pickups: ["pickups", "pickup"],
  /** Listed for longer than it should be. */
  tooLong: phrases(`
    too long, sitting too long, been up too long, been listed too long, up too long, listed too long,
    for too long, gathering dust, collecting dust, not moving, not selling, isnt moving, isnt selling,
    arent moving, arent selling, wont sell, wont move, going stale, stale
  `),
}));

export type Cue = keyof ReturnType<typeof cuesSaid>;

type Words<Said extends string, Before = never> = Said extends `${infer One} ${infer Others}`
  ? Words<Others, Before | One>
  : Before | Said;

/** Cues by their names, blanks between; with those of other lists before them. */
export const cues = <Said extends string>(
  said: Words<Said> extends Cue ? Said : never,
  ...others: readonly (readonly Cue[])[]
): readonly Cue[] => [...others.flat(), ...(said.split(" ") as Cue[])];
