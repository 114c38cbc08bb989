/** What the live server is told from outside. The only reader of the environment in this app. */
export interface LiveEnv {
  /** Database addresses of the two roles; never the owner's. */
  readonly appDatabaseUrl: string;
  readonly authDatabaseUrl: string;
  readonly secret: string;
  readonly port: number;
  /** Names this start of the product; goes into `/healthz`. */
  readonly instanceId: string;
  /** People reach the product over https, so cookies have their secure name. */
  readonly secureCookies: boolean;
}

type Variables = Readonly<Record<string, string | undefined>>;

/** Throws a sentence that names what is missing. */
export const readLiveEnv = (variables: Variables = process.env): LiveEnv => {
  const need = (name: string): string => {
    const value = variables[name];
    if (value) return value;
    throw new Error(`${name} is not set. Start the product with \`npm start\`, which sets it.`);
  };
  const port = Number(need("LIVE_PORT"));
  if (!Number.isInteger(port) || port < 0 || port > 65_535) {
    throw new Error("LIVE_PORT is not a port: give a whole number from 0 to 65535.");
  }
  return {
    appDatabaseUrl: need("APP_DATABASE_URL"),
    authDatabaseUrl: need("AUTH_DATABASE_URL"),
    secret: need("COURTLOOM_SECRET"),
    port,
    instanceId: need("INSTANCE_ID"),
    secureCookies: variables.PUBLIC_URL?.startsWith("https:") ?? false,
  };
};
