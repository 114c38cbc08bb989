import { err, ok, type Result } from "@courtloom/core";
import { MAX_LANE_FILE_BYTES } from "@courtloom/protocol/names";
import { fetchRequestHandler } from "@trpc/server/adapters/fetch";
import { getHTTPStatusCodeFromError } from "@trpc/server/http";
import { TRPC_ERROR_CODES_BY_KEY } from "@trpc/server/rpc";
import type { ApiContext } from "./context.ts";
import type { ErrorCode } from "./errors/error-code.ts";
import { failure } from "./errors/failure.ts";
import { isOwnOrigin } from "./own-origin.ts";
import { readBody } from "./read-body.ts";
import { appRouter } from "./router.ts";

const MOST_BYTES = 64 * 1024;
/** Procedures that take a file of entries; only people who are signed in may send so much. */
const TAKES_FILE = /\/lane\.(checkFile|takeInFile)$/;
/** The file, and what stands around it. */
const MOST_FILE_BYTES = MAX_LANE_FILE_BYTES + 1024;
/** An input in the address: no query of ours needs more. */
const LONGEST_SEARCH = 4096;

export interface HandlerOptions {
  /** Where the procedures hang, such as `/api/trpc`. */
  readonly endpoint: string;
  readonly createContext: (
    request: Request,
    setCookie: ApiContext["setCookie"],
  ) => ApiContext | Promise<ApiContext>;
  /** Told of every error that is our fault; the caller was told nothing but "unexpected". */
  readonly report: (error: unknown, path: string) => void;
}

const refuse = (reason: ErrorCode): Response => {
  const error = failure(reason);
  const httpStatus = getHTTPStatusCodeFromError(error);
  const data = { code: error.code, httpStatus, reason };
  return Response.json(
    { error: { code: TRPC_ERROR_CODES_BY_KEY[error.code], message: error.message, data } },
    { status: httpStatus, headers: { "cache-control": "no-store" } },
  );
};

/** What may reach the procedures at all: reads by GET; changes by POST, as JSON, from our own pages, of bounded size. */
const admit = async (
  request: Request,
  mostBytes: () => Promise<number>,
): Promise<Result<Request, ErrorCode>> => {
  if (new URL(request.url).search.length > LONGEST_SEARCH) return err("too_large");
  if (request.method === "GET") return ok(request);
  if (request.method !== "POST") return err("wrong_method");
  if (!isOwnOrigin(request)) return err("forbidden_origin");
  if (!/^application\/json\s*(;|$)/i.test(request.headers.get("content-type") ?? "")) return err("not_json");
  const body = await readBody(request, await mostBytes());
  if (!body.ok) return body;
  return ok(new Request(request.url, { method: "POST", headers: request.headers, body: body.value }));
};

const mostBytesOf = async (
  request: Request,
  createContext: HandlerOptions["createContext"],
): Promise<number> => {
  if (!TAKES_FILE.test(new URL(request.url).pathname)) return MOST_BYTES;
  const asks = await (await createContext(request, () => undefined)).principal();
  return asks.ok && asks.value.kind === "account" ? MOST_FILE_BYTES : MOST_BYTES;
};

/** Answers every request under the endpoint; never throws. Rules AP4 and AP6. */
export const createHandler =
  ({ endpoint, createContext, report }: HandlerOptions) =>
  async (request: Request): Promise<Response> => {
    try {
      const admitted = await admit(request, () => mostBytesOf(request, createContext));
      if (!admitted.ok) return refuse(admitted.error);
      const response = await fetchRequestHandler({
        endpoint,
        req: admitted.value,
        router: appRouter,
        allowBatching: false,
        createContext: ({ resHeaders }) =>
          createContext(request, ({ header }) => resHeaders.append("set-cookie", header)),
        onError: ({ error, path }) => {
          if (error.code === "INTERNAL_SERVER_ERROR") report(error.cause ?? error, path ?? "");
        },
      });
      response.headers.set("cache-control", "no-store");
      return response;
    } catch (error) {
      report(error, "");
      return refuse("unexpected");
    }
  };
