import { readdirSync, readFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { fileURLToPath } from "node:url";

const TOP = resolve(dirname(fileURLToPath(import.meta.url)), "../..");

/** What each room may import: itself, and rooms further in. */
const INWARD: Readonly<Record<string, readonly string[]>> = {
  core: ["core"],
  db: ["db", "core"],
  bot: ["bot", "db", "core"],
};

/** Packages that only compute: all that the pure core may lean on. */
const PURE_PACKAGES = ["decimal.js", "zod", "papaparse"];

/** Names that would make the core depend on a clock, a process or the outside. */
const IMPURE = /\b(?:Date\.now|new Date\(\)|Math\.random|process\.|setTimeout|setInterval|fetch\(|await )/;

/** Every import that points outward, every impure word and every circle in core, as "file: what". */
export function layeringFaults(): string[] {
  const faults = Object.keys(INWARD).flatMap((room) =>
    filesOf(join(TOP, room)).flatMap((file) => faultsOf(file, room)),
  );
  return [...faults, ...circlesIn(filesOf(join(TOP, "core"))), ...circlesOfRooms(join(TOP, "core/decide"))];
}

/** The files of a room that import each other in a circle, types included, each circle once. */
export function circlesIn(files: readonly string[]): string[] {
  const known = new Set(files);
  return circlesOf(
    new Map(files.map((file) => [file, importsOf(file).filter((target) => known.has(target))])),
  );
}

/** The rooms in a folder that import each other in a circle; the files beside them are passed over. */
export function circlesOfRooms(folder: string): string[] {
  const rooms = readdirSync(folder, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  const paths = rooms.map(({ name }) => join(folder, name));
  const importedBy = (room: string): string[] => {
    const targets = filesOf(room).flatMap(importsOf);
    return paths.filter((path) => path !== room && targets.some((target) => target.startsWith(`${path}/`)));
  };
  return circlesOf(new Map(paths.map((room) => [room, importedBy(room)])));
}

function circlesOf(imports: ReadonlyMap<string, readonly string[]>): string[] {
  const done = new Set<string>();
  const faults: string[] = [];
  const visit = (place: string, path: readonly string[]): void => {
    const at = path.indexOf(place);
    if (at >= 0) {
      const names = [...path.slice(at), place].map((one) => relative(TOP, one));
      faults.push(`${names[0]}: imports itself through ${names.slice(1).join(", ")}`);
      return;
    }
    if (done.has(place)) return;
    for (const target of imports.get(place)!) visit(target, [...path, place]);
    done.add(place);
  };
  for (const place of imports.keys()) visit(place, []);
  return faults;
}

function importsOf(file: string): string[] {
  return targetsIn(readFileSync(file, "utf8"))
    .filter((target) => target.startsWith("."))
    .map((target) => resolve(dirname(file), target));
}

const STATEMENTS = /^(?:import|export)\b[^;"]*?from\s+"([^"]+)"|\bimport\(\s*"([^"]+)"|^import\s+"([^"]+)"/gm;

const targetsIn = (text: string): string[] =>
  [...text.matchAll(STATEMENTS)].map((match) => match[1] ?? match[2] ?? match[3]!);

function filesOf(folder: string): string[] {
  return readdirSync(folder, { withFileTypes: true }).flatMap((entry) => {
    const path = join(folder, entry.name);
    if (entry.isDirectory()) return filesOf(path);
    return entry.name.endsWith(".ts") ? [path] : [];
  });
}

function faultsOf(file: string, room: string): string[] {
  const text = readFileSync(file, "utf8");
  const name = relative(TOP, file);
  const imports = targetsIn(text);
  const wrong = imports
    .filter((target) => !isAllowed(target, file, room))
    .map((target) => `${name}: imports ${target}`);
  const code = text.replace(/\/\*[\s\S]*?\*\/|\/\/.*$/gm, "");
  const impure = room === "core" ? IMPURE.exec(code) : null;
  return impure ? [...wrong, `${name}: uses ${impure[0].trim()}`] : wrong;
}

function isAllowed(target: string, file: string, room: string): boolean {
  if (target.startsWith(".")) {
    const [top] = relative(TOP, resolve(dirname(file), target)).split("/");
    return INWARD[room]!.includes(top!);
  }
  return room !== "core" || PURE_PACKAGES.includes(target);
}

if (process.argv[1] === fileURLToPath(import.meta.url)) {
  const faults = layeringFaults();
  for (const fault of faults) console.error(fault);
  if (faults.length === 0) console.log("Layers are in order: bot → db → core, and core is pure.");
  process.exitCode = faults.length === 0 ? 0 : 1;
}
