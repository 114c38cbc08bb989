import { isIPv4, isIPv6 } from "node:net";

const GROUPS = 8;
const NETWORK_GROUPS = 4;

const expand = (address: string): readonly string[] => {
  const [head = "", tail] = address.split("::");
  const left = head === "" ? [] : head.split(":");
  const right = tail === undefined || tail === "" ? [] : tail.split(":");
  const zeros = tail === undefined ? 0 : GROUPS - left.length - right.length;
  return [...left, ...Array<string>(Math.max(0, zeros)).fill("0"), ...right];
};

const mapped = (groups: readonly string[]): string | undefined => {
  const [high, low] = groups.slice(6).map((group) => Number.parseInt(group, 16));
  const isMapped = groups.slice(0, 5).every((group) => group === "0") && groups[5] === "ffff";
  if (!isMapped || high === undefined || low === undefined) return undefined;
  return [high >> 8, high & 255, low >> 8, low & 255].join(".");
};

/**
 * The network that limits are kept for: an IPv4 address whole, an IPv6 address by its first 64 bits (one
 * household has them all), an IPv4 address in IPv6 clothing as IPv4. What is no address shares one bucket.
 */
export const networkOf = (address: string): string => {
  const plain = address.trim().replace(/^\[|\]$|%.*$/g, "");
  if (isIPv4(plain)) return plain;
  if (!isIPv6(plain)) return "unknown";
  const canonical = new URL(`http://[${plain}]/`).hostname.slice(1, -1);
  const groups = expand(canonical);
  return mapped(groups) ?? `${groups.slice(0, NETWORK_GROUPS).join(":")}::/64`;
};
