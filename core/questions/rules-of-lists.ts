import { MUCH, type Rule, SALES } from "./rule.ts";
import { cues } from "./words/cues.ts";

/** Pieces one by one, and groups that are counted. */
export const LIST_RULES: readonly Rule[] = [
  {
    // "Did we get anything from the auction in october"
    measure: "count",
    when: (f) =>
      f.yesNo &&
      f.has("got") &&
      f.source &&
      f.generic &&
      !f.limit &&
      !f.order &&
      !f.by &&
      !f.has("money", "earn", "net", "sold", "price", "paid", "revenue"),
    takes: ["got", "have"],
  },
  {
    // "The most common source", "the method most used by buyers"
    measure: "count",
    when: (f) => f.has("common") && !f.has("money", "earn", "net", "revenue", "spent"),
    takes: [...MUCH, ...SALES, "common", "bought", "got"],
  },
  {
    // "What percent of pieces came from yard sales", "what fraction of what i bought is sold"
    measure: "count",
    when: (f) =>
      f.has("share") &&
      (f.has("sold", "unsold", "bought", "kept", "given", "scrapped") ||
        ((f.generic || f.piece) && !f.has("money"))) &&
      !f.supply &&
      !f.stream &&
      !f.loan &&
      !f.has(
        "earn",
        "net",
        "revenue",
        "spent",
        "cost",
        "price",
        "paid",
        "fees",
        "miles",
        "minutes",
        "income",
      ) &&
      !f.has("asking", "firstAsked", "reached", "tiedUp", "interest", "sale", "soldFor", "hourly"),
    takes: [...MUCH, "share", "sold", "unsold", "bought", "got", "gone", "kept", "given", "scrapped"],
  },
  {
    // "What sold for its asking price", "anything sell over asking", "how many went under asking"
    measure: "count",
    when: (f) =>
      (f.has("fullPrice", "overAsking") || (f.has("comeDown") && f.has("sold", "soldFor"))) &&
      (f.lists || f.yesNo || f.has("howMany")) &&
      !f.average &&
      !f.order &&
      !f.by &&
      !f.has("earn", "net", "money"),
    takes: [...MUCH, ...SALES, "fullPrice", "overAsking", "comeDown", "got", "howMany"],
    list: true,
  },
  {
    // "What kinds have i sold", "which sources have i bought from", "which kinds do i have"
    measure: "count",
    when: (f) =>
      f.lists &&
      f.groups("kind", "source", "buyer", "place") &&
      f.has("sold", "bought", "have", "unsold", "listed") &&
      !f.order &&
      !f.by &&
      !f.limit &&
      !f.beside &&
      !f.has(
        "money",
        "total",
        "earn",
        "net",
        "revenue",
        "spent",
        "paid",
        "cost",
        "average",
        "howMany",
        "loss",
        "fared",
      ),
    takes: [...MUCH, "sold", "bought", "unsold", "listed", "got"],
  },
  {
    // "List my buyers", "show sources"
    measure: "count",
    when: (f) => f.commands && f.bare && f.groups("buyer", "source", "place") && !f.order && !f.piece,
    takes: ["list", "which", "listed"],
  },
  {
    // "Everything from the flea market", "what came from the church sale", "dad's pieces", "green things"
    measure: "count",
    when: (f) =>
      f.bare &&
      (f.source || f.person || (f.piece && f.generic && !f.number && !f.has("got"))) &&
      (f.has("got") || f.generic || (f.person && f.piece)) &&
      !f.supply &&
      !f.limit &&
      !f.by &&
      !f.order &&
      !f.beside &&
      !f.yesNo,
    takes: ["got", "list", "which", "listed"],
    list: true,
  },
  {
    // "How many months did i lose money", "how many weeks did i make over 200"
    measure: "profit",
    when: (f) => f.tally && (f.has("loss") || (f.limit && f.has("earn", "net"))) && !f.has("sold", "bought"),
    takes: ["howMany", "loss", "earn", "net", "money"],
    tally: true,
  },
  {
    measure: "spent",
    when: (f) => f.tally && f.limit && f.has("spent") && !f.has("sold", "bought", "earn"),
    takes: ["howMany", "spent"],
    tally: true,
  },
  {
    // "How many kinds have i sold", "how many different buyers bought something"
    measure: "count",
    when: (f) =>
      f.tally &&
      (!f.limit || f.unit("count")) &&
      (f.has("sold", "bought", "finished") ||
        (f.groups("buyer", "source", "kind", "place", "method") && (f.has("had") || f.plainCues))) &&
      !f.has("howLong", "takes", "daysToSell", "earn", "net", "spent", "paid"),
    takes: ["howMany", "sold", "bought", "finished", "got", "had", "have"],
    tally: true,
  },
  {
    // "Did i lose money on anything", "which pieces lost money"
    measure: "profit",
    when: (f) =>
      f.has("loss") &&
      !f.order &&
      !f.beside &&
      !f.has("howMany") &&
      ((f.lists && (f.generic || f.piece || f.has("sold", "soldFor", "gone"))) || (f.yesNo && f.generic)) &&
      !f.by,
    takes: cues("earn loss net gone kept given scrapped returned free bought finished", MUCH, SALES),
    list: true,
  },
  {
    measure: "minutes",
    when: (f) => f.lists && f.unit("minutes"),
    takes: ["which", "list", "minutes", "have", "takes", "took", "got", "cost", "loanPaid", "spent"],
    list: true,
  },
  {
    // "What sold within 7 days of listing"
    measure: "days listed",
    when: (f) => f.lists && f.unit("days") && f.has("sold") && f.has("listed", "daysListed"),
    takes: ["which", "list", "sold", "listed", "daysListed"],
    list: true,
  },
  {
    measure: "days to sell",
    when: (f) =>
      f.lists && f.unit("days") && f.has("sold", "takes", "took", "daysToSell") && !f.has("daysListed"),
    takes: ["which", "list", "sold", "takes", "took", "daysToSell", "sat", "unsold"],
    list: true,
  },
  {
    // "Anything listed more than 100 days"
    measure: "days listed",
    when: (f) =>
      f.lists && f.unit("days") && f.has("listed", "daysListed") && !f.has("sold", "takes", "took"),
    takes: ["which", "list", "listed", "daysListed", "have", "unsold", "sat"],
    list: true,
  },
  {
    measure: "days here",
    when: (f) =>
      f.lists &&
      f.unit("days") &&
      (f.has("unsold", "have", "had", "sat") || f.bare) &&
      !f.has("daysListed", "listed", "sold"),
    takes: ["which", "list", "unsold", "have", "had", "sat", "gone"],
    list: true,
  },
  {
    measure: "days here",
    when: (f) =>
      (f.longest || (f.average && f.has("howLong"))) &&
      !f.fast &&
      (f.has("had", "unsold", "unlisted") || f.oldest) &&
      (!f.has("sat") || f.has("unlisted")) &&
      !f.has("listed", "daysListed", "sold", "minutes"),
    takes: [...MUCH, "sat", "unlisted", "had", "unsold", "have", "howLong", "which"],
  },
  {
    // "Which pieces did i pay over 60 for", "bought for under 10"
    measure: "price",
    when: (f) =>
      f.lists &&
      f.limit &&
      (f.has("paid", "price", "purchases") ||
        (f.generic && f.has("bought")) ||
        (f.bare && f.generic && !f.unit("count", "minutes", "days", "miles") && !f.buyer)) &&
      !f.has("earn", "net", "soldFor", "sold", "loan") &&
      !f.supply,
    takes: ["which", "list", "listed", "paid", "price", "bought", "purchases", "got"],
    list: true,
  },
  {
    measure: "asking",
    when: (f) =>
      f.lists &&
      f.limit &&
      !f.unit("days") &&
      f.has("listed", "asking") &&
      !f.has("sold", "soldFor", "earn", "daysListed", "purchases", "spent"),
    takes: ["which", "list", "listed", "asking", "have", "unsold"],
    list: true,
  },
  {
    measure: "cost",
    when: (f) => f.lists && f.limit && f.has("cost") && !f.has("sold", "soldFor", "earn", "spent"),
    takes: ["which", "list", "cost", "have", "unsold"],
    list: true,
  },
  {
    measure: "profit",
    when: (f) => f.lists && f.limit && f.has("earn", "net") && (f.generic || f.piece) && !f.order && !f.by,
    takes: ["which", "list", "earn", "net", "got", "sold", "which", "money"],
    list: true,
  },
];
