import "server-only";
import { notFound } from "next/navigation";
import { dateIn } from "../desk/date-in.ts";
import { pageApi } from "../server/page-api.ts";
import { requireStaff } from "../server/require-staff.ts";
import { services } from "../server/services.ts";

/** An own player whom a page is about, and today by the academy's clocks; anybody else is "no such page". */
export const readPlayer = async (playerId: string, path: string) => {
  const { academy } = await requireStaff(`/players/${playerId}${path}`);
  const { players } = await (await pageApi()).player.list({ ownOnly: true });
  const player = players.find((each) => each.playerId === playerId);
  if (player === undefined) notFound();
  return { academy, player, today: dateIn(academy.timeZone, services().clock.wallMs()) };
};
