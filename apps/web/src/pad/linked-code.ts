/** The code in a link's fragment, `#code=ABC234`, as the desk's QR codes have it; `undefined` for any other. SPEC PD19. */
export const codeInFragment = (fragment: string): string | undefined =>
  /^#code=([a-z0-9]{1,12})$/i.exec(fragment)?.[1]?.toUpperCase();

/**
 * Takes the code out of this page's address, so that it is neither seen over a shoulder nor kept as a
 * bookmark; `undefined` when there is none.
 */
export const takeLinkedCode = (): string | undefined => {
  const code = codeInFragment(location.hash);
  if (code !== undefined) history.replaceState(history.state, "", location.pathname + location.search);
  return code;
};
