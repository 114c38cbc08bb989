import { AlertsPart } from "../../alerts/alerts-part.tsx";
import type { BoardTools } from "../board-tools.ts";
import { ChangedPart } from "./changed-part.tsx";
import styles from "./panel.module.css";
import { ShowPart } from "./show-part.tsx";

/** Beside the courts, or in a sheet over them: alerts first, then what changed, what to show, and how to read a tile. */
export function PanelBody({ tools }: { readonly tools: BoardTools }) {
  return (
    <>
      <AlertsPart />
      <ChangedPart look={tools.look} />
      <ShowPart store={tools.choice} />
      <p className={styles.key}>
        Under each score: line balls missed. Bead: this match. Its taper: how sure. Woven band: usual for this
        player.
      </p>
    </>
  );
}
