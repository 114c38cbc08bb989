import type { ComponentType } from "react";

/** Where a part of the pad comes from that the first visit does without. */
export interface PartSource<Props> {
  /** Undefined until it was fetched. */
  readonly get: () => ComponentType<Props> | undefined;
  /** Fetches it; resolves whether it is here. */
  readonly fetchNow: () => Promise<boolean>;
}

/** Remembers a part once it came. Without a signal its script comes from the files that this phone keeps, if it does. */
export const makePartSource = <Props>(fetchPart: () => Promise<ComponentType<Props>>): PartSource<Props> => {
  let part: ComponentType<Props> | undefined;
  return {
    get: () => part,
    fetchNow: async () => {
      try {
        part ??= await fetchPart();
        return true;
      } catch {
        // No signal and not kept on this phone: whoever opens it is told.
        return false;
      }
    },
  };
};
