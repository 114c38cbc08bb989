import "server-only";
import { pageApi } from "../server/page-api.ts";
import { orFailurePage } from "../server/page-failure.ts";

/** Everything that a day's desk shows. A day that is missing, or another academy's, is "no such page". */
export const readDesk = async (dayId: string) => {
  const api = await pageApi();
  const desk = await orFailurePage(api.day.get({ dayId }));
  const [{ codes, phones }, { players }] = await Promise.all([api.code.list({ dayId }), api.player.list({})]);
  /** The latest code of a court; null asks for the wall's. */
  const codeOf = (courtId: string | null) => codes.findLast((code) => code.courtId === courtId);
  const places = [...desk.courts.map((court) => court.courtId), null];
  return {
    desk,
    codeOf,
    phonesOf: (courtId: string) => phones.filter((phone) => phone.courtId === courtId),
    players: players.map(({ playerId, displayName, own }) => ({ playerId, displayName, own })),
    isMissingCodes: places.some((place) => codeOf(place) === undefined),
  };
};
