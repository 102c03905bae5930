/* Words to the bot itself. */

import { wordSet } from "./words.ts";

/** Words to the bot itself; the conversation takes them when they are the whole message. */
export const BOT_WORDS = wordSet(
  "start export backup invite members settings setup restore stop about status",
);
