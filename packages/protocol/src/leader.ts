/** Who leads a match, as told to somebody who does not. Times by the server's clock, ms since 1970. */
export interface Leader {
  /** The chartist's display name. */
  readonly by: string;
  /** When the lead's phone was last heard; null: never. */
  readonly heardMs: number | null;
  readonly serverMs: number;
  /** In how many ms the one who asked may take over if nothing is heard until then; 0: now. */
  readonly takeOverInMs: number;
  /** The one who asked handed the lead to them. */
  readonly handedOver?: true;
  /** The lane that leads belongs to this very phone's court session: the phone has lost its own copy of it. */
  readonly ownPhone?: true;
}
