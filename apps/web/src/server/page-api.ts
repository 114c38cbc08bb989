import "server-only";
import { createCaller } from "@courtloom/api";
import { headers } from "next/headers";
import { cache } from "react";
import { apiContext } from "./api-context.ts";

const refuseCookie = (): never => {
  throw new Error("bug: a page cannot set a cookie; use a procedure from the browser");
};

/** The procedures as whoever asks for this page, with the same checks as over the wire; one per request. */
export const pageApi = cache(async () =>
  createCaller(apiContext(new Headers(await headers()), refuseCookie)),
);
