"use client";
import { COACHING_MODES, type CoachingMode } from "@courtloom/match-log";
import { useMutation } from "@tanstack/react-query";
import { useRouter } from "next/navigation";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { Field } from "../form/field.tsx";
import { BOTH_OURS, COACHING_LABELS, COACHING_MEANS } from "./coaching-words.ts";

interface CoachingSelectProps {
  readonly matchId: string;
  readonly mode: CoachingMode;
  /** Both sides are of this academy, which comes before any mode. */
  readonly bothOwn: boolean;
}

const modeOf = (text: string): CoachingMode => COACHING_MODES.find((mode) => mode === text) ?? "notKnown";

/** Sets a match's coaching mode at once, and shows what was there before if the server refuses. */
export function CoachingSelect({ matchId, mode, bothOwn }: CoachingSelectProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const change = useMutation(
    trpc.match.setCoachingMode.mutationOptions({ onSuccess: () => router.refresh() }),
  );
  const shown = change.isPending ? change.variables.coachingMode : mode;
  return (
    <Field
      label="Coaching"
      hint={change.isPending ? "Setting it" : bothOwn ? BOTH_OURS : COACHING_MEANS[shown]}
      error={change.error ? readProblem(change.error).sentence : undefined}
    >
      {(control) => (
        <select
          {...control}
          value={shown}
          disabled={change.isPending}
          onChange={(event) => change.mutate({ matchId, coachingMode: modeOf(event.target.value) })}
        >
          {COACHING_MODES.map((each) => (
            <option key={each} value={each}>
              {COACHING_LABELS[each]}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
