/** Where a room sends what changed. Never blocks, never throws; may leave things out for a slow reader. */
export interface Viewer {
  readonly send: (event: string, message: unknown) => void;
}
