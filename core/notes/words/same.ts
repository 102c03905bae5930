import { wordSet } from "./words.ts";

/** Furniture that goes by several names: a piece noted under one is meant by the other, where no other piece is. */
export const SAME_THINGS: readonly ReadonlySet<string>[] = [
  wordSet("bookcase bookshelf"),
  wordSet("nightstand bedside_table night_table bedside_stand"),
  wordSet("couch sofa"),
  wordSet("dresser bureau chest_of_drawers"),
  wordSet("armoire wardrobe"),
  wordSet("end_table side_table"),
  wordSet("rocker rocking_chair"),
  wordSet("filing_cabinet file_cabinet"),
  wordSet("tv_stand tv_console media_console entertainment_center"),
  wordSet("vanity dressing_table"),
  wordSet("settee loveseat"),
  wordSet("rug carpet"),
];

/** Furniture that some call by the other's name: likely the same, and asked. */
export const NEAR_THINGS: readonly ReadonlySet<string>[] = [
  wordSet("sideboard buffet credenza server"),
  wordSet("dining_table kitchen_table"),
  wordSet("console_table sofa_table entry_table"),
  wordSet("hutch china_cabinet china_hutch"),
  wordSet("ottoman footstool"),
  wordSet("bed bed_frame"),
  wordSet("tallboy highboy chest_of_drawers"),
  wordSet("trunk chest"),
];
