import { hash, verify } from "@node-rs/argon2";

/** argon2id (the library's default kind); memory in KiB. About 20 ms of one core. */
export const ARGON2 = { memoryCost: 19_456, timeCost: 2, parallelism: 1, outputLen: 32 } as const;

/** Each hash takes 19 MiB while it runs. */
const AT_ONCE = 2;
const WAITING_AT_MOST = 100;

/** More sign-ins wait than can be worked off in reasonable time. */
export class HashingBusyError extends Error {
  override readonly name = "HashingBusyError";
}

/** Runs at most `atOnce` jobs together and refuses those beyond `waitingAtMost`. */
export const makeQueue = (atOnce: number, waitingAtMost: number) => {
  let running = 0;
  const waiting: (() => void)[] = [];
  const enter = async (): Promise<void> => {
    if (running < atOnce) {
      running += 1;
      return;
    }
    if (waiting.length >= waitingAtMost) throw new HashingBusyError("Too many sign-ins at once.");
    await new Promise<void>((go) => waiting.push(go));
  };
  const leave = (): void => {
    const next = waiting.shift();
    if (next) next();
    else running -= 1;
  };
  return async <T>(job: () => Promise<T>): Promise<T> => {
    await enter();
    try {
      return await job();
    } finally {
      leave();
    }
  };
};

const queue = makeQueue(AT_ONCE, WAITING_AT_MOST);

/** The same password typed on different keyboards may differ in its bytes. */
const canonical = (password: string): string => password.normalize("NFKC");

export const hashPassword = (password: string): Promise<string> =>
  queue(() => hash(canonical(password), ARGON2));

export const verifyPassword = (input: { hash: string; password: string }): Promise<boolean> =>
  queue(() => verify(input.hash, canonical(input.password)));
