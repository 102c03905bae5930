import { defineConfig } from "drizzle-kit";

// Run from the top of the project: npx drizzle-kit generate --config .ci/drizzle.config.ts
export default defineConfig({
  dialect: "sqlite",
  schema: "./db/schema.ts",
  out: "./db/migrations",
});
