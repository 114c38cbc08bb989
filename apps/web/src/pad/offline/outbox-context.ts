import type { Outbox } from "@courtloom/sync";
import { createContext } from "react";

/** The open outbox, for the part that says how this phone keeps things and saves them to a file. */
export const OutboxContext = createContext<Outbox | undefined>(undefined);
