/** The browser's storage of that name; undefined where it is refused, as in some private windows. */
export const deviceStorage = (name: "localStorage" | "sessionStorage"): Storage | undefined => {
  try {
    return window[name];
  } catch {
    // Reading the property throws where storage is refused: the callers say what is not kept.
    return undefined;
  }
};
