/* How people speak to a bot that writes down what they say. */

import { wordSet } from "./words.ts";

/** Before an order to note something. */
export const BEFORE_ORDER = wordSet("so ok okay hey hi yeah yep yes and well oh now alright also , .");

/** The first word of such an order. */
export const OPENS_ORDER = wordSet(
  "go can could would will i id we wed you let lets please pls just put write jot note mark take set make log record enter add remember report",
);

/** All of an order. */
export const NOTE_DOWN =
  /^(?:(?:can|could|would|will) (?:you|u) |(?:i need|i want|id like|i would like|we need|we want|wed like|we would like) (?:you )?to |you can |let me |lets |please |pls |just |quickly |also |go ahead and |go ahead |go on and )*(?:(?:put|write|jot|note|mark|take|set|get) (?:it |this |me )?down|put (?:it )?in|make (?:me )?(?:a |an )?(?:quick |mental )?(?:note|entry)|note|log|record|enter|add|mark|remember|report|mention|let (?:you|u) know|let it be known|let the record show)(?: (?:here|in there|in|for me|of the fact|somewhere|please|for the record|that for the record|to the books|in the books|it|this))?(?: that| for)?$/;

/** What may stand behind one without "that". */
export const TELLS_ITSELF = wordSet("i we ive weve i've we've im");

/** Marks that are said out loud; those of two words by their second. */
export const SPOKEN_MARKS: Readonly<Record<string, string | Readonly<Record<string, string>>>> = {
  comma: ",",
  period: ".",
  semicolon: ";",
  full: { stop: "." },
  question: { mark: "?" },
  exclamation: { point: "!", mark: "!" },
  new: { line: ".", paragraph: "." },
  next: { line: "." },
};

/** Beside them a period is a time, or a style. */
export const BEFORE_PERIOD = wordSet(
  "a an the that this time of in victorian edwardian georgian colonial same whole each every per no trial grace planning prep lunch",
);
export const BEHIND_PERIOD = wordSet(
  "piece pieces style furniture correct look of desk chair chairs table dresser hardware pull pulls lamp mirror cabinet",
);

/** Behind "can you" these ask for a note: "can you mark the desk sold for 140". */
export const ORDERS = wordSet("mark log record enter note");
