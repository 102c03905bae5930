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

/** Every import that points outward, and every impure word in core, as "file: what". */
export function layeringFaults(): string[] {
  return Object.keys(INWARD).flatMap((room) =>
    filesOf(join(TOP, room)).flatMap((file) => faultsOf(file, room)),
  );
}

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
  const statements =
    /^(?:import|export)\b[^;"]*?from\s+"([^"]+)"|\bimport\(\s*"([^"]+)"|^import\s+"([^"]+)"/gm;
  const imports = [...text.matchAll(statements)].map((match) => match[1] ?? match[2] ?? match[3]!);
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
