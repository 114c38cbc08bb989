import { BlockList, isIP } from "node:net";

/** Domains that no public authority answers for: names of one's own network. */
export const PRIVATE_DOMAINS = ["localhost", "local", "lan", "internal", "home.arpa"] as const;

/** Address ranges of one's own machine and network, as CIDR. Link-local IPv6 is missing: browsers cannot open it. */
export const PRIVATE_RANGES = [
  "127.0.0.0/8",
  "10.0.0.0/8",
  "172.16.0.0/12",
  "192.168.0.0/16",
  "169.254.0.0/16",
  "100.64.0.0/10",
  "::1/128",
  "fc00::/7",
] as const;

const LABEL = /^[a-z0-9](?:[a-z0-9-]{0,61}[a-z0-9])?$/;

const ranges = new BlockList();
for (const range of PRIVATE_RANGES) {
  const [net = "", prefix] = range.split("/");
  ranges.addSubnet(net, Number(prefix), net.includes(":") ? "ipv6" : "ipv4");
}

export const isPrivateAddress = (address: string): boolean => {
  const version = isIP(address);
  return version !== 0 && ranges.check(address, version === 6 ? "ipv6" : "ipv4");
};

export const isPrivateName = (name: string): boolean =>
  name.split(".").every((label) => LABEL.test(label)) &&
  PRIVATE_DOMAINS.some((domain) => name === domain || name.endsWith(`.${domain}`));

/** The first label of a host name in lower case; `undefined` if it cannot stand in an address. */
export const firstLabel = (hostName: string): string | undefined => {
  const label = hostName.toLowerCase().split(".")[0] ?? "";
  return LABEL.test(label) ? label : undefined;
};

/**
 * The host name alone, where it cannot also be a public domain: those are letters only, or begin with `xn--`.
 * An authority that may vouch for "dev" could vouch for every address that ends in it.
 */
export const bareName = (hostName: string): string | undefined => {
  const label = firstLabel(hostName);
  const isSafe = label !== undefined && /[0-9-]/.test(label) && /[a-z]/.test(label);
  return isSafe && !label.startsWith("xn--") ? label : undefined;
};
