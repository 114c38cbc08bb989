import Link from "next/link";
import styles from "./players.module.css";

const PLACES = [
  { id: "figures", label: "Figures", path: "" },
  { id: "line-map", label: "Where the line pays", path: "/line-map" },
] as const;

interface PlayerHeadProps {
  readonly playerId: string;
  readonly displayName: string;
  readonly place: (typeof PLACES)[number]["id"];
}

/** A player's name and the screens about the player. */
export function PlayerHead({ playerId, displayName, place }: PlayerHeadProps) {
  return (
    <div className={styles.head}>
      <h1>{displayName}</h1>
      <nav className={styles.places} aria-label={displayName}>
        {PLACES.map(({ id, label, path }) => (
          <Link
            key={id}
            href={`/players/${playerId}${path}`}
            aria-current={id === place ? "page" : undefined}
          >
            {label}
          </Link>
        ))}
        <Link href={`/plans/${playerId}`}>Plan</Link>
      </nav>
    </div>
  );
}
