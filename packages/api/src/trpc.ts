import { initTRPC } from "@trpc/server";
import type { ApiContext } from "./context.ts";
import { shapeError } from "./errors/error-shape.ts";

/** Plain JSON on the wire: all times are numbers and all absence is null, so nothing needs a richer form. */
export const trpc = initTRPC.context<ApiContext>().create({ isDev: false, errorFormatter: shapeError });
