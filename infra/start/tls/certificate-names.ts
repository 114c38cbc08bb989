import { bareName, firstLabel, isPrivateAddress, isPrivateName } from "./private-names.ts";

/** What the server's certificate is for. Sorted, each once. */
export interface CertificateNames {
  readonly dns: readonly string[];
  readonly ips: readonly string[];
}

export interface Machine {
  readonly hostName: string;
  /** Its addresses on all networks, IPv4 and IPv6. */
  readonly addresses: readonly string[];
  /** Host of PUBLIC_URL, where that is set. */
  readonly publicHost: string | undefined;
}

const sorted = (values: readonly (string | undefined)[]): string[] =>
  [...new Set(values.filter((value) => value !== undefined))].sort();

/** This machine, its name on the local network and its private addresses; public ones are left out. */
export const certificateNames = ({ hostName, addresses, publicHost }: Machine): CertificateNames => {
  const label = firstLabel(hostName);
  const fullNames = [hostName.toLowerCase(), publicHost].filter((name) => name !== undefined);
  const dns = [
    "localhost",
    bareName(hostName),
    label && `${label}.local`,
    ...fullNames.filter(isPrivateName),
  ];
  const bare = publicHost?.replace(/^\[|\]$/g, "");
  const ips = [...addresses, ...(bare === undefined ? [] : [bare])].filter(isPrivateAddress);
  return { dns: sorted(dns), ips: sorted(["127.0.0.1", "::1", ...ips]) };
};
