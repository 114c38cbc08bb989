import { createContext, useContext } from "react";
import type { Elsewhere } from "../courtside.ts";

/** How a member of staff adds, changes to and leaves a second court, for whichever part of the screen offers it. */
export interface SecondCourt {
  /** The court that is charted beside this one. */
  readonly other:
    | { readonly courtName: string; readonly go: () => void; readonly close: () => void }
    | undefined;
  /** The day's matches on other courts; `undefined` when the server could not be asked. */
  readonly list: () => Promise<readonly Elsewhere[] | undefined>;
  /** Opens one beside this; `false` when the server could not be asked. */
  readonly add: (matchId: string) => Promise<boolean>;
}

/** Undefined for a helper, who has one court. */
export const SecondCourtContext = createContext<SecondCourt | undefined>(undefined);

export const useSecondCourt = (): SecondCourt | undefined => useContext(SecondCourtContext);
