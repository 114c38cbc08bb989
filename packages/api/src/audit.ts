import type { ProcedurePath } from "./access.ts";
import type { StaffContext } from "./procedure.ts";

/** Notes who did what to which row, by ids alone. */
export const audit = (
  { store, staff }: StaffContext,
  action: ProcedurePath,
  subject: string,
): Promise<void> => store.writeAudit({ academyId: staff.academyId, actor: staff.memberId, action, subject });
