import { randomUUID } from "node:crypto";
import { createAuthStore } from "../auth-store.ts";
import { createDayStore } from "../create-day-store.ts";
import type { HandedLead, HandOverAsk } from "../entry-store.ts";
import type { Db } from "../open-db.ts";

const NOW_MS = 1_780_000_000_000;
const HOUR_MS = 3_600_000;

/** A lead that was handed over with a code, made by whoever leads and entered by `to`. */
export async function seedHandOver(
  db: Db,
  { academyId, matchId, laneId, to, untilMs }: HandOverAsk & HandedLead,
): Promise<void> {
  const auth = createAuthStore(db);
  const { dayId, courtIds } = await createDayStore(db).createDay({
    academyId,
    name: "Tide Cup",
    date: "2026-05-30",
    courts: [{ name: "Court 1" }],
  });
  const [codeId, handOverId] = [randomUUID(), randomUUID()];
  await auth.addCode({
    ...{ academyId, codeId, kind: "court", dayId, courtId: courtIds[0] ?? "" },
    ...{ codeHash: codeId, codeSealed: "sealed", issuedBy: "", issuedMs: NOW_MS },
    ...{ expiresMs: NOW_MS + HOUR_MS, revokedMs: null },
  });
  const added = await auth.addHandOver({
    ...{ academyId, matchId, laneId, handOverId, codeHash: handOverId, codeId, level: "key" },
    ...{ owner: { kind: "courtside", id: "whoever" }, madeMs: NOW_MS, endsMs: NOW_MS + HOUR_MS },
  });
  if (added !== "added") throw new Error(added);
  const accepted = await auth.acceptHandOver({ academyId, handOverId, to, atMs: NOW_MS, untilMs });
  if (!accepted) throw new Error("not accepted");
}
