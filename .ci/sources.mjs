import { register } from "node:module";

// Makes a process take each source as `compileSources` compiled it, under the source's own name.
process.setSourceMapsEnabled(true);
register("./sources-hooks.mjs", import.meta.url);
