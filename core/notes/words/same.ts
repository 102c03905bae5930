import { wordSet } from "./words.ts";

/** Furniture that goes by several names: a piece noted under one may be meant by another. */
export const SAME_THINGS: readonly ReadonlySet<string>[] = [
  wordSet("bookcase bookshelf"),
  wordSet("nightstand bedside_table night_table bedside_stand"),
  wordSet("couch sofa"),
  wordSet("dresser bureau chest_of_drawers"),
  wordSet("armoire wardrobe"),
  wordSet("end_table side_table"),
  wordSet("sideboard buffet credenza"),
  wordSet("rug carpet"),
  wordSet("trunk chest"),
];
