import { randomUUID } from "node:crypto";
import type { TestApi } from "./make-api.ts";
import type { SampleIds } from "./sample-inputs.ts";

/** A day with two courts, one match of an own player, one code and one phone, made through the procedures themselves. */
export const seedDay = async (api: TestApi, academyId: string): Promise<SampleIds> => {
  const director = api.callerAs("director", academyId);
  const { dayId } = await director.day.create({ name: "Spring day", date: "2026-05-30", courts: 2 });
  const [court] = (await director.day.get({ dayId })).courts;
  const courtId = court?.courtId ?? "";
  const player = (name: string, own: boolean) => ({ name, hand: "right" as const, own });
  const { matchId } = await director.match.add({
    dayId,
    courtId,
    sides: { A: [player("Noor V.", true)], B: [player("Visitor red", false)] },
    format: "oneSet",
  });
  const [own] = (await director.player.list({ ownOnly: true })).players;
  const { issued } = await director.code.issue({ dayId, wanted: { kind: "wall" } });
  const sessionId = randomUUID();
  api.accounts.phones.push({
    academyId,
    dayId,
    sessionId,
    kind: "court",
    courtId,
    name: "Dana H.",
    openedMs: 0,
  });
  const codeId = issued[0]?.codeId ?? "";
  return { dayId, courtId, matchId, codeId, sessionId, playerId: own?.playerId ?? "" };
};
