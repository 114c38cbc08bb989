import type { Metadata } from "next";
import Link from "next/link";
import { dateIn } from "../../../desk/date-in.ts";
import { NewDayForm } from "../../../desk/new-day-form.tsx";
import { sayDate } from "../../../desk/say-date.ts";
import { pageApi } from "../../../server/page-api.ts";
import { requireStaff } from "../../../server/require-staff.ts";
import { services } from "../../../server/services.ts";
import styles from "../../../shell/shell.module.css";
import { TopBar } from "../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Days" };

/** The academy's days, and the form for another. */
export default async function DaysPage() {
  const { member, academy } = await requireStaff("/desk");
  const { days } = await (await pageApi()).day.list();
  const today = dateIn(academy.timeZone, services().clock.wallMs());
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${styles.page} ${styles.narrow}`}>
        <h1>Days</h1>
        {days.length === 0 ? (
          <p>No day yet. {member.role === "director" ? "Make the first one." : "The director makes one."}</p>
        ) : (
          <ul className={styles.list}>
            {days.map((day) => (
              <li key={day.dayId}>
                <Link href={`/desk/${day.dayId}`}>
                  {day.name}
                  <time dateTime={day.date}>
                    {sayDate(day.date)}
                    {day.date === today ? ", today" : ""}
                  </time>
                </Link>
              </li>
            ))}
          </ul>
        )}
        <p>
          <Link className={styles.link} href="/desk/import">
            Take in entries from a file
          </Link>
        </p>
        {member.role === "director" ? (
          <section className={styles.part} aria-labelledby="new-day">
            <h2 id="new-day">A new day</h2>
            <NewDayForm today={today} />
          </section>
        ) : null}
      </main>
    </>
  );
}
