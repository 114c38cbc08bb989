import { createMemoryOutbox, type Outbox, openIdbOutbox } from "@courtloom/sync";

/**
 * The phone's outbox, or one in memory where the browser stores nothing. Asks the browser to keep what is
 * stored, and lets go of what was sealed long ago.
 */
export const openOutbox = async (): Promise<Outbox> => {
  const stored = await openIdbOutbox();
  if (!stored) return createMemoryOutbox();
  // Browsers without it, or pages over plain http, have no `persist`; the pad then says what is missing.
  await navigator.storage?.persist?.();
  await stored.sweep(Date.now());
  return stored;
};
