"use client";
import { useMutation } from "@tanstack/react-query";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";

/** Signs this device in as the director of the invented academy. */
export function EnterDemoButton() {
  const trpc = useTRPC();
  const enter = useMutation(
    trpc.account.enterDemo.mutationOptions({ onSuccess: () => location.assign("/") }),
  );
  return (
    <>
      <ProblemNote sentence={enter.error ? readProblem(enter.error).sentence : undefined} />
      <ActionButton
        label="Look round as the director"
        pendingLabel="Going in"
        pending={enter.isPending || enter.isSuccess}
        onPress={() => enter.mutate({})}
      />
    </>
  );
}
