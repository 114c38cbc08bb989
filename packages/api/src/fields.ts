import { COACHING_MODES } from "@courtloom/match-log";
import { SURFACES } from "@courtloom/tennis";
import { z } from "zod";
import { HANDS } from "./api-store.ts";

/** Control characters, lone surrogates and marks that turn the writing direction round: never part of a name. */
const UNWANTED = /[\p{Cc}\p{Cs}\u200E\u200F\u202A-\u202E\u2066-\u2069]/u;

const tidy = (raw: string): string => raw.normalize("NFC").trim().replace(/\s+/g, " ");

/** A short text of one line, 1 to `longest` characters after trimming. `what` begins the sentence that refuses it. */
export const shortText = (what: string, longest: number) =>
  z
    .string({ error: `${what} is missing. Write it.` })
    .max(longest * 4, `${what} is too long. Use at most ${longest} characters.`)
    .refine((raw) => !UNWANTED.test(raw), `${what} has characters that cannot be shown. Write it anew.`)
    .transform(tidy)
    .refine((text) => text.length > 0, `${what} is missing. Write it.`)
    .refine((text) => text.length <= longest, `${what} is too long. Use at most ${longest} characters.`);

const UNWANTED_IN_LINES = /[\p{Cs}\u200E\u200F\u202A-\u202E\u2066-\u2069]|(?!\n)\p{Cc}/u;

const tidyLines = (raw: string): string =>
  raw
    .normalize("NFC")
    .replace(/[^\S\n]+/g, " ")
    .trim();

/** A text of several lines, up to `longest` characters after trimming; it may be empty. */
export const longText = (what: string, longest: number) =>
  z
    .string({ error: `${what} cannot be read. Write it anew.` })
    .max(longest * 4, `${what}: use at most ${longest} characters.`)
    .transform((raw) => raw.replace(/\r\n?/g, "\n"))
    .refine((raw) => !UNWANTED_IN_LINES.test(raw), `${what}: some characters cannot be shown. Write it anew.`)
    .transform(tidyLines)
    .refine((text) => text.length <= longest, `${what}: use at most ${longest} characters.`);

export const idField = z.guid("This is no longer there. Reload the page.");

/** A day as `2026-05-30`, in this century. */
export const dateField = z.iso
  .date("Choose a date.")
  .refine((date) => date >= "2000-01-01" && date <= "2099-12-31", "Choose a date of this century.");

export const handField = z.enum(HANDS, "Choose right, left or not known.");

export const coachingModeField = z.enum(COACHING_MODES, "Choose one of the four coaching modes.");

/** Absent: not known. */
export const surfaceField = z.enum(SURFACES, "Choose a surface, or leave it open.").optional();

export const playerNameField = shortText("The name", 60);

/** For changes that take nothing: an empty object, since a body has to be JSON. Anything more is refused. */
export const emptyInput = z.strictObject({}, "Nothing is to be sent with this.");

/** For reads that take nothing. */
export const noInput = emptyInput.optional();
