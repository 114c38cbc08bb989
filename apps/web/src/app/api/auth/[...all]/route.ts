import { services } from "../../../../server/services.ts";

export const dynamic = "force-dynamic";

/** Sign-in and sign-out; what the accounts do not name is not found. */
export const POST = (request: Request): Promise<Response> => services().auth.handler(request);
