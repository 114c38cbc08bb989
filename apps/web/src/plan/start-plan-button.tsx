"use client";
import { useMutation } from "@tanstack/react-query";
import { useRouter } from "next/navigation";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";

/** Makes the academy's plan from the example, then opens it. */
export function StartPlanButton() {
  const trpc = useTRPC();
  const router = useRouter();
  const start = useMutation(
    trpc.plan.startFromStarter.mutationOptions({ onSuccess: () => router.push("/plans/academy") }),
  );
  return (
    <>
      <ProblemNote sentence={start.error ? readProblem(start.error).sentence : undefined} />
      <ActionButton
        primary
        label="Begin with the starter plan"
        pendingLabel="Making it"
        pending={start.isPending || start.isSuccess}
        onPress={() => start.mutate({})}
      />
    </>
  );
}
