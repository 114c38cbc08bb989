import { readAuthority } from "../_trust/read-authority.ts";

export const dynamic = "force-dynamic";

/** The local authority's certificate, in the type that devices open their certificate settings for. */
export const GET = async (): Promise<Response> => {
  const authority = await readAuthority();
  const headers = { "cache-control": "no-store" };
  if (authority === undefined) {
    const text = "There is no certificate here: Courtloom was not started with --https.\n";
    return new Response(text, { status: 404, headers });
  }
  return new Response(authority.pem, {
    headers: { ...headers, "content-type": "application/x-x509-ca-cert" },
  });
};
