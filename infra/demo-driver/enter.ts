import type { Stores } from "./open-stores.ts";

export interface EnterCourt {
  readonly academyId: string;
  readonly dayId: string;
  readonly courtId: string;
  readonly chartist: string;
  readonly expiresMs: number;
}

const DRIVER = "demo";

const codeOf = async ({ auth }: Stores, court: EnterCourt): Promise<string> => {
  const active = await auth.activeCodes(court.academyId, court.dayId);
  const there = active.find((code) => code.kind === "court" && code.courtId === court.courtId)?.code;
  if (there) return there;
  const issued = await auth.issueCode({ ...court, kind: "court", by: DRIVER });
  if (!issued.ok) throw new Error(`no court code for the demo: ${issued.error}`);
  return issued.value.code;
};

/** A phone of the demo enters with a court code, as a person would; answers its cookie header. */
export const enterCourt = async (stores: Stores, court: EnterCourt): Promise<string> => {
  const code = await codeOf(stores, court);
  const entered = await stores.auth.enterWithCode({ code, name: court.chartist, address: "127.0.0.1" });
  if (!entered.ok) throw new Error(`the demo's phone was not let in: ${entered.error}`);
  const { name, value } = entered.value.setCookie;
  return `${name}=${encodeURIComponent(value)}`;
};
