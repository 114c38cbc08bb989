import { z } from "zod";
import type { ApiContext } from "../context.ts";
import { failure } from "../errors/failure.ts";
import { shortText } from "../fields.ts";
import { isTimeZone } from "../is-time-zone.ts";
import { openProcedure } from "../procedure.ts";

const LONGEST_EMAIL = 254;
const LONGEST_PASSWORD = 256;

const input = z.strictObject({
  name: shortText("The academy's name", 80),
  timeZone: z
    .string("Choose a time zone.")
    .refine(isTimeZone, "This time zone is not known. Choose one from the list, such as Europe/Lisbon."),
  directorName: shortText("Your name", 60),
  email: z.string("Write your e-mail address.").min(1, "Write your e-mail address.").max(LONGEST_EMAIL),
  password: z.string("Choose a password.").min(1, "Choose a password.").max(LONGEST_PASSWORD),
});

type NewAcademy = z.infer<typeof input>;

const makeAcademy = async ({ store, auth }: ApiContext, wanted: NewAcademy): Promise<string> => {
  const { name, timeZone, directorName, email, password } = wanted;
  const account = await auth.createDirector({ email, password, name: directorName });
  if (!account.ok) throw failure(account.error);
  const made = await store.setupAcademy({
    name,
    timeZone,
    language: "en",
    isDemo: false,
    director: { displayName: directorName, userId: account.value.userId },
  });
  if (!made.ok) throw failure(made.error.code);
  return made.value.academyId;
};

/** Sets up the academy with its first director, who is signed in at once. Only while there is none. Rule AP5. */
export const createAcademy = openProcedure.input(input).mutation(async ({ ctx, input: wanted }) => {
  if (await ctx.store.hasAcademy()) throw failure("already_set_up");
  const academyId = await makeAcademy(ctx, wanted);
  const { address, cookieHeader } = ctx;
  const signedIn = await ctx.auth.signIn({
    email: wanted.email,
    password: wanted.password,
    address,
    cookieHeader,
  });
  if (!signedIn.ok) throw failure(signedIn.error);
  ctx.setCookie(signedIn.value.setCookie);
  return { academyId };
});
