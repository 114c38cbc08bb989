import { randomUUID } from "node:crypto";
import { err, ok } from "@courtloom/core";
import type { ApiAuth, IssuedCode, PhoneInUse } from "../api-auth.ts";

interface Account {
  readonly email: string;
  readonly password: string;
  readonly userId: string;
}

type Owned<T> = T & { readonly academyId: string; readonly dayId: string };

/** Accounts and codes in memory. Every change is counted, as in the store beside it. */
export const createMemoryAuth = () => {
  const accounts: Account[] = [];
  const codes: Owned<IssuedCode>[] = [];
  const phones: Owned<PhoneInUse>[] = [];
  let writes = 0;

  const auth: ApiAuth = {
    createDirector: async ({ email, password }) => {
      if (!email.includes("@")) return err("bad_email");
      if (password.length < 8) return err("password_too_short");
      const account = { email, password, userId: randomUUID() };
      accounts.push(account);
      writes += 1;
      return ok({ userId: account.userId });
    },
    signIn: async ({ email, password }) => {
      const account = accounts.find((there) => there.email === email && there.password === password);
      return account
        ? ok({ setCookie: { header: `courtloom_account=${account.userId}` } })
        : err("wrong_credentials");
    },
    enterDemo: async () => err("no_demo"),
    issueCode: async ({ academyId, kind, dayId, courtId, expiresMs }) => {
      const codeId = randomUUID();
      const code = `ABC${String(codes.length + 100)}`;
      codes.push({ academyId, dayId, codeId, kind, courtId: courtId ?? null, code, expiresMs });
      writes += 1;
      return ok({ codeId, code });
    },
    activeCodes: async (academyId, dayId) =>
      codes.filter((code) => code.academyId === academyId && code.dayId === dayId),
    revokeCode: async (academyId, codeId) => {
      const at = codes.findIndex((code) => code.academyId === academyId && code.codeId === codeId);
      if (at < 0) return false;
      codes.splice(at, 1);
      writes += 1;
      return true;
    },
    activeCourtside: async (academyId, dayId) =>
      phones.filter((phone) => phone.academyId === academyId && phone.dayId === dayId),
    revokeCourtside: async (academyId, sessionId) => {
      const at = phones.findIndex((phone) => phone.academyId === academyId && phone.sessionId === sessionId);
      if (at < 0) return false;
      phones.splice(at, 1);
      writes += 1;
      return true;
    },
  };
  return { auth, accounts, codes, phones, writeCount: () => writes };
};

export type MemoryAuth = ReturnType<typeof createMemoryAuth>;
