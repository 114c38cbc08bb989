import "server-only";
import type { ApiContext } from "@courtloom/api";
import { isUnavailable } from "@courtloom/db";
import { addressOf } from "./address-of.ts";
import { demoLoader } from "./demo-loader.ts";
import { services } from "./services.ts";

/** What the procedures work with, for one request with these headers. */
export const apiContext = (headers: Headers, setCookie: ApiContext["setCookie"]): ApiContext => {
  const { auth, days, entries, history, clock } = services();
  const cookieHeader = headers.get("cookie") ?? undefined;
  return {
    principal: () => auth.principalOf(cookieHeader),
    store: days,
    log: entries,
    history,
    auth,
    demo: demoLoader(),
    clock,
    cookieHeader,
    address: addressOf(headers),
    setCookie,
    isUnavailable,
  };
};
