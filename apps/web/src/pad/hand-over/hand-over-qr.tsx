import { useEffect, useState } from "react";
import type { QrDrawing } from "../../desk/qr-path.ts";
import styles from "./hand-over.module.css";

/** The drawing comes with a script of its own, which the pad does without until somebody hands over. */
const useDrawing = (text: string): QrDrawing | undefined => {
  const [drawing, setDrawing] = useState<QrDrawing>();
  useEffect(() => {
    let wanted = true;
    const draw = async () => {
      try {
        const { qrPath } = await import("../../desk/qr-path.ts");
        if (wanted) setDrawing(qrPath(text));
      } catch {
        // The script was not reached: the code above is typed instead.
        return;
      }
    };
    void draw();
    return () => {
      wanted = false;
    };
  }, [text]);
  return drawing;
};

/** A link as a QR code, dark on white in every theme: phones read nothing else. */
export const HandOverQr = ({ link }: { readonly link: string }) => {
  const drawing = useDrawing(link);
  if (!drawing) return <div className={styles.qr} />;
  const { size, path } = drawing;
  return (
    <svg
      className={styles.qr}
      viewBox={`0 0 ${size} ${size}`}
      role="img"
      aria-label="QR code of a link that opens this match on another phone"
      data-testid="hand-over-qr"
      data-link={link}
    >
      <path fill="#fff" d={`M0 0h${size}v${size}H0z`} />
      <path fill="#000" d={path} shapeRendering="crispEdges" />
    </svg>
  );
};
