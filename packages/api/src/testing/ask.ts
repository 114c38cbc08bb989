import { ORIGIN } from "./make-api.ts";

/** A request as a browser of our own pages sends it. */
export const ask = (path: string, kind: "query" | "mutation", input: unknown): Request => {
  const url = `${ORIGIN}/api/trpc/${path}`;
  if (kind === "query") {
    const search = input === undefined ? "" : `?input=${encodeURIComponent(JSON.stringify(input))}`;
    return new Request(url + search);
  }
  return new Request(url, {
    method: "POST",
    headers: { "content-type": "application/json", origin: ORIGIN },
    body: JSON.stringify(input) ?? "",
  });
};

export interface Answer {
  readonly status: number;
  /** Undefined when it went well. */
  readonly reason: string | undefined;
  readonly text: string;
}

export const readAnswer = async (response: Response): Promise<Answer> => {
  const text = await response.text();
  const body = JSON.parse(text) as { error?: { data?: { reason?: string } } };
  return { status: response.status, reason: body.error?.data?.reason, text };
};
