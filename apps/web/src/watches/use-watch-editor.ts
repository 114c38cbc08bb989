"use client";
import type { WatchChoice, WatchFile, WatchSettingRow } from "@courtloom/api";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { chosenOf, draftOf, isSameChoice, problemOf, rowOf, type WatchDraft } from "./watch-draft.ts";

const isStale = (error: unknown): boolean =>
  error instanceof Error &&
  "data" in error &&
  (error.data as { reason?: string } | null)?.reason === "stale_watch";

const withRow = (file: WatchFile, row: WatchSettingRow): WatchFile =>
  row.playerId === null
    ? { ...file, academy: row }
    : {
        ...file,
        players: file.players.map((player) =>
          player.playerId === row.playerId ? { ...player, setting: row } : player,
        ),
      };

/** What is sent is typed as changeable by the schema, which changes nothing. */
const toSend = (choice: WatchChoice | null) => (choice ? { ...choice, rates: [...choice.rates] } : null);

interface Editing {
  readonly file: WatchFile;
  /** The version that is changed; 0: nobody has chosen yet. */
  readonly version: number;
  readonly draft: WatchDraft;
}

/** Settings under change: what is chosen, saving it, and what to do when somebody else saved meanwhile. */
export const useWatchEditor = (first: WatchFile, playerId: string | null) => {
  const trpc = useTRPC();
  const queries = useQueryClient();
  const openFile = (file: WatchFile): Editing => ({
    file,
    version: rowOf(file, playerId)?.version ?? 0,
    draft: draftOf(file, playerId),
  });
  const [at, setAt] = useState(() => openFile(first));
  const [problem, setProblem] = useState<string | undefined>(undefined);
  const [notice, setNotice] = useState("");
  const [theirs, setTheirs] = useState<WatchSettingRow | undefined>(undefined);
  const meetConflict = async (): Promise<void> => {
    const file = await queries.fetchQuery(
      trpc.watch.get.queryOptions(undefined, { staleTime: 0, retry: false }),
    );
    setTheirs(rowOf(file, playerId) ?? undefined);
    setAt((now) => ({ ...now, file }));
  };
  const save = useMutation(
    trpc.watch.save.mutationOptions({
      onSuccess: (row) => {
        setAt(({ file }) => openFile(withRow(file, row)));
        setTheirs(undefined);
        setNotice(`Saved as version ${row.version}. Matches that are open keep what they began with.`);
      },
      onError: async (error) => {
        if (isStale(error)) await meetConflict();
      },
    }),
  );
  const saveOver = (expected: number): void => {
    const found = problemOf(at.draft);
    setProblem(found);
    setNotice("");
    if (found === undefined) save.mutate({ playerId, expected, choice: toSend(chosenOf(at.draft)) });
  };
  const held = chosenOf(draftOf(at.file, playerId));
  const put = (editing: Editing, said: string): void => {
    setAt(editing);
    setTheirs(undefined);
    setProblem(undefined);
    setNotice(said);
    save.reset();
  };
  return {
    ...at,
    theirs,
    problem,
    notice,
    isDirty: !isSameChoice(held, chosenOf(at.draft)) || theirs !== undefined,
    isSaving: save.isPending,
    sentence: save.error && !isStale(save.error) ? readProblem(save.error).sentence : undefined,
    edit: (draft: WatchDraft): void => {
      setNotice("");
      setProblem(undefined);
      setAt((now) => ({ ...now, draft }));
    },
    save: (): void => saveOver(at.version),
    saveMine: (): void => saveOver(theirs?.version ?? at.version),
    takeTheirs: (): void => put(openFile(at.file), "This is the newest version."),
    drop: (): void => put(openFile(at.file), ""),
  };
};

export type WatchEditorState = ReturnType<typeof useWatchEditor>;
