import type { Addresses } from "./banner.ts";
import type { StartEnv } from "./env.ts";
import type { Env, RoleUrls } from "./product.ts";

export interface Ports {
  readonly web: number;
  readonly live: number;
}

/** What the screens tell phones about trusting this machine. */
export interface TrustInfo {
  readonly httpsPort: number;
  /** The local authority's certificate. */
  readonly certificateFile: string;
  /** The plain http page where a device begins. */
  readonly page: string;
}

export interface Identity {
  readonly instanceId: string;
  readonly secret: string;
  /** `undefined` without a local authority. */
  readonly trust: TrustInfo | undefined;
}

/** The environment that every part of the product gets. It holds the roles' database addresses only. */
export function childEnv(
  env: StartEnv,
  urls: RoleUrls,
  ports: Ports,
  addresses: Addresses,
  identity: Identity,
): Env {
  return {
    ...env.inherited,
    NODE_ENV: "production",
    NEXT_TELEMETRY_DISABLED: "1",
    DATA_DIR: env.dataDir,
    APP_DATABASE_URL: urls.appUrl,
    AUTH_DATABASE_URL: urls.authUrl,
    COURTLOOM_SECRET: identity.secret,
    INSTANCE_ID: identity.instanceId,
    PUBLIC_URL: addresses.best,
    PUBLIC_URLS: addresses.all.join(","),
    WEB_PORT: String(ports.web),
    LIVE_PORT: String(ports.live),
    LIVE_URL: `http://127.0.0.1:${ports.live}`,
    ...(identity.trust && {
      AUTHORITY_FILE: identity.trust.certificateFile,
      HTTPS_PORT: String(identity.trust.httpsPort),
      TRUST_URL: identity.trust.page,
    }),
  };
}
