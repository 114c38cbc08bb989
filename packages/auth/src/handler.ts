import type { Auth, AuthOptions, SignInRefusal } from "./auth.ts";
import type { SetCookie } from "./set-cookie.ts";

type HandlerRefusal =
  | SignInRefusal
  | "not_found"
  | "forbidden_origin"
  | "not_json"
  | "bad_shape"
  | "too_large"
  | "unavailable";

const STATUS = {
  wrong_credentials: 401,
  too_many_tries: 429,
  not_found: 404,
  forbidden_origin: 403,
  not_json: 415,
  bad_shape: 400,
  too_large: 413,
  unavailable: 503,
} as const satisfies Record<HandlerRefusal, number>;

const MOST_BYTES = 4096;
const LONGEST_FIELD = 1024;

const reply = (status: number, body: unknown, cookie?: SetCookie): Response => {
  const headers = new Headers({ "content-type": "application/json", "cache-control": "no-store" });
  if (cookie) headers.append("set-cookie", cookie.header);
  return new Response(JSON.stringify(body), { status, headers });
};

const refuse = (code: HandlerRefusal): Response => reply(STATUS[code], { ok: false, code });

/** A page of another site may not act for who is signed in here: the origin must be the host that was asked. */
const isOwnOrigin = (request: Request, baseUrl: string | undefined): boolean => {
  const origin = request.headers.get("origin");
  if (origin === null || !URL.canParse(origin)) return false;
  const own = baseUrl === undefined ? undefined : new URL(baseUrl).origin;
  if (own !== undefined) return new URL(origin).origin === own;
  return new URL(origin).host === (request.headers.get("host") ?? new URL(request.url).host);
};

const isField = (value: unknown): value is string =>
  typeof value === "string" && value.length > 0 && value.length <= LONGEST_FIELD;

const parseCredentials = (text: string): { email: string; password: string } | undefined => {
  try {
    const body: unknown = JSON.parse(text);
    if (typeof body !== "object" || body === null) return undefined;
    const { email, password } = body as Record<string, unknown>;
    return isField(email) && isField(password) ? { email, password } : undefined;
  } catch (error) {
    if (error instanceof SyntaxError) return undefined;
    throw error;
  }
};

interface HandlerOptions {
  readonly signIn: Auth["signIn"];
  readonly signOut: Auth["signOut"];
  readonly options: AuthOptions;
}

const makeSignInRoute =
  ({ signIn, options }: HandlerOptions) =>
  async (request: Request, cookieHeader: string | undefined): Promise<Response> => {
    if (!request.headers.get("content-type")?.startsWith("application/json")) return refuse("not_json");
    const text = await request.text();
    if (text.length > MOST_BYTES) return refuse("too_large");
    const credentials = parseCredentials(text);
    if (credentials === undefined) return refuse("bad_shape");
    const address = options.addressOf?.(request.headers) ?? "";
    const signedIn = await signIn({ ...credentials, address, cookieHeader });
    return signedIn.ok ? reply(200, { ok: true }, signedIn.value.setCookie) : refuse(signedIn.error);
  };

/** The few routes that a browser reaches directly. What is not named here does not exist. */
export const makeHandler = (own: HandlerOptions): Auth["handler"] => {
  const signInRoute = makeSignInRoute(own);
  const route = async (request: Request): Promise<Response> => {
    const { pathname } = new URL(request.url);
    const isSignIn = pathname === "/api/auth/sign-in/email";
    if (request.method !== "POST" || !(isSignIn || pathname === "/api/auth/sign-out")) {
      return refuse("not_found");
    }
    if (!isOwnOrigin(request, own.options.baseUrl)) return refuse("forbidden_origin");
    const cookieHeader = request.headers.get("cookie") ?? undefined;
    if (isSignIn) return signInRoute(request, cookieHeader);
    return reply(200, { ok: true }, (await own.signOut(cookieHeader)).setCookie);
  };
  return async (request) => {
    try {
      return await route(request);
    } catch (error) {
      console.error(
        "sign-in failed for a reason of its own:",
        error instanceof Error ? error.message : "unknown",
      );
      return refuse("unavailable");
    }
  };
};
