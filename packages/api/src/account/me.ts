import { noInput } from "../fields.ts";
import { openProcedure } from "../procedure.ts";

/** Who is asking, and for which academy; `member` null when nobody with an account is signed in. */
export const me = openProcedure.input(noInput).query(async ({ ctx }) => {
  const found = await ctx.principal();
  if (!found.ok || found.value.kind !== "account") return { member: null, academy: null };
  const { academyId, memberId, name, role } = found.value;
  const academy = await ctx.store.academy({ academyId });
  return {
    member: { memberId, name, role },
    academy: academy
      ? {
          academyId,
          name: academy.name,
          timeZone: academy.timeZone,
          language: academy.language,
          isDemo: academy.isDemo,
        }
      : null,
  };
});
