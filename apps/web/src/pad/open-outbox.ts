import { createMemoryOutbox, type Outbox, openIdbOutbox } from "@courtloom/sync";

/** The phone's outbox, or one in memory where the browser stores nothing. Lets go of what was sealed long ago. */
export const openOutbox = async (): Promise<Outbox> => {
  const stored = await openIdbOutbox();
  if (!stored) return createMemoryOutbox();
  await stored.sweep(Date.now());
  return stored;
};
