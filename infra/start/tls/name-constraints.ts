import { bareName, PRIVATE_DOMAINS, PRIVATE_RANGES } from "./private-names.ts";
import { Extension, GeneralName } from "./x509.ts";

const NAME_CONSTRAINTS = "2.5.29.30";
const SEQUENCE = 0x30;
const PERMITTED_SUBTREES = 0xa0;
const LONGEST_SHORT = 0x7f;

/** One DER value: tag, length (up to 65,535), content. */
const der = (tag: number, content: Buffer): Buffer => {
  const { length } = content;
  const size =
    length <= LONGEST_SHORT ? [length] : length <= 0xff ? [0x81, length] : [0x82, length >> 8, length & 0xff];
  return Buffer.concat([Buffer.from([tag, ...size]), content]);
};

/**
 * What the authority may vouch for: private domains and address ranges, and this machine's bare name. Whoever
 * got hold of its key could not pass for a public site. RFC 5280, 4.2.1.10; critical, as it asks.
 */
export const nameConstraints = (hostName: string): Extension => {
  const bare = bareName(hostName);
  const names = [
    ...[...PRIVATE_DOMAINS, ...(bare === undefined ? [] : [bare])].map(
      (name) => new GeneralName("dns", name),
    ),
    ...PRIVATE_RANGES.map((range) => new GeneralName("ip", range)),
  ];
  const subtrees = names.map((name) => der(SEQUENCE, Buffer.from(name.rawData)));
  const permitted = der(PERMITTED_SUBTREES, Buffer.concat(subtrees));
  return new Extension(NAME_CONSTRAINTS, true, Uint8Array.from(der(SEQUENCE, permitted)));
};

/** True if an authority was made for a machine of this name. */
export const isConstrainedTo = (extension: Extension | null, hostName: string): boolean =>
  extension !== null && Buffer.from(extension.value).equals(Buffer.from(nameConstraints(hostName).value));

export { NAME_CONSTRAINTS };
