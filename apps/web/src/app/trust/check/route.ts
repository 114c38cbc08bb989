export const dynamic = "force-dynamic";

/** Reached by https from the plain page of trust: that the answer arrives is all that it tells, so anybody may read it. */
export const GET = (): Response =>
  Response.json(
    { reached: true },
    { headers: { "access-control-allow-origin": "*", "cache-control": "no-store" } },
  );
