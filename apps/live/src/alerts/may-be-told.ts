import { type CoachingFacts, mayHoldAlerts } from "@courtloom/protocol";
import type { StaffMember } from "./alert-store.ts";

/** Whether the alerts of a match are for this member: of one between two own players the director alone is told. SPEC AL23. */
export const mayBeTold = (role: StaffMember["role"], coaching: CoachingFacts): boolean =>
  mayHoldAlerts({ screen: "staffBoard", role, ...coaching });
