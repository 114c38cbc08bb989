/** What the demo's loader and driver are told by the supervisor. */
export interface DemoEnv {
  readonly appUrl: string;
  readonly authUrl: string;
  readonly secret: string;
  readonly dataDir: string;
  readonly url: string;
  /** As the product's own: its cookies have another name over https. */
  readonly secureCookies: boolean;
  readonly speed: number;
}

const needed = (name: string): string => {
  const value = process.env[name];
  if (!value) throw new Error(`${name} is not set. Run the demo with "npm start -- --demo".`);
  return value;
};

const DEFAULT_SPEED = 4;

export const readDemoEnv = (): DemoEnv => {
  const speed = Number(process.env.DEMO_SPEED ?? DEFAULT_SPEED);
  if (!(speed > 0 && speed <= 1000)) throw new Error("DEMO_SPEED must be a number above 0, at most 1000.");
  return {
    appUrl: needed("APP_DATABASE_URL"),
    authUrl: needed("AUTH_DATABASE_URL"),
    secret: needed("COURTLOOM_SECRET"),
    dataDir: process.env.DATA_DIR ?? ".data",
    url: process.env.LIVE_URL ?? "http://127.0.0.1:3000",
    secureCookies: process.env.PUBLIC_URL?.startsWith("https:") ?? false,
    speed,
  };
};
