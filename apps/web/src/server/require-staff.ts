import "server-only";
import { redirect } from "next/navigation";
import { me } from "./me.ts";

/** The signed-in member and their academy; anybody else is sent to sign in, and comes back to `from`. */
export const requireStaff = async (from: string) => {
  const { member, academy } = await me();
  if (!member || !academy) redirect(`/sign-in?from=${encodeURIComponent(from)}`);
  return { member, academy };
};
