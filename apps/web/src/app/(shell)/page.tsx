import { redirect } from "next/navigation";
import { currentDay } from "../../desk/current-day.ts";
import { me } from "../../server/me.ts";
import { pageApi } from "../../server/page-api.ts";
import { services } from "../../server/services.ts";

/** No screen of its own: leads to the current day's board, to signing in, or to setting up. */
export default async function StartPage(): Promise<never> {
  const api = await pageApi();
  const { member, academy } = await me();
  if (member && academy) {
    const { days } = await api.day.list();
    const day = currentDay(days, academy.timeZone, services().clock.wallMs());
    redirect(day ? `/board/${day.dayId}` : "/desk");
  }
  const { hasAcademy, hasDemo } = await api.setup.status();
  redirect(hasAcademy || hasDemo ? "/sign-in" : "/setup");
}
