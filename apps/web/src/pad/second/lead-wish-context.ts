import { createContext } from "react";

/** A person who charts as second asks for the lead. */
export const LeadWishContext = createContext<() => void>(() => undefined);
