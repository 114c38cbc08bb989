import { type Clock, err, ok, type Result } from "@courtloom/core";
import type { AccountLibrary } from "./account-library.ts";
import type { AccountRefusal, NewAccount } from "./auth.ts";
import { checkPassword } from "./check-password.ts";
import { parseEmail } from "./parse-email.ts";
import { parseName } from "./parse-name.ts";
import { hashPassword } from "./password-hash.ts";

interface Checked {
  readonly email: string;
  readonly name: string;
  readonly password: string | undefined;
}

/** What a new account must be before the database is asked. */
export const checkAccount = (account: NewAccount): Result<Checked, AccountRefusal> => {
  const { password } = account;
  const email = parseEmail(account.email);
  if (email === undefined) return err("bad_email");
  const name = parseName(account.name);
  if (name === undefined) return err("bad_name");
  const [localPart = ""] = email.split("@");
  const judged = password === undefined ? ok(undefined) : checkPassword(password, [email, localPart, name]);
  return judged.ok ? ok({ email, name, password }) : judged;
};

/** User id of an e-mail; undefined when nobody has it. */
export const idOfEmail = async (library: AccountLibrary, email: string): Promise<string | undefined> =>
  (await (await library.$context).internalAdapter.findUserByEmail(email))?.user.id;

const insert = async (library: AccountLibrary, clock: Clock, account: Checked): Promise<string> => {
  const { email, name, password } = account;
  const hash = password === undefined ? undefined : await hashPassword(password);
  const now = new Date(clock.wallMs());
  const times = { createdAt: now, updatedAt: now };
  return (await library.$context).adapter.transaction(async (inside) => {
    const user = await inside.create<Record<string, unknown>, { id: string }>({
      model: "user",
      data: { email, name, emailVerified: false, image: null, ...times },
    });
    const credential = { userId: user.id, providerId: "credential", accountId: user.id, ...times };
    if (hash !== undefined) {
      await inside.create({ model: "account", data: { ...credential, password: hash } });
    }
    return user.id;
  });
};

/** Two at the same moment: the database keeps one e-mail, the other hears that it is taken. */
export const createAccountRecord = async (
  library: AccountLibrary,
  clock: Clock,
  account: NewAccount,
): Promise<Result<{ readonly userId: string }, AccountRefusal>> => {
  const checked = checkAccount(account);
  if (!checked.ok) return checked;
  if ((await idOfEmail(library, checked.value.email)) !== undefined) return err("email_taken");
  try {
    return ok({ userId: await insert(library, clock, checked.value) });
  } catch (error) {
    if ((await idOfEmail(library, checked.value.email)) !== undefined) return err("email_taken");
    throw error;
  }
};

/** Gives a user another (or a first) password and ends all their sessions. */
export const replacePassword = async (
  library: AccountLibrary,
  userId: string,
  password: string,
): Promise<void> => {
  const hash = await hashPassword(password);
  const { internalAdapter } = await library.$context;
  await internalAdapter.deleteUserSessions(userId);
  const accounts = await internalAdapter.findAccounts(userId);
  if (accounts.some((account) => account.providerId === "credential")) {
    await internalAdapter.updatePassword(userId, hash);
    return;
  }
  await internalAdapter.createAccount({
    userId,
    providerId: "credential",
    accountId: userId,
    password: hash,
  });
};
