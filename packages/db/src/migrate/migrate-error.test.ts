import { expect, it } from "vitest";
import { type MigrateError, migrateErrorSentence } from "./migrate-error.ts";

const ERRORS: { readonly [Code in MigrateError["code"]]: Extract<MigrateError, { code: Code }> } = {
  bad_url: { code: "bad_url" },
  unreachable: { code: "unreachable", detail: "connect ECONNREFUSED" },
  wrong_password: { code: "wrong_password", user: "club" },
  no_such_database: { code: "no_such_database", database: "club" },
  old_server: { code: "old_server", version: "12.1" },
  cannot_create_roles: { code: "cannot_create_roles", user: "club" },
  unsafe_role: { code: "unsafe_role", role: "courtloom_app" },
  newer_schema: { code: "newer_schema", migration: "0009_later.sql" },
  changed_migration: { code: "changed_migration", migration: "0001_academy.sql" },
  migration_failed: { code: "migration_failed", migration: "0001_academy.sql", detail: "disk full" },
};

it("[DB3] says what happened, with its facts, and what to do", () => {
  for (const error of Object.values(ERRORS)) {
    const sentence = migrateErrorSentence(error);
    const { code, ...facts } = error;
    for (const fact of Object.values(facts)) expect(sentence, code).toContain(fact);
    expect(sentence.split(/[.:] /).length, code).toBeGreaterThan(1);
  }
});
