"use client";
import type { PlanContent, PlanFile, PlanVersionRow } from "@courtloom/api";
import { useMutation, useQueryClient } from "@tanstack/react-query";
import { useState } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import type { Conflict } from "./conflict-panel.tsx";
import { type DraftEdit, editDraft } from "./edit-draft.ts";
import { contentOf, draftOf, NO_CONTENT, type PlanDraft, underOf } from "./plan-draft.ts";
import { problemsOf, type RuleProblems, refusedByRule } from "./plan-problems.ts";
import { isSameContent } from "./same.ts";

const contentAt = ({ versions }: PlanFile, version: number): PlanContent =>
  versions.find((row) => row.version === version) ?? NO_CONTENT;

const isStale = (error: unknown): boolean =>
  error instanceof Error &&
  "data" in error &&
  (error.data as { reason?: string } | null)?.reason === "stale_plan";

interface Editing {
  readonly file: PlanFile;
  /** The version that is changed; 0: none yet. */
  readonly version: number;
  readonly draft: PlanDraft;
}

const openFile = (file: PlanFile): Editing => {
  const version = file.versions[0]?.version ?? 0;
  return { file, version, draft: draftOf(contentAt(file, version), underOf(file)) };
};

const NO_PROBLEMS: RuleProblems = {};

/** A plan under change: its draft, what is wrong with it, saving it, and what to do when somebody else saved. */
export const usePlanEditor = (first: PlanFile) => {
  const trpc = useTRPC();
  const queries = useQueryClient();
  const [at, setAt] = useState<Editing>(() => openFile(first));
  const [note, setNote] = useState("");
  const [problems, setProblems] = useState<RuleProblems>(NO_PROBLEMS);
  const [notice, setNotice] = useState("");
  const [conflict, setConflict] = useState<Conflict | undefined>(undefined);
  const playerId = first.player?.playerId ?? null;
  const base = contentAt(at.file, at.version);
  const content = contentOf(at.draft);

  const readAgain = () =>
    queries.fetchQuery(trpc.plan.get.queryOptions({ playerId }, { staleTime: 0, retry: false }));
  const meetConflict = async (): Promise<void> => {
    const file = await readAgain();
    const theirs = file.versions[0];
    if (theirs) setConflict({ base, theirs });
    setAt((now) => ({ ...now, file }));
  };
  const save = useMutation(
    trpc.plan.save.mutationOptions({
      onSuccess: (row) => {
        setAt(({ file }) => openFile(withVersion(file, row)));
        setConflict(undefined);
        setProblems(NO_PROBLEMS);
        setNote("");
        setNotice(`Saved as version ${row.version}. Matches that are open keep the plan they began with.`);
      },
      onError: async (error) => {
        setNotice("");
        if (isStale(error)) await meetConflict();
        else setProblems(refusedByRule(at.draft, readProblem(error).fields));
      },
    }),
  );
  const saveOver = (version: number): boolean => {
    const found = problemsOf(at.draft);
    setProblems(found);
    setNotice("");
    if (Object.keys(found).length > 0) return false;
    save.mutate({ playerId, expected: version, ...mutable(content), note });
    return true;
  };
  const put = (draft: PlanDraft, version: number, said: string): void => {
    setAt((now) => ({ ...now, draft, version }));
    setConflict(undefined);
    setProblems(NO_PROBLEMS);
    setNotice(said);
    save.reset();
  };
  return {
    ...at,
    base,
    content,
    note,
    setNote,
    problems,
    notice,
    conflict,
    isDirty: !isSameContent(base, content),
    isSaving: save.isPending,
    sentence: save.error && !isStale(save.error) ? readProblem(save.error).sentence : undefined,
    edit: (edit: DraftEdit): void => {
      setNotice("");
      setProblems(NO_PROBLEMS);
      setAt((now) => ({ ...now, draft: editDraft(now.draft, edit, underOf(now.file)) }));
    },
    /** False when something has to be mended first. */
    save: (): boolean => saveOver(at.version),
    saveMine: (): boolean => saveOver(at.file.versions[0]?.version ?? 0),
    together: (merged: PlanContent): void =>
      put(
        draftOf(merged, underOf(at.file)),
        at.file.versions[0]?.version ?? 0,
        "Both are together here. Look through it, then save.",
      ),
    takeTheirs: (): void => {
      const { draft, version } = openFile(at.file);
      put(draft, version, "This is the newest version.");
    },
    takeBack: (row: PlanVersionRow): void =>
      put(
        draftOf(row, underOf(at.file)),
        at.version,
        `Version ${row.version} is in the editor. It holds once you save it.`,
      ),
    resume: (draft: PlanDraft, version: number): void =>
      put(draft, version, "These are your changes from before. They are not saved yet."),
    drop: (): void => put(draftOf(base, underOf(at.file)), at.version, ""),
  };
};

export type PlanEditorState = ReturnType<typeof usePlanEditor>;

/** The file after a save, without asking the server again. */
const withVersion = (file: PlanFile, row: PlanVersionRow): PlanFile => ({
  ...file,
  academy: row.playerId === null ? row : file.academy,
  versions: [row, ...file.versions.filter(({ version }) => version < row.version)],
});

type Mutable<T> = T extends readonly (infer E)[]
  ? Mutable<E>[]
  : T extends object
    ? { -readonly [K in keyof T]: Mutable<T[K]> }
    : T;

/** What is sent is typed as changeable by the schema, which changes nothing. */
const mutable = (content: PlanContent): Mutable<PlanContent> => {
  const { words, rules, replaces, leavesOut, ruleWords, sentence, question } = content;
  const sent = { words, rules, replaces, leavesOut, ruleWords, sentence, question };
  return structuredClone(sent) as Mutable<PlanContent>;
};
