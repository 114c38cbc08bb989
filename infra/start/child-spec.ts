/** A process of the product that the supervisor starts, watches and starts again. */
export interface ChildSpec {
  /** Short; names its log file and stands before its lines. */
  readonly name: string;
  /** Arguments for Node: options, script, its arguments. */
  readonly args: readonly string[];
  /** Absolute working folder. */
  readonly cwd: string;
  /** Added to the environment that all children get. */
  readonly env: Readonly<Record<string, string>>;
  /** Loopback port whose `/healthz` has to answer with our instance id; `undefined` for one that serves nothing. */
  readonly port: number | undefined;
  /** False if an end with exit code 0 means that it has done its work. */
  readonly endless: boolean;
}
