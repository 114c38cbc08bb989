import { err, ok, type Result } from "@courtloom/core";

/**
 * The text of a request's body, read no further than `mostBytes`; whatever length it claims. Bytes that are
 * no UTF-8 become replacement characters, which no JSON of ours holds.
 */
export const readBody = async (request: Request, mostBytes: number): Promise<Result<string, "too_large">> => {
  if (request.body === null) return ok("");
  const reader = request.body.getReader();
  const chunks: Uint8Array[] = [];
  let size = 0;
  for (let part = await reader.read(); !part.done; part = await reader.read()) {
    size += part.value.byteLength;
    if (size > mostBytes) {
      await reader.cancel();
      return err("too_large");
    }
    chunks.push(part.value);
  }
  return ok(Buffer.concat(chunks).toString("utf8"));
};
