import { wordSet } from "./words.ts";

/** Words that people send between notes; a message of nothing else records nothing and asks nothing. */
export const SMALL_TALK: ReadonlySet<string> = new Set(
  [
    "lol lmao rofl ha haha hahaha hehe heh ok okay k kk cool nice great good awesome sweet perfect yay woohoo hooray",
    "wow whoa omg aww hmm hm neat super amazing word bet aight alright gotcha noted roger understood congrats",
    "welcome np nite gn bye goodbye later ugh phew yikes oops whoops fine sure yes yeah yep yup well right",
  ]
    .join(" ")
    .split(" "),
);

/** Words by which one tells how it is, in so many words. */
export const FELT: ReadonlySet<string> = wordSet(
  "nice_one good_deal bad not_bad not_a_bad_day all_good cant_complain quick easy win worse better deal fast",
);

/** What makes a question to the books of a remark: "was it a good price". */
export const ASKED_OF: ReadonlySet<string> = wordSet("price how what whats which when who why");

/** Words that may stand beside small talk, and say nothing alone. */
export const BESIDE_SMALL_TALK: ReadonlySet<string> = new Set(
  "you youre your are the a an so much very really too and for all that this is its it bot buddy friend man dude love again see ya soon tonight tomorrow oh ah hey hi hello yo thats today now team everyone folks".split(
    " ",
  ),
);

export const THANKS: ReadonlySet<string> = new Set(
  "thanks thank thx ty tysm thankyou tanks cheers appreciate appreciated".split(" "),
);

/** Greetings, by their first two words, and what is said back. */
export const GREETINGS: ReadonlyMap<string, string> = new Map([
  ["good morning", "Good morning."],
  ["good afternoon", "Good afternoon."],
  ["good evening", "Good evening."],
  ["good night", "Good night."],
  ["night night", "Good night."],
  ["night", "Good night."],
  ["goodnight", "Good night."],
  ["see you", "See you."],
  ["see ya", "See you."],
  ["talk later", "See you."],
  ["talk soon", "See you."],
  ["morning", "Good morning."],
  ["gm", "Good morning."],
]);

/** What is counted where nothing of the trade is told. */
export const COUNTED_IN_TALK: ReadonlySet<string> = new Set(
  "degrees degree f lbs lb pounds pound flights flight stairs steps floors people folks guys kids views likes messages texts calls years yrs weeks days hours minutes blocks stores trips times ladies women men others buyers am pm o'clock to".split(
    " ",
  ),
);

/** Somebody wants to know more, and offers nothing yet: "two people asked about it". */
export const ASKED_ABOUT =
  /\b(?:(?:asked|asks|asking|messaged|texted|inquired|enquired|emailed|wrote|called|questions?|curious) (?:me |us )?(?:about|re)|interested in|interest in)\b(?!.*\b(?:would|take|offer|offered|buy|for \d)\b)/i;

/** Who looked at what is offered. */
export const LOOKERS = wordSet(
  "people folks message messages text texts call calls view views like likes save saves inquiry inquiries watcher watchers follower followers share shares hits clicks comment comments hearts ping pings dm dms replies",
);
/** What they did, and what stands beside it: "three people messaged within the hour". */
export const LOOKED = wordSet(
  "messaged texted called asked viewed saved liked shared commented looked watching pinged wrote replied interested have has are got had on about at it them the my its listing ad post already so far today tonight within in an a first hour hours minutes day this morning evening and but no yet who now up to over like another of new many several few couple lots tons loads",
);
