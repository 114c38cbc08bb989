import QRCode from "qrcode";

/** Modules of white around the code, as readers need them. */
const QUIET = 4;

export interface QrDrawing {
  /** Side of the square, quiet zone included, in modules. */
  readonly size: number;
  /** Path of the dark modules. */
  readonly path: string;
}

/** A text as a QR code to draw at any size. */
export const qrPath = (text: string): QrDrawing => {
  const { modules } = QRCode.create(text, { errorCorrectionLevel: "M" });
  const rows = Array.from({ length: modules.size }, (_, row) =>
    Array.from({ length: modules.size }, (_, column) =>
      modules.get(row, column) ? `M${column + QUIET} ${row + QUIET}h1v1h-1z` : "",
    ).join(""),
  );
  return { size: modules.size + 2 * QUIET, path: rows.join("") };
};
