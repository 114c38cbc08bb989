import { coachingFactsOf, type Holding, type LiveScreen, liveRoleOf, mayHold } from "@courtloom/protocol";
import type { MatchRow } from "../api-store.ts";
import type { StaffContext } from "../procedure.ts";

/** What of a match may go to `screen` for who asks, as coaching stands now. Rule CM1. */
export const holdingOf = ({ staff }: StaffContext, screen: LiveScreen, card: MatchRow): Holding =>
  mayHold({ screen, role: liveRoleOf(staff), ...coachingFactsOf(card) });
