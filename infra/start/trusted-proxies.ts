import { BlockList, isIP } from "node:net";
import { err, ok, type Result } from "@courtloom/core";

/** True for the address of something in front of ours whose word about its visitors is believed. */
export type IsTrusted = (address: string) => boolean;

const LONGEST_PREFIX = { 4: 32, 6: 128 } as const;

/** `::ffff:192.0.2.7` is how a socket for both versions writes 192.0.2.7. */
export const plainAddress = (address: string): string => address.trim().replace(/^::ffff:(?=\d+\.)/i, "");

/** One address or CIDR range into the list; false if it is neither. */
function add(list: BlockList, item: string): boolean {
  const [address = "", prefix, ...more] = item.split("/");
  const version = isIP(address);
  if (more.length > 0 || (version !== 4 && version !== 6)) return false;
  const length = prefix === undefined ? LONGEST_PREFIX[version] : Number(prefix);
  const isLength = prefix === undefined || /^\d{1,3}$/.test(prefix);
  if (!isLength || length > LONGEST_PREFIX[version]) return false;
  list.addSubnet(address, length, version === 4 ? "ipv4" : "ipv6");
  return true;
}

/** Reads addresses and CIDR ranges with commas between. The error is the item that is neither. */
export function parseTrustedProxies(text: string): Result<IsTrusted, string> {
  const list = new BlockList();
  const items = text.split(",").map((item) => item.trim());
  const wrong = items.filter((item) => item !== "").find((item) => !add(list, item));
  if (wrong !== undefined) return err(wrong);
  return ok((address) => {
    const plain = plainAddress(address);
    const version = isIP(plain);
    return version !== 0 && list.check(plain, version === 4 ? "ipv4" : "ipv6");
  });
}

export const trustsNobody: IsTrusted = () => false;
