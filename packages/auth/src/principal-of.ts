import { err, ok, type Principal, type Result } from "@courtloom/core";
import { findSession, type SessionBase } from "./account-session.ts";
import type { Auth, SessionRefusal } from "./auth.ts";
import type { AuthStore } from "./auth-store.ts";
import type { Courtside } from "./courtside.ts";

type Found = Result<Principal, SessionRefusal>;

const findAccount = async (
  base: SessionBase,
  store: AuthStore,
  cookieHeader: string | undefined,
): Promise<Found> => {
  const session = await findSession(base, cookieHeader);
  const membership = session && (await store.membershipOf(session.userId));
  if (!session || !membership) return err("signed_out");
  const { academyId, memberId, name, role } = membership;
  return ok({ kind: "account", academyId, memberId, name, role, userId: session.userId });
};

/** One of a device's two sessions speaks: the preferred one if it is good, else the other. */
export const makePrincipalOf =
  (base: SessionBase, store: AuthStore, findCourtside: Courtside["find"]): Auth["principalOf"] =>
  async (cookieHeader, prefer = "account") => {
    if (prefer === "courtside") {
      const courtside = await findCourtside(cookieHeader);
      if (courtside?.ok) return courtside;
      const account = await findAccount(base, store, cookieHeader);
      return account.ok ? account : (courtside ?? account);
    }
    const account = await findAccount(base, store, cookieHeader);
    return account.ok ? account : ((await findCourtside(cookieHeader)) ?? account);
  };
