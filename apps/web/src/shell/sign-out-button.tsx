"use client";
import { useState } from "react";
import { signOut } from "../sign-in/account-calls.ts";
import styles from "./shell.module.css";

/** Ends the session on this device and leaves for the sign-in page. */
export function SignOutButton() {
  const [label, setLabel] = useState("Sign out");
  const leave = async () => {
    setLabel("Signing out");
    const refusal = await signOut();
    if (refusal === undefined) location.assign("/sign-in");
    else setLabel("Not signed out. Try again");
  };
  return (
    <button type="button" className={styles.tool} onClick={leave}>
      {label}
    </button>
  );
}
