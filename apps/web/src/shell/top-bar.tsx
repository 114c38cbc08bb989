import Link from "next/link";
import { readTheme } from "../server/read-theme.ts";
import styles from "./shell.module.css";
import { SignOutButton } from "./sign-out-button.tsx";
import { ThemeSwitch } from "./theme-switch.tsx";

interface TopBarProps {
  /** The academy's name, or the product's where nobody is signed in. */
  readonly title: string;
  readonly day?: string;
  readonly signedIn: boolean;
}

/** The bar of every screen that has room for one. */
export async function TopBar({ title, day, signedIn }: TopBarProps) {
  return (
    <header className={styles.bar}>
      <div className={styles.names}>
        <Link className={styles.academy} href={signedIn ? "/desk" : "/"}>
          {title}
        </Link>
        {day ? <span className={styles.day}>{day}</span> : null}
      </div>
      {signedIn ? (
        <nav className={styles.places} aria-label="Academy">
          <Link href="/desk">Days</Link>
          <Link href="/players">Players</Link>
          <Link href="/plans">Plans</Link>
          <Link href="/watches">Watches</Link>
        </nav>
      ) : null}
      <div className={styles.tools}>
        <ThemeSwitch theme={await readTheme()} />
        {signedIn ? <SignOutButton /> : null}
      </div>
    </header>
  );
}
