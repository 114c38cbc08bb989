const TIMEOUT_MS = 3000;

/**
 * *well*: it answers that all it needs is there, and knows this start's instance id. *unwell*: something
 * answers, but not that; a part whose database is away is better left alone. *silent*: nothing answers.
 */
export type Health = "well" | "unwell" | "silent";

/**
 * Asks `/healthz` on a loopback port. A process left over from an earlier run, or a stranger's, does not know
 * our instance id and so is never well.
 */
export async function askHealth(port: number, instanceId: string): Promise<Health> {
  try {
    const signal = AbortSignal.timeout(TIMEOUT_MS);
    const response = await fetch(`http://127.0.0.1:${port}/healthz`, { signal, redirect: "manual" });
    const body = await response.text();
    return response.ok && namesInstance(body, instanceId) ? "well" : "unwell";
  } catch {
    // Refused, cut off or too slow: the caller asks again.
    return "silent";
  }
}

/** True if `text` is a JSON object with the instance id as one of its values. */
export function namesInstance(text: string, instanceId: string): boolean {
  try {
    const value: unknown = JSON.parse(text);
    return typeof value === "object" && value !== null && Object.values(value).includes(instanceId);
  } catch {
    return false;
  }
}
