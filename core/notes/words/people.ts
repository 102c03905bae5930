import { phrases, wordSet } from "./words.ts";

/** Someone who is not the owner. Before "bought" or "paid" they make it another's doing, not a note. */
export const PEOPLE: readonly string[] = phrases(`
  buyer buyers customer client guy guys lady ladies man woman dude girl boy kid couple neighbor neighbour
  neighbors friend friends buddy someone somebody person people he she they him her hes shes theyre his
  their seller coworker cousin nephew niece brother sister son daughter mom mother dad father aunt uncle
  wife hubby husband roommate boyfriend girlfriend grandma grandpa grandson granddaughter teen teenager
  student landlord boss brother_in_law sister_in_law mother_in_law father_in_law son_in_law
  daughter_in_law coach teacher partner family gentleman fellow fella feller gal chap bloke gent youngster
  mister maam mum mam mummy mate piano_teacher piano_tuner piano_player stager lad lads lass lassie geezer blokes chaps missus fellas fellers punter
  punters folks stranger strangers early_bird picker coworkers cousins nan nana granny grandad granddad papa mama tradie widow widower you your who
`);

/** Kin and hands that are paid for help: "paid cousin 40". */
export const HELPERS: ReadonlySet<string> = wordSet(`
  cousin nephew niece brother sister son daughter mom dad uncle aunt friend buddy kid kids neighbor
  neighbour guy guys dude roommate boyfriend girlfriend wife hubby husband coworker teen teenager boy girl
  student grandson brother_in_law him her them
`);

/** Kin of whom only "he" is said, and of whom only "she" is; "they" is of several. */
export const HE_KIN: ReadonlySet<string> = kin(
  "grandad granddad dad daddy father pa papa pops hubby hubs husband fiance boyfriend bf son brother bro stepson " +
    "stepbrother stepdad papaw pawpaw grandpa gramps pappy opa abuelo gpa grandfather grandson uncle unc nephew " +
    "father_in_law brother_in_law son_in_law bil fil",
);
export const SHE_KIN: ReadonlySet<string> = kin(
  "missus mam mummy mom mum mama mommy mother ma wife wifey fiancee girlfriend gf daughter sister sis stepdaughter " +
    "stepsister stepmom gram grams grammy nan memaw mamaw grandma granny nana gran meemaw mawmaw oma abuela gma " +
    "grandmother granddaughter aunt auntie niece mother_in_law sister_in_law daughter_in_law sil",
);
export const MANY_KIN: ReadonlySet<string> = kin(
  "parents folks sons daughters kids children siblings cousins inlaws",
);

function kin(words: string): ReadonlySet<string> {
  return new Set(words.split(" ").map((word) => word.replaceAll("_", " ")));
}

/** Closed kin: they act for the shop, as members do. A friend, a neighbor or a roommate does not. */
export const HOUSEHOLD: ReadonlySet<string> = new Set([
  ...HE_KIN,
  ...SHE_KIN,
  ...MANY_KIN,
  ..."spouse partner kid child stepchild twin cousin".split(" "),
]);

/** No "he" or "she" behind them is of these, where kin were told of. */
export const NOBODY_IN_PARTICULAR = wordSet(
  "i me we us you somebody someone anybody people his her their him them",
);

/** Before kin who act: "so my wife …", "me and dad …". */
export const BEFORE_KIN = wordSet("i me we so then but and & just ok okay also because since while when");

/** "gave him 25 for his help": what may be said where somebody is paid for what they did. */
export const PAYS_THEM = wordSet("gave paid pd slipped handed tossed tipped threw");
export const THEM = wordSet("him her them");
export const HELPS = wordSet("helped helps help pitched");
export const SAID_OF_PAY = wordSet(
  "so i we just and then for it that the his their help helping time trouble work cash them today",
  PAYS_THEM,
);

/** Behind kin these tell of somebody else: "mom from soccer". */
export const PLACES_WHO = wordSet("from of at with w and & who whos s in named");

/** Of whom no more need be told. */
export const SELVES = wordSet("i we me us you he she they hes shes theyre somebody someone nobody");

/** What kin do that makes what follows none of their own doing, or their pay. */
export const NO_COMING = wordSet("if when who which that told helped helps help had_to let made got_me");

/** Kin by their age, who are anybody's behind "a" or "some". */
export const ALSO_YOUNG = wordSet("kid kids");
export const ANYBODYS = wordSet("a an some another this these the");

/** Who is not named, and may be of the household. */
export const ONE_OF_US = wordSet("he she hes shes");

const OWNERS: ReadonlySet<string> = new Set(
  [...HOUSEHOLD, ...PEOPLE, "baby", "toddler", "pastor", "preacher"].map((name) => `${name}s`),
);

/** "moms", "the neighbors": whose it is, without the mark that nobody types. */
export const isOwner = (word: string): boolean => OWNERS.has(word);

export const SELLING_HANDS: ReadonlySet<string> = wordSet(`
  neighbour neighbor guys guy dude him her them boy girl
`);

/** Verbs of those who pay, or do not: before them a name stands at the start. */
export const PAYING: ReadonlySet<string> = new Set(
  "picked paid pays came stopped gave gives sent sends brought dropped never finally still settled squared owes stiffed skipped wont cant didnt gets took grabbed".split(
    " ",
  ),
);

/** Given names that are words of their own as well. */
export const NAMES_THAT_ARE_WORDS: readonly string[] =
  "joy grace hope faith rose lily daisy ivy violet june april may autumn summer dawn eve mark bill will rob art drew grant chase frank gene jack jean pat ray rich rusty sandy skip sonny ty".split(
    " ",
  );

/** Before a name; a point behind one ends no sentence. */
export const TITLES = wordSet("mr mrs ms dr prof rev");
