/** What the web server is told from outside. The only reader of the environment in this app. */
export interface WebEnv {
  /** Database addresses of the two roles; never the owner's. */
  readonly appDatabaseUrl: string;
  readonly authDatabaseUrl: string;
  readonly secret: string;
  /** The address that people open; https decides whether cookies are marked secure. */
  readonly publicUrl: string;
  /** Every address under which phones may reach this server, the best one first. */
  readonly publicUrls: readonly string[];
}

const need = (name: string): string => {
  const value = process.env[name];
  if (value === undefined || value === "") {
    throw new Error(`${name} is not set. Start the product with \`npm start\`, which sets it.`);
  }
  return value;
};

/** Read when the first request needs it, so that a build needs none of it. Throws a sentence that names what is missing. */
export const readWebEnv = (): WebEnv => {
  const publicUrl = need("PUBLIC_URL");
  return {
    appDatabaseUrl: need("APP_DATABASE_URL"),
    authDatabaseUrl: need("AUTH_DATABASE_URL"),
    secret: need("COURTLOOM_SECRET"),
    publicUrl,
    publicUrls: (process.env.PUBLIC_URLS ?? publicUrl).split(",").filter((url) => url !== ""),
  };
};

/** Names this start of the product, so that a server left from an earlier one is not taken for it; empty when run alone. */
export const instanceId = (): string => process.env.INSTANCE_ID ?? "";

/** True under the development server, whose error pages need `eval`. */
export const isDevelopment = (): boolean => process.env.NODE_ENV === "development";

/** Where the build lies, from this app's folder. */
export const buildFolder = (): string => process.env.COURTLOOM_DIST || ".next";

/** What devices need to trust this machine. */
export interface TrustEnv {
  /** Its local authority's certificate, PEM. */
  readonly certificateFile: string;
  /** Where the front door answers https. */
  readonly httpsPort: number;
  /** The plain http page where a device begins. */
  readonly page: string;
}

/** Undefined without a local authority: over plain http, or with a certificate that devices know already. */
export const readTrustEnv = (): TrustEnv | undefined => {
  const { AUTHORITY_FILE: certificateFile, HTTPS_PORT: port, TRUST_URL: page } = process.env;
  return certificateFile && port && page ? { certificateFile, httpsPort: Number(port), page } : undefined;
};

/** The address that people open; empty during a build. */
export const publicUrl = (): string => process.env.PUBLIC_URL ?? "";
