import "server-only";
import type { ErrorCode } from "@courtloom/api";
import { forbidden, notFound } from "next/navigation";

const reasonOf = (error: unknown): ErrorCode | undefined => {
  if (!(error instanceof Error) || !(error.cause instanceof Error)) return undefined;
  return "reason" in error.cause ? (error.cause.reason as ErrorCode) : undefined;
};

const MISSING: readonly ErrorCode[] = ["unknown_day", "unknown_match", "unknown_player", "bad_input"];

/** What a page needs from the server, or the page that says why not: missing and foreign rows look the same. */
export const orFailurePage = async <T>(asked: Promise<T>): Promise<T> => {
  try {
    return await asked;
  } catch (error) {
    const reason = reasonOf(error);
    if (reason === "forbidden") forbidden();
    if (reason !== undefined && MISSING.includes(reason)) notFound();
    throw error;
  }
};
