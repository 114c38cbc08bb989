import { createHandler } from "@courtloom/api";
import { apiContext } from "../../../../server/api-context.ts";
import { log } from "../../../../server/log.ts";

export const dynamic = "force-dynamic";

const handle = createHandler({
  endpoint: "/api/trpc",
  createContext: (request, setCookie) => apiContext(request.headers, setCookie),
  report: (error, path) => log.error({ err: error, path }, "a procedure failed"),
});

export { handle as GET, handle as POST };
