import type { Category } from "../reading.ts";
import type { Hedge } from "../words/hedges.ts";
import type { OwnSigns } from "./sign-bits.ts";

/** Everything a word or phrase may be; which of it holds is settled by the words around it. */
export interface Roles<Head = unknown> {
  /** `isSet`: the name means pieces that go together. */
  noun?: { name: string; plural: boolean; isSet: boolean };
  supply?: Category;
  place?: string;
  method?: string;
  stream?: string;
  heads?: Head[];
  hedge?: Hedge;
  vagueTime?: true;
  person?: true;
  trait?: true;
  opinion?: true;
  filler?: true;
  pronoun?: true;
  labor?: true;
  /** An ordinary word that says nothing of money, pieces or what became of them. */
  plain?: true;
  /** What somebody does to a piece for money. */
  service?: true;
  /** What is still to be paid: the amount of the token, or all of it. */
  owed?: true;
  /** What is still to be paid is the price less the amount of the token. */
  rest?: true;
  /** The price agreed on for what is held: the amount of the token. */
  agreed?: true;
  /** What the piece was listed at, as its price; so much off it or over it, so many percent of it; "unsaid": by something else. */
  asking?: "at" | "off" | "over" | "of" | "unsaid";
  /** The price beside it holds the deposit. */
  whole?: true;
  /** Who did it: a buyer, a buyer nobody named, or one of the household. */
  actor?: "buyer" | "nobody" | "ours";
  /** What the phrase tells of a clause that holds it, once it was said; absent for words that nobody listed. */
  own?: OwnSigns;
}

/** Roles with every field there: what `over` says first, else what `roles` says; heads of both. One shape for all. */
export function rolesOf<Head>(roles: Roles<Head>, over: Roles<Head> = {}): Roles<Head> {
  const heads = over.heads && roles.heads ? [...over.heads, ...roles.heads] : (over.heads ?? roles.heads);
  return {
    noun: over.noun ?? roles.noun,
    supply: over.supply ?? roles.supply,
    place: over.place ?? roles.place,
    method: over.method ?? roles.method,
    stream: over.stream ?? roles.stream,
    heads,
    hedge: over.hedge ?? roles.hedge,
    vagueTime: over.vagueTime ?? roles.vagueTime,
    person: over.person ?? roles.person,
    trait: over.trait ?? roles.trait,
    opinion: over.opinion ?? roles.opinion,
    filler: over.filler ?? roles.filler,
    pronoun: over.pronoun ?? roles.pronoun,
    labor: over.labor ?? roles.labor,
    plain: over.plain ?? roles.plain,
    service: over.service ?? roles.service,
    owed: over.owed ?? roles.owed,
    rest: over.rest ?? roles.rest,
    agreed: over.agreed ?? roles.agreed,
    asking: over.asking ?? roles.asking,
    whole: over.whole ?? roles.whole,
    actor: over.actor ?? roles.actor,
    own: undefined,
  };
}

const TURNED = new WeakSet<object>();

/** The roles of words that a row says turn their note: no slot and no aside takes them. */
export function turnedRoles<Head>(said: Roles<Head>): Roles<Head> {
  const roles = rolesOf<Head>(said);
  TURNED.add(roles);
  return roles;
}

export const isTurned = (roles: object): boolean => TURNED.has(roles);
