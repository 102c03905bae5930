const MONTH = "(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*";

/** Words that stand for one another in the ways of asking, each class as alternatives. */
export const CLASSES: Readonly<Record<string, string>> = {
  any: "\\S+",
  asks: "what|whats|how|hows|how much|how many|which|who|whos|when|whens|where|wheres|why|did|do|does|is|are|was|were|am|any|have|has|show|list|can|could|would|should|give|total",
  /** How a question that leaves nothing out begins. */
  opens:
    "is|are|has|have|did|was|were|what|which|how|who|when|where|why|do|does|any|anything|list|show|so|and|whats|wheres",
  /** What rows go by. */
  group:
    "kind|kinds|type|types|source|sources|buyer|buyers|customer|category|categories|month|months|week|weeks|day|quarter|year|person|people|stream|method|payment|place|piece|item|whatever|what|where|who|each",
  us: "i|we",
  kin: "(?:the |my )?(?:mom|dad|mommy|daddy|mama|papa|ma|pa|wife|husband|hubby|brother|sister|son|daughter|cousin|partner|girlfriend|boyfriend|roommate)",
  be: "is|are|was|were",
  them: "it|them|those|these|em",
  that: "it|that|they|those",
  /** One thing: no plural. */
  single: "[\\w#]*[^\\Ws]",
  month: MONTH,
  year: "20\\d\\d",
  unit: "week|month|quarter|year",
  number: "\\$?\\d+(?:[.,]\\d+)*",
  percent: "\\d+ ?(?:%|percent|pct)",
  piece: "#\\d+",
  digits: "\\d+",
  count: "\\d+|two|three|four|five",
  method: "cash|card|check|transfer|cheque|paper",
  /** A stretch of time begins here. */
  stretch: `(?:the )?(?:last|previous|prior)|${MONTH}|q[1-4]|20\\d\\d`,
  ahead:
    "ahead of|up on|up from|up over|up compared to|up against|above|beating|beat|topping|topped|outpacing|past",
  behind:
    "behind|below|down on|down from|down over|down compared to|trailing|short of|lagging|lagging behind",
  compares:
    "compare|compared|comparing|stack up|stacking up|measure up|hold up|shape up|shaping up|look compared|looking compared",
  against: "on|from|over|compared to|vs|versus|against",
  comes:
    "coming|come|comes|picking up|pick up|picks up|pick (?:it|them|stuff|something|anything) up|picking (?:stuff|something|anything|it|them) up|collecting|collect|stopping by|stop by|to collect|to come",
  repeats: "repeat|returning",
  buyers: "buyers|customers|clients",
  /** A plural. */
  many: "(?!this |was |is |does |has )\\w*[^\\Ws]s",
  asking: "(?:the |my |full )?(?:asking|list|asking price|list price|full price|asking prices|list prices)",
  all: "everything|it all|they all|all of it|all of them|it|they|that|all|every piece|the lot|the whole lot",
  goes: "go|goes|went|sell|sells|sold|move|moves|moved",
  bothering:
    "(?:fooling|fooling around|messing|messing around|bothering|fiddling|screwing around|dealing|wasting time) with|bothering|selling|flipping|checking|checking out|going to|going out to|hitting|hitting up|doing|driving to|stopping at|stopping by|visiting|shopping|picking through|digging through|the (?:bother|trouble|hassle|headache|time|drive) (?:of|with)",
  trouble:
    "it|(?:the|my|our|all the|all that) (?:bother|trouble|hassle|headache|headaches|time|effort|while|drive|drives|trip|trips|gas|work)",
  /** Pieces at a loss and at a gain, by a word. */
  losers:
    "losers|(?:losing|bad|money losing|money-losing) (?:ones|pieces|flips|sales|deals|buys)|money losers|flops|duds",
  winners:
    "winners|(?:winning|good|money making) (?:ones|pieces|flips|sales|deals|buys)|moneymakers|money makers",
  pieces:
    "pieces|ones|flips|things|stuff|sales|deals|items|furniture|everything|anything|dressers|chairs|tables|desks|lamps|nightstands|benches",
  /** A price is brought down. */
  cuts: "drop|dropped|lower|lowered|cut|reduce|reduced|knock|knocked|take|took|taken|mark|marked|slash|slashed|come|came|discount|discounted",
  /** Costs come down on somebody. */
  hits: "hit|dinged|stung|socked|slammed|smacked|saddled|stuck|slapped|nailed|whacked|clobbered|burned",
};
