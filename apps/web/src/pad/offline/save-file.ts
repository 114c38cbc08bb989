import type { LaneFile } from "@courtloom/protocol";

/** A part of a file's name: small letters, digits and single dashes. */
const plain = (text: string): string =>
  text
    .normalize("NFD")
    .toLowerCase()
    .replace(/[\u0300-\u036f]/g, "")
    .replace(/[^a-z0-9]+/g, "-")
    .replace(/^-+|-+$/g, "");

/** `courtloom-<court>-<date>.json`, the date by this phone's clock and zone. */
export const fileName = (courtName: string, writtenMs: number): string => {
  const at = new Date(writtenMs);
  const two = (n: number) => String(n).padStart(2, "0");
  const date = `${at.getFullYear()}-${two(at.getMonth() + 1)}-${two(at.getDate())}`;
  return `courtloom-${plain(courtName) || "court"}-${date}.json`;
};

export const entryCount = ({ lanes }: LaneFile): number =>
  lanes.reduce((sum, { entries }) => sum + entries.length, 0);

/** Hands a file to the browser, which saves it where downloads go. */
export const saveFile = (file: LaneFile, name: string): void => {
  const url = URL.createObjectURL(new Blob([JSON.stringify(file)], { type: "application/json" }));
  const link = document.createElement("a");
  link.href = url;
  link.download = name;
  link.click();
  // The browser has taken the bytes once the click was handled; a moment later nothing holds them.
  setTimeout(() => URL.revokeObjectURL(url), 10_000);
};
