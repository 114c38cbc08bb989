/** What the browser says about keeping what is stored: `kept` until a person deletes it, `mayGo` when space runs short. */
export type StorageKeeping = "kept" | "mayGo" | "unknown";

export interface PhoneStorage {
  readonly keeping: StorageKeeping;
  /** Only when little is left of what the browser allows. */
  readonly nearlyFull?: { readonly usedMb: number; readonly ofMb: number };
}

const NEARLY_FULL = 0.8;
const MB = 1024 * 1024;

/** Asked for on behalf of a person who has begun to chart; some browsers ask them in turn. */
export const askToKeep = async (): Promise<void> => {
  try {
    // Absent over plain http and in older browsers; nothing can be asked then.
    if (!(await navigator.storage?.persisted?.())) await navigator.storage?.persist?.();
  } catch {
    // A browser that throws has not kept anything: `readPhoneStorage` says what is so.
  }
};

const readKeeping = async (): Promise<StorageKeeping> => {
  const persisted = await navigator.storage?.persisted?.();
  return persisted === undefined ? "unknown" : persisted ? "kept" : "mayGo";
};

/** How full the browser's share is, if it is nearly. */
export const nearlyFull = ({ usage = 0, quota = 0 }: StorageEstimate): PhoneStorage["nearlyFull"] =>
  quota > 0 && usage / quota >= NEARLY_FULL
    ? { usedMb: Math.round(usage / MB), ofMb: Math.round(quota / MB) }
    : undefined;

export const readPhoneStorage = async (): Promise<PhoneStorage> => {
  try {
    const keeping = await readKeeping();
    const full = nearlyFull((await navigator.storage?.estimate?.()) ?? {});
    return full ? { keeping, nearlyFull: full } : { keeping };
  } catch {
    // Blocked by a setting: nothing is known.
    return { keeping: "unknown" };
  }
};
