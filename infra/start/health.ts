const TIMEOUT_MS = 3000;

/**
 * True if a process that knows our instance id answers on this loopback port: one left over from an earlier
 * run, or a stranger's, does not count.
 */
export async function isHealthy(port: number, instanceId: string): Promise<boolean> {
  try {
    const signal = AbortSignal.timeout(TIMEOUT_MS);
    const response = await fetch(`http://127.0.0.1:${port}/healthz`, { signal, redirect: "error" });
    const body = await response.text();
    return response.ok && namesInstance(body, instanceId);
  } catch {
    // Refused, cut off or too slow: not healthy, and the caller asks again.
    return false;
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
