export type { DurabilityFault } from "./migrate/check-durability.ts";
export { checkDurability } from "./migrate/check-durability.ts";
export type { MigratedUrls, MigrateOptions } from "./migrate/migrate.ts";
export { migrate } from "./migrate/migrate.ts";
export type { MigrateError } from "./migrate/migrate-error.ts";
export { migrateErrorSentence } from "./migrate/migrate-error.ts";
export { renewIncarnation } from "./migrate/renew-incarnation.ts";
