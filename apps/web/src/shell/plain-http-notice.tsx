"use client";
import { useSyncExternalStore } from "react";
import styles from "./shell.module.css";

const never = () => () => undefined;

/** Says what is missing where this page came over plain http; nothing over https or on this machine itself. */
export function PlainHttpNotice() {
  const secure = useSyncExternalStore(
    never,
    () => window.isSecureContext,
    () => true,
  );
  if (secure) return null;
  return (
    <p className={styles.note} role="note">
      <b>This address is plain http.</b> Charting works while its page stays open. The page cannot be opened
      without a network, and the screen may go dark. For both, start with <code>npm start -- --https</code>.
    </p>
  );
}
