import { describe, expect, it } from "vitest";
import { padLink, spacedCode } from "./code-links.ts";
import { qrPath } from "./qr-path.ts";

describe("codes on the desk", () => {
  it("[WB3] puts the code into the fragment, where no server and no log sees it", () => {
    const url = new URL(padLink("http://192.0.2.10:3000/", "ABC234"));
    expect(url.hash).toBe("#code=ABC234");
    expect(url.pathname + url.search).toBe("/pad");
  });

  it("[WB3] reads out in two halves", () => {
    expect(spacedCode("ABC234")).toBe("ABC 234");
  });

  it("[WB3] draws dark modules inside a quiet zone of four", () => {
    const { size, path } = qrPath("http://192.0.2.10:3000/pad#code=ABC234");
    const places = [...path.matchAll(/M(\d+) (\d+)/g)].map((m) => [Number(m[1]), Number(m[2])]);
    expect(places.length).toBeGreaterThan(200);
    for (const place of places.flat()) {
      expect(place).toBeGreaterThanOrEqual(4);
      expect(place).toBeLessThan(size - 4);
    }
  });
});
