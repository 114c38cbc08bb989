"use client";
import { useMutation, useQuery } from "@tanstack/react-query";
import { useEffect } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";
import { DemoProgress } from "./demo-progress.tsx";

const LOOK_EVERY_MS = 500;
const FAILED = "The demo academy could not be loaded. Try again; it goes on where it stopped.";

/** Loads the demo academy, shows how far it is, and goes in as its director. */
export function DemoPart() {
  const trpc = useTRPC();
  const enter = useMutation(
    trpc.account.enterDemo.mutationOptions({ onSuccess: () => location.assign("/") }),
  );
  const load = useMutation(trpc.setup.loadDemo.mutationOptions());
  const status = useQuery(
    trpc.setup.status.queryOptions(undefined, {
      enabled: load.isSuccess,
      refetchInterval: ({ state }) => (state.data?.demo.kind === "loading" ? LOOK_EVERY_MS : false),
    }),
  );
  const demo = load.isPending ? undefined : (status.data?.demo ?? load.data);
  const { mutate: goIn, isIdle } = enter;
  const isReady = load.isSuccess && demo?.kind === "ready";
  useEffect(() => {
    if (isReady && isIdle) goIn({});
  }, [isReady, isIdle, goIn]);

  const error = load.error ?? status.error ?? enter.error;
  const sentence = error ? readProblem(error).sentence : demo?.kind === "failed" ? FAILED : undefined;
  const underWay = load.isPending || demo?.kind === "loading" || enter.isPending || enter.isSuccess;
  if (underWay) {
    return (
      <DemoProgress
        done={demo?.kind === "loading" ? demo.done : load.isPending ? 0 : 1}
        what={demo?.kind === "loading" ? demo.what : load.isPending ? "Asking the server" : "Going in"}
      />
    );
  }
  return (
    <>
      <ProblemNote sentence={sentence} />
      <ActionButton label="Look round with the demo academy" onPress={() => load.mutate({})} />
    </>
  );
}
