"use client";
import type { FigurePoint, FigurePoints, HistoryFilter } from "@courtloom/api";
import { useQueries } from "@tanstack/react-query";
import { type ReactNode, useEffect, useRef, useState } from "react";
import { readProblem } from "../client/read-problem.ts";
import { useTRPC } from "../client/trpc.ts";
import { sayDate } from "../desk/say-date.ts";
import { ActionButton } from "../form/action-button.tsx";
import { ProblemNote } from "../form/problem-note.tsx";
import type { FigureKey } from "./figure-key.ts";
import styles from "./players.module.css";
import { PointLine } from "./point-line.tsx";
import { READING } from "./reading-options.ts";

const PAGE = 30;

interface HitWords {
  readonly hits: string;
  readonly others: string;
}

interface PointsDialogProps {
  readonly playerId: string;
  readonly title: string;
  readonly figure: FigureKey;
  readonly filter: HistoryFilter;
  /** What to say of the figure before its points. */
  readonly children: ReactNode;
  /** How attempts that count in x, and the others, are called. */
  readonly words: HitWords;
  /** What is said at one of them. */
  readonly tags: HitWords;
  readonly onClose: () => void;
}

type Wanted = "all" | "hits" | "others";

/** Rows of one match after the other, as they came. */
const byMatch = (rows: readonly FigurePoint[]): readonly (readonly FigurePoint[])[] => {
  const groups: FigurePoint[][] = [];
  for (const row of rows) {
    const last = groups.at(-1);
    if (last?.[0]?.matchId === row.matchId) last.push(row);
    else groups.push([row]);
  }
  return groups;
};

const keyed = (rows: readonly FigurePoint[]) => {
  const seen = new Map<string, number>();
  return rows.map((row) => {
    const times = (seen.get(row.pointId) ?? 0) + 1;
    seen.set(row.pointId, times);
    return { key: `${row.pointId} ${times}`, row };
  });
};

function Rows({ rows, tags }: Pick<PointsDialogProps, "tags"> & { readonly rows: readonly FigurePoint[] }) {
  return byMatch(rows).map((group) => {
    const first = group[0];
    if (first === undefined) return null;
    return (
      <section key={first.matchId} className={styles.ofMatch}>
        <h3>
          {sayDate(first.playedOn)}, against {first.opponentName}
        </h3>
        <ol className={styles.pointList}>
          {keyed(group).map(({ key, row }) => (
            <PointLine key={key} row={row} tag={row.hit ? tags.hits : tags.others} />
          ))}
        </ol>
      </section>
    );
  });
}

const ASKS: Readonly<Record<Wanted, { readonly hits?: boolean }>> = {
  all: {},
  hits: { hits: true },
  others: { hits: false },
};

/** Pages of what a figure stands on, as many as were asked for. */
function usePages({ playerId, figure, filter }: PointsDialogProps, wanted: Wanted, count: number) {
  const trpc = useTRPC();
  return useQueries({
    queries: Array.from({ length: count }, (_, i) =>
      trpc.figures.points.queryOptions(
        {
          playerId,
          filter,
          figureId: figure.figure,
          ...(figure.part === undefined ? {} : { part: figure.part }),
          ...ASKS[wanted],
          from: i * PAGE,
          limit: PAGE,
        },
        READING,
      ),
    ),
    combine: (pages) => ({
      rows: pages.flatMap(({ data }): FigurePoints["rows"] => data?.rows ?? []),
      next: pages.at(-1)?.data?.next ?? null,
      error: pages.find((page) => page.error)?.error,
      isPending: pages.some((page) => page.isPending),
      refetch: () => Promise.all(pages.filter((page) => page.error).map((page) => page.refetch())),
    }),
  });
}

/** The points that a figure stands on, opened over the page; Escape and going back close it. SPEC PF8. */
export function PointsDialog(props: PointsDialogProps) {
  const { title, children, words, tags, onClose } = props;
  const ref = useRef<HTMLDialogElement>(null);
  const [wanted, setWanted] = useState<Wanted>("all");
  const [count, setCount] = useState(1);
  const { rows, next, error, isPending, refetch } = usePages(props, wanted, count);
  useEffect(() => ref.current?.showModal(), []);
  const choose = (choice: Wanted) => {
    setWanted(choice);
    setCount(1);
  };
  const choices = { all: "All", ...words } satisfies Record<Wanted, string>;
  return (
    <dialog ref={ref} className={styles.dialog} aria-labelledby="points-title" onCancel={onClose}>
      <div className={styles.dialogHead}>
        <h2 id="points-title">{title}</h2>
        <ActionButton label="Close" about="the points" onPress={onClose} />
      </div>
      {children}
      <fieldset className={styles.periods}>
        <legend className="vh">Which of them</legend>
        {(["all", "hits", "others"] as const).map((choice) => (
          <button key={choice} type="button" aria-pressed={choice === wanted} onClick={() => choose(choice)}>
            {choices[choice]}
          </button>
        ))}
      </fieldset>
      {error ? (
        <div className={styles.state}>
          <ProblemNote sentence={readProblem(error).sentence} />
          <ActionButton label="Try again" onPress={() => void refetch()} />
        </div>
      ) : null}
      <Rows rows={rows} tags={tags} />
      {isPending ? <p role="status">Reading the points.</p> : null}
      {!isPending && !error && rows.length === 0 ? <p>None of these.</p> : null}
      {next === null ? null : (
        <ActionButton
          label="Show more"
          pending={isPending}
          pendingLabel="Reading"
          onPress={() => setCount(count + 1)}
        />
      )}
    </dialog>
  );
}
