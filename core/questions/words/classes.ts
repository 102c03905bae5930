/** Words that stand for one another in the ways of asking, each class as alternatives. */
export const CLASSES: Readonly<Record<string, string>> = {
  asks: "what|whats|how|hows|how much|how many|which|who|whos|when|whens|where|wheres|why|did|do|does|is|are|was|were|am|any|have|has|show|list|can|could|would|should|give|total",
  us: "i|we",
  be: "is|are|was|were",
  them: "it|them|those|these|em|that|they",
  their: "the|my|our",
  month: "(?:jan|feb|mar|apr|may|jun|jul|aug|sept?|oct|nov|dec)[a-z]*",
  unit: "week|month|quarter|year",
  number: "\\$?\\d+(?:[.,]\\d+)*",
  method: "cash|card|check|transfer|cheque|paper",
  deed: "buy|bought|sell|sold|get|got|list|listed|finish|finished|find|found|pick up|picked up|bring home|take|took",
};
