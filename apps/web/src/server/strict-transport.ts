const ONE_YEAR_S = 31_536_000;

interface Asked {
  /** As the front door wrote it. */
  readonly protocol: string | null;
  readonly host: string;
  readonly publicUrl: string;
  readonly hasLocalAuthority: boolean;
}

/**
 * The value of Strict-Transport-Security, or undefined where it would do harm: browsers keep it for a year and for
 * every port of the host, so that a local name, or another port of one's own, could not be opened any longer.
 */
export const strictTransport = (asked: Asked): string | undefined => {
  const own = URL.parse(asked.publicUrl);
  const isOwn = own?.protocol === "https:" && own.port === "" && own.host === asked.host.toLowerCase();
  return isOwn && asked.protocol === "https" && !asked.hasLocalAuthority
    ? `max-age=${ONE_YEAR_S}`
    : undefined;
};
