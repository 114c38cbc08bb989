import { openedWith } from "@courtloom/match-log/testing";

/** A match of sets of six as its log opens: Noor (A, charted) serves first. */
export const matchOpened = openedWith({ matchId: "m1", coachingMode: "practice" });
