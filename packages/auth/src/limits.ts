import { createHmac } from "node:crypto";
import type { AuthStore } from "./auth-store.ts";
import { deriveKey } from "./derive-key.ts";
import { networkOf } from "./network-of.ts";

const WINDOW_MS = 15 * 60_000;
export const SIGN_INS_PER_ACCOUNT_AND_NETWORK = 5;
/** From all networks together: far beyond any mistyping, far below any guessing. */
export const SIGN_INS_PER_ACCOUNT = 100;
export const CODE_FAILURES_PER_NETWORK = 10;
/** About 58,000 a day against 887 million codes: with 30 codes in use, one guess in 500 days hits. */
export const CODE_FAILURES_OVERALL = 600;

/** Far more than a match has hand-overs. */
export const HAND_OVERS_PER_HOLDER = 30;

/** One use that was counted before its outcome is known, so that uses at the same moment cannot slip through. */
export interface Try {
  readonly allowed: boolean;
  /** It was no failure after all: do not count it. */
  readonly giveBack: () => Promise<void>;
}

/** Limits that all nodes share. Keys are hashed, so neither addresses nor e-mails are kept. */
export const makeLimits = (store: AuthStore, secret: string) => {
  const key = deriveKey(secret, "try key");
  const nameOf = (...parts: readonly string[]): string =>
    createHmac("sha256", key).update(JSON.stringify(parts)).digest("hex");

  const take = async (name: string, max: number, nowMs: number): Promise<Try> => {
    const { count } = await store.takeTry(name, WINDOW_MS, nowMs);
    return { allowed: count <= max, giveBack: () => store.returnTry(name) };
  };

  return {
    /** One sign-in for this account from this network; `forget` after it went well. */
    signIn: async (email: string, address: string, nowMs: number) => {
      const account = email.trim().toLowerCase();
      const name = nameOf("sign-in", account, networkOf(address));
      const own = await take(name, SIGN_INS_PER_ACCOUNT_AND_NETWORK, nowMs);
      if (!own.allowed) return { allowed: false, forget: own.giveBack };
      const all = await take(nameOf("sign-in", account), SIGN_INS_PER_ACCOUNT, nowMs);
      const forget = async (): Promise<void> => {
        await store.clearTries(name);
        await all.giveBack();
      };
      return { allowed: all.allowed, forget };
    },
    /** One hand-over code made by this member or session. */
    handOver: (holder: string, nowMs: number): Promise<Try> =>
      take(nameOf("hand-over", holder), HAND_OVERS_PER_HOLDER, nowMs),
    /** One code typed from this network. A network over its limit does not use up what all share. */
    code: async (address: string, nowMs: number): Promise<Try> => {
      const own = await take(nameOf("code", networkOf(address)), CODE_FAILURES_PER_NETWORK, nowMs);
      if (!own.allowed) return own;
      const all = await take(nameOf("code"), CODE_FAILURES_OVERALL, nowMs);
      return {
        allowed: all.allowed,
        giveBack: async () => {
          await own.giveBack();
          await all.giveBack();
        },
      };
    },
  };
};

export type Limits = ReturnType<typeof makeLimits>;
