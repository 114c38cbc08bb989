export type * from "./day-store.ts";
export type * from "./entry-store.ts";
export type { Db } from "./open-db.ts";
export { openDb } from "./open-db.ts";
