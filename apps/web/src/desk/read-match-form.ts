import type { AppRouter, Hand } from "@courtloom/api";
import type { Side } from "@courtloom/core";
import { COACHING_MODES, type CoachingMode } from "@courtloom/match-log";
import type { inferRouterInputs } from "@trpc/server";
import { formText } from "../form/form-text.ts";
import { type ListedPlayer, namePlayer } from "./name-player.ts";
import { formatFrom } from "./own-rules.ts";
import { surfaceFrom } from "./surface-field.tsx";

export type NewMatch = inferRouterInputs<AppRouter>["match"]["add"];

export const OWN_RULES = "own";

const handOf = (text: string): Hand => (text === "right" || text === "left" ? text : "unknown");

const modeOf = (text: string): CoachingMode => COACHING_MODES.find((mode) => mode === text) ?? "notKnown";

const playersOf = (form: FormData, side: Side, doubles: boolean, players: readonly ListedPlayer[]) =>
  (doubles ? [`${side}1`, `${side}2`] : [`${side}1`]).map((field) =>
    namePlayer(players, {
      name: formText(form, `${field}-name`),
      hand: handOf(formText(form, `${field}-hand`)),
      own: form.has(`${field}-own`),
    }),
  );

const formatOf = (form: FormData): NewMatch["format"] => {
  const chosen = formText(form, "format");
  if (chosen !== OWN_RULES) return chosen;
  return formatFrom({
    sets: Number(formText(form, "sets")),
    gamesPerSet: Number(formText(form, "gamesPerSet")),
    tiebreak: form.has("tiebreak"),
    tiebreakTo: Number(formText(form, "tiebreakTo")),
    noAd: form.has("noAd"),
    finalSet: formText(form, "finalSet") === "matchTiebreak" ? "matchTiebreak" : "same",
  });
};

/** What the form for a match asks the server for; names that are on the list go by their id. */
export const readMatchForm = (
  form: FormData,
  place: { readonly dayId: string; readonly courtId: string },
  players: readonly ListedPlayer[],
): NewMatch => {
  const doubles = form.has("doubles");
  const first = formText(form, "firstServer");
  const surface = surfaceFrom(formText(form, "surface"));
  return {
    ...place,
    sides: { A: playersOf(form, "A", doubles, players), B: playersOf(form, "B", doubles, players) },
    format: formatOf(form),
    coachingMode: modeOf(formText(form, "coachingMode")),
    ...(first === "A" || first === "B" ? { firstServer: first } : {}),
    ...(surface ? { surface } : {}),
  };
};
