import Link from "next/link";
import { MessagePage } from "../shell/message-page.tsx";
import styles from "../shell/shell.module.css";

/** Signed in, but not for this. */
export default function ForbiddenPage() {
  return (
    <MessagePage title="This is not yours to see">
      <p>Ask the director of the academy, who gives out access.</p>
      <Link className={styles.link} href="/">
        Go to the start
      </Link>
    </MessagePage>
  );
}
