import { setFlagsFromString } from "node:v8";

// A test runs most code too seldom for optimized machine code to pay. Set this way, a Node without the flag goes on without it.
setFlagsFromString("--interrupt-budget=500000");
