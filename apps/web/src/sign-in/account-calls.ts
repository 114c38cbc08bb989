import { NO_CONNECTION } from "../client/read-problem.ts";

/** Sentences for what the accounts refuse; whatever is not named is a fault of the page or the server. */
const REFUSALS: Readonly<Record<string, string>> = {
  wrong_credentials: "The e-mail address or the password is wrong. Try again.",
  too_many_tries: "Too many tries. Wait 15 minutes, then try again.",
  bad_shape: "Fill in both the e-mail address and the password.",
  unavailable: "The server cannot reach its data just now. Try again in a moment.",
  forbidden_origin: "This page was opened at another address than the server's. Open it again at its own.",
};

/** The sentence for a refusal's code. */
export const refusalSentence = (code: unknown): string =>
  (typeof code === "string" && Object.hasOwn(REFUSALS, code) ? REFUSALS[code] : undefined) ??
  "Something went wrong on the server. Reload the page, then try again.";

const post = async (path: string, body: unknown): Promise<string | undefined> => {
  try {
    const response = await fetch(path, {
      method: "POST",
      headers: { "content-type": "application/json" },
      body: JSON.stringify(body),
    });
    if (response.ok) return undefined;
    const refused: unknown = await response.json();
    return refusalSentence(
      typeof refused === "object" && refused !== null && "code" in refused ? refused.code : undefined,
    );
  } catch {
    // Not reached, or something between answered with a page of its own: the same for a person.
    return NO_CONNECTION;
  }
};

/** Undefined when it went well, else the sentence that says why not. */
export const signIn = (email: string, password: string): Promise<string | undefined> =>
  post("/api/auth/sign-in/email", { email, password });

export const signOut = (): Promise<string | undefined> => post("/api/auth/sign-out", {});
