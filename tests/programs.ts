import { join, resolve } from "node:path";

/** The project's top folder. */
export const TOP = resolve(import.meta.dirname, "..");

/** A program of the project as `npm start` and the tools run it: compiled, which the run of the tests sees to. */
export function programPath(name: string): string {
  return join(TOP, ".build", `${name}.js`);
}
