/** What a browser's storage held; undefined where it is nothing that this product wrote. */
export const parseJson = (text: string | null): unknown => {
  if (text === null) return undefined;
  try {
    return JSON.parse(text);
  } catch {
    // Cut off, or written by something else: as good as nothing, and replaced with the next writing.
    return undefined;
  }
};
