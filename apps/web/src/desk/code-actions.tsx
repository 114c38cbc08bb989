"use client";
import { useMutation } from "@tanstack/react-query";
import { useRouter } from "next/navigation";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";

/** Issues a code for every court of the day, and for the wall, that has none. */
export function IssueCodesButton({ dayId }: { readonly dayId: string }) {
  const trpc = useTRPC();
  const router = useRouter();
  const issue = useMutation(trpc.code.issue.mutationOptions({ onSuccess: () => router.refresh() }));
  return (
    <>
      <ProblemNote sentence={issue.error ? readProblem(issue.error).sentence : undefined} />
      <ActionButton
        label="Make the codes that are missing"
        pendingLabel="Making codes"
        pending={issue.isPending}
        primary
        onPress={() => issue.mutate({ dayId, wanted: { kind: "missing" } })}
      />
    </>
  );
}

interface TakeBackProps {
  readonly codeId: string;
  /** Whose code, such as "of Court 3". */
  readonly about: string;
}

/** Ends a code and every phone that came in with it. */
export function TakeBackCodeButton({ codeId, about }: TakeBackProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const revoke = useMutation(trpc.code.revoke.mutationOptions({ onSuccess: () => router.refresh() }));
  return (
    <>
      <ProblemNote sentence={revoke.error ? readProblem(revoke.error).sentence : undefined} />
      <ActionButton
        label="Take the code back"
        about={about}
        pendingLabel="Taking it back"
        pending={revoke.isPending}
        onPress={() => revoke.mutate({ codeId })}
      />
    </>
  );
}

interface EndPhoneProps {
  readonly sessionId: string;
  /** The chartist's name. */
  readonly name: string;
}

/** Ends one phone's session; the code goes on. */
export function EndPhoneButton({ sessionId, name }: EndPhoneProps) {
  const trpc = useTRPC();
  const router = useRouter();
  const end = useMutation(trpc.code.endPhone.mutationOptions({ onSuccess: () => router.refresh() }));
  return (
    <>
      <ProblemNote sentence={end.error ? readProblem(end.error).sentence : undefined} />
      <ActionButton
        label="End"
        about={`${name}'s phone`}
        pendingLabel="Ending"
        pending={end.isPending}
        onPress={() => end.mutate({ sessionId })}
      />
    </>
  );
}
