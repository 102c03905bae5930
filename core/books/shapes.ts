import * as z from "zod";
import { isDay } from "../calendar.ts";

/** Shapes that the data of several kinds of fact share. */
export const dayShape = z.string().refine(isDay, "not a day");
/** A plain decimal, not negative: "5.5". */
export const decimalShape = z.string().regex(/^\d{1,15}(\.\d{1,15})?$/);
export const centsShape = z.int().nonnegative();
export const wordsShape = z.string().min(1);
export const daysInYearShape = z.enum(["365", "365.25", "actual"]);
export const categoryShape = z.enum(["materials", "tools", "vehicle", "fees", "help", "storage", "other"]);
