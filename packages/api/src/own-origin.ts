/**
 * Whether a request comes from a page of this very site: its Origin names the host that was asked. Browsers
 * always send it with what changes something, so a request without one is refused too. Rule AP6.
 */
export const isOwnOrigin = (request: Request): boolean => {
  const origin = request.headers.get("origin");
  if (origin === null || !URL.canParse(origin)) return false;
  return new URL(origin).host === (request.headers.get("host") ?? new URL(request.url).host);
};
