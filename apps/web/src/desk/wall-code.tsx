import { TakeBackCodeButton } from "./code-actions.tsx";
import type { ShownCode } from "./code-card.tsx";
import { spacedCode } from "./code-links.ts";
import styles from "./desk.module.css";

interface WallCodeProps {
  readonly code: ShownCode;
  readonly publicUrl: string;
  readonly canChange: boolean;
}

/** The code that shows the courts on a screen, and where to enter it. */
export function WallCode({ code, publicUrl, canChange }: WallCodeProps) {
  return (
    <div className={styles.codeCard}>
      <p>
        <span className={styles.quiet}>Wall code, entered at {publicUrl.replace(/\/+$/, "")}/wall</span>
        <b className={styles.code}>
          {code.code === null ? "Take it back, make another" : spacedCode(code.code)}
        </b>
      </p>
      {canChange ? <TakeBackCodeButton codeId={code.codeId} about="of the wall" /> : null}
    </div>
  );
}
