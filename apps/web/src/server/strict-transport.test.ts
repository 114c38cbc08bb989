import { describe, expect, it } from "vitest";
import { strictTransport } from "./strict-transport.ts";

const asked = {
  protocol: "https",
  host: "courts.example",
  publicUrl: "https://courts.example",
  hasLocalAuthority: false,
};

describe("strict transport", () => {
  it("[WB10] goes out for the host that people open, over https", () => {
    expect(strictTransport(asked)).toBe("max-age=31536000");
  });

  it.each([
    ["plain http", { protocol: "http" }],
    ["no protocol", { protocol: null }],
    ["another host", { host: "192.168.1.7:3443" }],
    ["a plain address", { publicUrl: "http://courts.example" }],
    ["a port of one's own", { publicUrl: "https://courts.example:3443", host: "courts.example:3443" }],
    ["a local authority", { hasLocalAuthority: true }],
    ["a build", { publicUrl: "" }],
  ])("[WB10] does not go out with %s", (_what, change) => {
    expect(strictTransport({ ...asked, ...change })).toBeUndefined();
  });
});
