import { err, ok } from "@courtloom/core";
import { checkAccount, createAccountRecord, idOfEmail, replacePassword } from "./account-record.ts";
import type { SessionBase } from "./account-session.ts";
import type { Auth } from "./auth.ts";
import type { AuthStore } from "./auth-store.ts";

/**
 * The first director's account. A set-up that broke off between account and academy may be repeated; an
 * account that is in use may not be taken this way.
 */
export const makeCreateDirector =
  ({ library, clock }: SessionBase, store: AuthStore): Auth["createDirector"] =>
  async (account) => {
    if (await store.hasDirector()) return err("already_set_up");
    const created = await createAccountRecord(library, clock, account);
    if (created.ok || created.error !== "email_taken") return created;
    const checked = checkAccount(account);
    const userId = checked.ok ? await idOfEmail(library, checked.value.email) : undefined;
    if (userId === undefined || (await store.membershipOf(userId)) !== undefined) return created;
    await replacePassword(library, userId, account.password);
    return ok({ userId });
  };
