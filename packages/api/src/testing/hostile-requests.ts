import fc from "fast-check";
import { ORIGIN } from "./make-api.ts";

interface Sample {
  readonly kind: "query" | "mutation";
  readonly input: unknown;
}

export interface HostileRequest {
  readonly what: string;
  readonly request: Request;
}

/** JSON texts that no procedure may accept in place of its input. */
const POISON = [
  '{"__proto__":{"polluted":true}}',
  '{"constructor":{"prototype":{"polluted":true}}}',
  `${"[".repeat(3000)}${"]".repeat(3000)}`,
  '{"a":1e400}',
  '"\\ud800"',
  "{",
  "\u0000",
  "NaN",
  "[]",
  '"x"',
  "true",
  "7",
];

/** Values that fit no field of any procedure, whatever its type. */
const MISFITS: readonly unknown[] = [
  { $ne: null },
  [[[]]],
  ["' or 1=1 --"],
  "x\u0000y",
  "\u202Edesrever",
  "a".repeat(5000),
  -1.5,
  Number.MAX_SAFE_INTEGER,
  "../../etc/passwd\u0000",
];

const json = (kind: Sample["kind"], path: string, text: string): Request =>
  kind === "query"
    ? new Request(`${ORIGIN}/api/trpc/${path}?input=${encodeURIComponent(text)}`)
    : new Request(`${ORIGIN}/api/trpc/${path}`, {
        method: "POST",
        headers: { "content-type": "application/json", origin: ORIGIN },
        body: text,
      });

/** Wrong in how it is sent, whatever it says. */
const wrongTransport = (path: string, { kind, input }: Sample): HostileRequest[] => {
  const url = `${ORIGIN}/api/trpc/${path}`;
  const body = JSON.stringify(input) ?? "{}";
  const post = (what: string, headers: Record<string, string>, text: string = body) => ({
    what,
    request: new Request(url, { method: "POST", headers, body: text }),
  });
  const type = { "content-type": "application/json" };
  const changed = kind === "mutation" ? [{ what: "GET of a change", request: new Request(url) }] : [];
  return [
    ...changed,
    post("no origin", type),
    post("foreign origin", { ...type, origin: "http://elsewhere.example" }),
    post("null origin", { ...type, origin: "null" }),
    post("plain text", { "content-type": "text/plain", origin: ORIGIN }),
    post("a form", { "content-type": "application/x-www-form-urlencoded", origin: ORIGIN }),
    post("much too much", { ...type, origin: ORIGIN }, `"${"a".repeat(80_000)}"`),
    { what: "DELETE", request: new Request(url, { method: "DELETE", headers: { origin: ORIGIN } }) },
    { what: "unknown procedure", request: json("query", `${path}x`, "{}") },
    { what: "inherited name", request: json("query", "constructor", "{}") },
    { what: "a batch", request: json(kind, `${path},${path}?batch=1`, '{"0":{},"1":{}}') },
  ];
};

/** The sample with one field taken away, added or put wrong; and texts that are no input at all. */
const wrongShape = ({ input }: Sample): fc.Arbitrary<{ what: string; text: string }> => {
  const fields = Object.keys(input ?? {});
  if (fields.length === 0) return fc.constantFrom(...POISON).map(asPoison);
  const put = (key: string, value: unknown) => JSON.stringify({ ...(input as object), [key]: value });
  return fc.oneof(
    fc.constantFrom(...POISON).map(asPoison),
    fc
      .tuple(fc.constantFrom(...fields), fc.constantFrom(...MISFITS))
      .map(([key, value]) => ({ what: `${key} put wrong`, text: put(key, value) })),
    fc
      .tuple(fc.stringMatching(/^[a-z]{1,12}$/), fc.jsonValue({ maxDepth: 3 }))
      .map(([key, value]) => ({ what: `unknown ${key}`, text: put(`${key}_`, value) })),
  );
};

const asPoison = (text: string) => ({ what: `poison ${text.slice(0, 24)}`, text });

/** `count` requests against one procedure that none may accept, always the same ones for a seed. */
export const hostileRequests = (
  path: string,
  sample: Sample,
  seed: number,
  count: number,
): HostileRequest[] => {
  const transport = wrongTransport(path, sample);
  const shaped = fc.sample(wrongShape(sample), { seed, numRuns: Math.max(0, count - transport.length) });
  return [
    ...transport,
    ...shaped.map(({ what, text }) => ({ what, request: json(sample.kind, path, text) })),
  ];
};
