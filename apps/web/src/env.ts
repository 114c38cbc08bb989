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
