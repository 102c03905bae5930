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

/** Closed kin: they act for the shop, as members do. A friend, a neighbor or a roommate does not. */
export const HOUSEHOLD: ReadonlySet<string> = new Set(
  (
    "missus grandad granddad mam mummy mom mum mama mommy mother ma dad daddy papa pops father pa parents folks wife wifey hubby hubs husband spouse partner " +
    "fiance fiancee boyfriend girlfriend bf gf son sons daughter daughters kid kids child children stepson stepdaughter " +
    "brother bro sister sis siblings stepbrother stepsister stepdad stepmom twin gram grams grammy nan memaw mamaw papaw pawpaw grandma grandpa granny nana gran gramps meemaw mawmaw pappy oma opa abuela abuelo gma gpa " +
    "grandmother grandfather grandson granddaughter aunt auntie uncle unc cousin cousins nephew niece inlaws " +
    "father_in_law mother_in_law brother_in_law sister_in_law son_in_law daughter_in_law"
  )
    .split(" ")
    .map((word) => word.replaceAll("_", " ")),
);

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
