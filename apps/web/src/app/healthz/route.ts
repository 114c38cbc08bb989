import { instanceId } from "../../env.ts";

export const dynamic = "force-dynamic";

/** Says that this process serves, and for which start of the product. */
export const GET = (): Response =>
  Response.json({ instanceId: instanceId(), ok: true }, { headers: { "cache-control": "no-store" } });
