import styles from "./desk.module.css";
import { qrPath } from "./qr-path.ts";

interface QrCodeProps {
  readonly text: string;
  /** What a phone finds behind it. */
  readonly label: string;
}

/** Dark on white in every theme: phones read nothing else. */
export function QrCode({ text, label }: QrCodeProps) {
  const { size, path } = qrPath(text);
  return (
    <svg className={styles.qr} viewBox={`0 0 ${size} ${size}`} role="img" aria-label={label}>
      <path fill="#fff" d={`M0 0h${size}v${size}H0z`} />
      <path fill="#000" d={path} shapeRendering="crispEdges" />
    </svg>
  );
}
