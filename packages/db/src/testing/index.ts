export type { FreshDatabase } from "./fresh-database.ts";
export { freshDatabase } from "./fresh-database.ts";
