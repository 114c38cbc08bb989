import "server-only";
import { cache } from "react";
import { pageApi } from "./page-api.ts";

/** Who asks for this page, and their academy; read once per request. */
export const me = cache(async () => (await pageApi()).account.me());

export type Me = Awaited<ReturnType<typeof me>>;
