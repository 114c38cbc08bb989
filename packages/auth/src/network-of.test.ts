import { describe, expect, it } from "vitest";
import { networkOf } from "./network-of.ts";

describe("the network of an address", () => {
  it.each([
    ["192.0.2.7", "192.0.2.7"],
    [" 192.0.2.7 ", "192.0.2.7"],
    ["::ffff:192.0.2.7", "192.0.2.7"],
    ["0:0:0:0:0:ffff:c000:207", "192.0.2.7"],
    ["2001:db8:1:2::1", "2001:db8:1:2::/64"],
    ["2001:0DB8:0001:0002:aaaa:bbbb:cccc:dddd", "2001:db8:1:2::/64"],
    ["[2001:db8:1:2::9]", "2001:db8:1:2::/64"],
    ["fe80::1%eth0", "fe80:0:0:0::/64"],
    ["::1", "0:0:0:0::/64"],
    ["2001:db8::", "2001:db8:0:0::/64"],
    ["", "unknown"],
    ["club.example", "unknown"],
    ["192.0.2.7, 198.51.100.1", "unknown"],
  ])("[AU15] of %j is %j", (address, network) => expect(networkOf(address)).toBe(network));
});
