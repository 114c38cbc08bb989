"use client";
import type { ChoiceCost, HistoryFilter } from "@courtloom/api";
import { keepPreviousData, useQuery } from "@tanstack/react-query";
import { useTRPC } from "../client/trpc.ts";
import { chancesWords, costWords } from "./estimate-words.ts";
import { matches } from "./history-words.ts";
import styles from "./players.module.css";
import { ReadState } from "./read-state.tsx";
import { READING } from "./reading-options.ts";

const noneWords = ({ fit, offPlan, judged }: ChoiceCost): string => {
  if (judged === 0) return "No ball was judged at every ball in these matches.";
  if (offPlan === 0) return "No choice was off plan.";
  return fit === null
    ? "Too few to say: the academy has too few matches charted at every ball."
    : "Can't tell yet.";
};

function Found({ cost }: { readonly cost: ChoiceCost }) {
  const { points, matchChances, offPlan, judged, fit } = cost;
  return (
    <>
      <p className={styles.finding} data-testid="cost-points">
        {points === null ? noneWords(cost) : costWords(points)}
      </p>
      {judged === 0 ? null : (
        <p data-testid="cost-of">
          {offPlan} of {judged} balls judged were off plan, {matches(cost.matches)} charted at every ball.
          Points that went with them, beside the balls that the plan says.
        </p>
      )}
      {matchChances === null ? null : (
        <>
          <h3>In chances to win a match</h3>
          <p className={styles.finding} data-testid="cost-chances">
            {chancesWords(matchChances)}
          </p>
          <p className={styles.quiet}>Each ball by how much its point decided. For staff only.</p>
        </>
      )}
      <p className={styles.quiet}>
        90 % intervals. The choices go with these points; they may not be the cause.
        {fit === null ? "" : ` Fitted from ${matches(fit.matches)} of ${fit.players} players.`}
      </p>
    </>
  );
}

interface CostPartProps {
  readonly playerId: string;
  readonly playerName: string;
  readonly filter: HistoryFilter;
}

/** What choices off the plan went with, in points and in chances to win. SPEC PF12. */
export function CostPart({ playerId, playerName, filter }: CostPartProps) {
  const trpc = useTRPC();
  const reading = useQuery(
    trpc.figures.cost.queryOptions({ playerId, filter }, { ...READING, placeholderData: keepPreviousData }),
  );
  return (
    <section className={styles.group} aria-labelledby="cost">
      <h2 id="cost">What off-plan choices went with</h2>
      <ReadState what={`what off-plan choices of ${playerName} went with`} reading={reading}>
        {(cost) => <Found cost={cost} />}
      </ReadState>
    </section>
  );
}
