import { parseOptions } from "@node-rs/argon2";
import { describe, expect, it } from "vitest";
import { HashingBusyError, hashPassword, makeQueue, verifyPassword } from "./password-hash.ts";

describe("passwords at rest", () => {
  it("[AU3] are argon2id with at least 19 MiB, two passes, one lane, and a salt of their own", async () => {
    const [one, two] = [await hashPassword("the same words"), await hashPassword("the same words")];
    expect(one).toMatch(/^\$argon2id\$v=19\$/);
    const { memoryCost, timeCost, parallelism, outputLen, saltLen } = parseOptions(one);
    expect(memoryCost).toBeGreaterThanOrEqual(19 * 1024);
    expect({ timeCost, parallelism, outputLen, saltLen }).toEqual({
      timeCost: 2,
      parallelism: 1,
      outputLen: 32,
      saltLen: 16,
    });
    expect(one).not.toBe(two);
  });

  it("[AU3] fit whichever way an accent was typed, and nothing else", async () => {
    const hash = await hashPassword("caf\u00e9 by the r\u00edo");
    expect(await verifyPassword({ hash, password: "cafe\u0301 by the ri\u0301o" })).toBe(true);
    expect(await verifyPassword({ hash, password: "Caf\u00e9 by the r\u00edo" })).toBe(false);
  });
});

describe("the queue of hashes", () => {
  it("[AU3] runs no more together than it may, and refuses what would wait too long", async () => {
    const queue = makeQueue(2, 3);
    let running = 0;
    let most = 0;
    const gates: (() => void)[] = [];
    const job = () =>
      queue(async () => {
        running += 1;
        most = Math.max(most, running);
        await new Promise<void>((open) => gates.push(open));
        running -= 1;
      });
    const jobs = Array.from({ length: 5 }, job);
    await expect(job()).rejects.toBeInstanceOf(HashingBusyError);
    for (let done = 0; done < 5; done += 1) {
      await expect.poll(() => gates.length).toBeGreaterThan(0);
      gates.shift()?.();
    }
    await Promise.all(jobs);
    expect(most).toBe(2);
    await expect(queue(async () => "free again")).resolves.toBe("free again");
  });

  it("[AU3] goes on after a job that failed", async () => {
    const queue = makeQueue(1, 1);
    await expect(queue(() => Promise.reject(new Error("no")))).rejects.toThrow("no");
    await expect(queue(async () => 1)).resolves.toBe(1);
  });
});
