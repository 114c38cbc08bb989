"use client";
import { useMutation } from "@tanstack/react-query";
import { type ChangeEvent, useState } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { ActionButton } from "../form/action-button.tsx";
import { Field } from "../form/field.tsx";
import form from "../form/form.module.css";
import { ProblemNote } from "../form/problem-note.tsx";
import shell from "../shell/shell.module.css";
import { ImportLanes } from "./import-lanes.tsx";
import { readChosenFile } from "./import-read.ts";
import { freshCount } from "./import-words.ts";

const useImport = () => {
  const trpc = useTRPC();
  const check = useMutation(trpc.lane.checkFile.mutationOptions());
  const takeIn = useMutation(trpc.lane.takeInFile.mutationOptions());
  const [unreadable, setUnreadable] = useState<string>();
  const [file, setFile] = useState<unknown>();
  const choose = async (chosen: File | undefined) => {
    check.reset();
    takeIn.reset();
    setUnreadable(undefined);
    if (!chosen) return;
    const read = await readChosenFile(chosen);
    if (!read.ok) return setUnreadable(read.error);
    setFile(read.value);
    check.mutate({ file: read.value });
  };
  const error = takeIn.error ?? check.error;
  return { check, takeIn, file, choose, problem: unreadable ?? (error && readProblem(error).sentence) };
};

/** Takes in what a phone saved to a file: shown first, and written only when that is confirmed. */
export function ImportFile() {
  const { check, takeIn, file, choose, problem } = useImport();
  const lanes = check.data?.lanes;
  const fresh = lanes ? freshCount(lanes) : 0;
  return (
    <>
      <div className={form.form}>
        <Field label="File from a phone" hint="Named like courtloom-court-3-2026-05-30.json.">
          {(control) => (
            <input
              {...control}
              type="file"
              accept="application/json,.json"
              onChange={(event: ChangeEvent<HTMLInputElement>) => void choose(event.target.files?.[0])}
            />
          )}
        </Field>
        <ProblemNote sentence={problem ?? undefined} />
      </div>
      {check.isPending ? <p role="status">Reading the file…</p> : null}
      {lanes ? (
        <section className={shell.part} aria-labelledby="held">
          <h2 id="held">{takeIn.data ? "Taken in" : "In this file"}</h2>
          <ImportLanes lanes={lanes} taken={takeIn.data?.lanes} />
          {takeIn.data ? null : fresh === 0 ? (
            <p role="status">Nothing in this file is new. There is nothing to take in.</p>
          ) : (
            <div>
              <ActionButton
                primary
                label={fresh === 1 ? "Take in 1 entry" : `Take in ${fresh} entries`}
                pendingLabel="Taking it in"
                pending={takeIn.isPending}
                onPress={() => takeIn.mutate({ file })}
              />
            </div>
          )}
        </section>
      ) : null}
    </>
  );
}
