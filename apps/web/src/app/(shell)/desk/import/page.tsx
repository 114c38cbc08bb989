import type { Metadata } from "next";
import Link from "next/link";
import { ImportFile } from "../../../../desk/import-file.tsx";
import form from "../../../../form/form.module.css";
import { requireStaff } from "../../../../server/require-staff.ts";
import styles from "../../../../shell/shell.module.css";
import { TopBar } from "../../../../shell/top-bar.tsx";

export const metadata: Metadata = { title: "Entries from a file" };

/** For phones that cannot send: what they saved to a file is taken in here. */
export default async function ImportPage() {
  const { academy } = await requireStaff("/desk/import");
  return (
    <>
      <TopBar title={academy.name} signedIn />
      <main className={`${styles.page} ${styles.narrow}`}>
        <div>
          <h1>Take in entries from a file</h1>
          <p className={styles.lead}>
            A phone that cannot send saves its points under More, This phone. Nothing comes twice: the phone
            may still send by itself later.
          </p>
        </div>
        <ImportFile />
        <p>
          <Link className={form.button} href="/desk">
            All days
          </Link>
        </p>
      </main>
    </>
  );
}
