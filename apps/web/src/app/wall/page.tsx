import type { Metadata } from "next";
import { readTheme } from "../../server/read-theme.ts";
import { problemSentence } from "./_wall/enter-wall.ts";
import styles from "./wall.module.css";

export const metadata: Metadata = {
  title: "Open a wall",
  // Under "no-referrer" a browser hides the origin of a plain form, and the server takes a form from itself only.
  referrer: "same-origin",
};

interface WallEntryProps {
  readonly searchParams: Promise<{ readonly problem?: string | string[] }>;
}

/** Where a screen gets in: a wall code, and nothing else. Works without scripts. */
export default async function WallEntryPage({ searchParams }: WallEntryProps) {
  const theme = (await readTheme()) ?? "dark";
  const { problem } = await searchParams;
  const sentence = problemSentence(typeof problem === "string" ? problem : undefined);
  return (
    <main className={styles.enter} data-theme={theme}>
      <h1>Show the courts here</h1>
      <p>Scores and order of play, for everyone to see.</p>
      {sentence === undefined ? null : (
        <p className={styles.problem} role="alert" id="problem">
          {sentence}
        </p>
      )}
      <form method="post" action="/wall/enter">
        <label htmlFor="code">Wall code from the desk</label>
        <input
          id="code"
          name="code"
          required
          maxLength={12}
          autoComplete="off"
          autoCapitalize="characters"
          spellCheck={false}
          aria-describedby={sentence === undefined ? undefined : "problem"}
        />
        <button type="submit">Show the courts</button>
      </form>
    </main>
  );
}
