import { stateOfCompiled } from "./compiled.mjs";

/** Before any test: the processes that tests start run what is compiled, as people do. */
export default async function setup() {
  if (stateOfCompiled() === "current") return;
  const { compile } = await import("./compile.mjs");
  await compile();
}
