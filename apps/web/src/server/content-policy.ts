/** A host as browsers write it: name or address, and port. Anything else is left out of the policy. */
const HOST = /^[A-Za-z0-9.-]+(:\d{1,5})?$|^\[[0-9a-f:.]+\](:\d{1,5})?$/i;

interface PolicyOptions {
  /** Base64, new for each response. */
  readonly nonce: string;
  /** The host that was asked, as the browser sent it. */
  readonly host: string;
  /** The development server needs `eval` for its error pages. */
  readonly development: boolean;
  /** One more origin that the page may connect to. */
  readonly alsoReaches?: string | undefined;
}

/**
 * What a page may load and where it may connect: its own files, its own host by http and WebSocket. Inline
 * `style` attributes are allowed, since sizes and places of what is drawn are given by them; inline scripts
 * are not. Rule WB1.
 */
export const contentPolicy = ({ nonce, host, development, alsoReaches }: PolicyOptions): string => {
  const sockets = HOST.test(host) ? ` ws://${host} wss://${host}` : "";
  return [
    "default-src 'self'",
    `script-src 'self' 'nonce-${nonce}' 'strict-dynamic'${development ? " 'unsafe-eval'" : ""}`,
    `style-src 'self' ${development ? "'unsafe-inline'" : `'nonce-${nonce}'`}`,
    "style-src-attr 'unsafe-inline'",
    "img-src 'self' data: blob:",
    "font-src 'self'",
    `connect-src 'self'${sockets}${alsoReaches ? ` ${alsoReaches}` : ""}`,
    "worker-src 'self'",
    "manifest-src 'self'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'self'",
    "frame-ancestors 'none'",
  ].join("; ");
};
