import { FIGURE_GROUPS } from "./figure-groups.ts";
import styles from "./players.module.css";

const PLACES = [
  ...FIGURE_GROUPS.map(({ id, title }) => ({ id: `group-${id}`, title })),
  { id: "cost", title: "What off-plan choices went with" },
  { id: "biggest", title: "The biggest points" },
  { id: "matches", title: "Matches counted" },
];

/** The way down a long page. */
export function GroupLinks() {
  return (
    <nav className={styles.links} aria-label="On this page">
      {PLACES.map(({ id, title }) => (
        <a key={id} href={`#${id}`}>
          {title}
        </a>
      ))}
    </nav>
  );
}
