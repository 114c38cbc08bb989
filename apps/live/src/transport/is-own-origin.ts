/**
 * May a WebSocket from this page be opened? Only a page of the very host that the request was sent to, as the
 * front door passed it on; port included. A browser always says its origin; a client that is none has to
 * say it too. Cross-origin settings do not guard WebSockets: this does. SPEC LV19.
 */
export const isOwnOrigin = (origin: string | undefined, host: string | undefined): boolean => {
  if (origin === undefined || host === undefined || !URL.canParse(origin)) return false;
  const page = new URL(origin);
  const bare = origin === page.origin;
  return (
    bare && (page.protocol === "http:" || page.protocol === "https:") && page.host === host.toLowerCase()
  );
};
