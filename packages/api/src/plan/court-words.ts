import { SIDES } from "@courtloom/core";
import { holdsWords } from "@courtloom/protocol";
import { z } from "zod";
import { idField } from "../fields.ts";
import { holdingOf } from "../match/holding-of.ts";
import { matchCardOf } from "../match/match-card-of.ts";
import { staffProcedure } from "../procedure.ts";
import { matchPlans } from "./match-plans.ts";

/** A coach's own words for one player, as the match began with them; each may be empty. */
export interface CourtWords {
  readonly words: string;
  /** For a change of ends. */
  readonly sentence: string;
  readonly question: string;
}

const NO_WORDS: CourtWords = { words: "", sentence: "", question: "" };

/**
 * What the pad of a member may show of the plan: its words, and the sentence and the question for a change of ends.
 * Null where the coaching mode in force keeps them from a pad. Rules CM7, CM8.
 */
export const courtWords = staffProcedure
  .input(z.strictObject({ matchId: idField }))
  .query(async ({ ctx, input: { matchId } }): Promise<CourtWords | null> => {
    const card = await matchCardOf(ctx, matchId);
    if (!holdsWords(holdingOf(ctx, "pad", card))) return null;
    const side = SIDES.find((each) => card.players[each].own);
    const plan = side && (await matchPlans(ctx, card))[side];
    if (!plan) return NO_WORDS;
    const { words, sentence, question } = plan;
    return { words, sentence, question };
  });
