const NAME = /^(?:[A-Za-z0-9.-]+|\[[0-9a-f:.]+\])$/i;

/** The https origin, at that port, of the host that was asked; undefined for a host that is none. */
export const httpsOrigin = (host: string, httpsPort: number): string | undefined => {
  const name = host.replace(/:\d{1,5}$/, "");
  return NAME.test(name) ? URL.parse(`https://${name}:${httpsPort}`)?.origin : undefined;
};
