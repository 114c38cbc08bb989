import Link from "next/link";
import { MessagePage } from "../shell/message-page.tsx";
import styles from "../shell/shell.module.css";

/** Missing, and what is not this academy's: they look the same. */
export default function NotFoundPage() {
  return (
    <MessagePage title="There is no such page">
      <p>It may have been removed, or the address was cut short.</p>
      <Link className={styles.link} href="/">
        Go to the start
      </Link>
    </MessagePage>
  );
}
