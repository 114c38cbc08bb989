import { COURT_LINES, type CourtPoint, type Direction } from "@courtloom/tennis";
import { missCross, PLAN, planPoint } from "./court-plan.ts";
import styles from "./loom.module.css";
import type { Dye } from "./shuttle.tsx";

/** A shot as it is drawn, in its striker's metres. Without `to` only its place is known. */
export interface PlannedShot {
  readonly key: string;
  readonly from: CourtPoint;
  readonly to: CourtPoint | undefined;
  readonly direction: Direction | undefined;
  readonly missed: boolean;
}

/** Madder goes down the line, woad cross-court; the rest is undyed. */
const DYES = { line: "line", cross: "cross", middle: "middle", fromMiddle: "middle" } satisfies Record<
  Direction,
  Dye
>;

export const dyeOf = (direction: Direction | undefined): Dye => (direction ? DYES[direction] : "middle");

function Lines() {
  const singles = COURT_LINES.filter((line) => line.part !== "doublesSideline");
  return (
    <>
      {singles.map(({ part, from, to }) => {
        const [a, b] = [planPoint(from), planPoint(to)];
        const name = part === "net" ? styles.net : styles.chalk;
        return (
          <line key={`${part} ${a.x} ${a.y} ${b.x}`} className={name} x1={a.x} y1={a.y} x2={b.x} y2={b.y} />
        );
      })}
    </>
  );
}

function Shot({ shot, faint }: { readonly shot: PlannedShot; readonly faint: boolean }) {
  const from = planPoint(shot.from);
  const to = shot.to && planPoint(shot.to);
  return (
    <g className={`${styles[dyeOf(shot.direction)]} ${faint ? styles.faint : ""}`} data-part="shot">
      {to ? (
        <>
          <path className={styles.shotCase} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          <path className={styles.shot} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          {shot.missed ? <path className={styles.shotMiss} d={missCross(to)} /> : null}
        </>
      ) : null}
      <circle className={styles.shotStart} cx={from.x} cy={from.y} r={to ? 11 : 14} />
    </g>
  );
}

export interface CourtDrawingProps {
  /** What the drawing shows, for those who do not see it. */
  readonly name: string;
  readonly shots: readonly PlannedShot[];
  /** Keys of the shots that stand out; without it all do. */
  readonly chosen?: ReadonlySet<string> | undefined;
}

/** A court from above, every shot from its striker's end at the bottom; a missed end is marked by a cross. */
export function CourtDrawing({ name, shots, chosen }: CourtDrawingProps) {
  const isFaint = (shot: PlannedShot) => chosen !== undefined && !chosen.has(shot.key);
  // Chosen shots are drawn last, over the faint ones.
  const ordered = [...shots].sort((a, b) => Number(isFaint(b)) - Number(isFaint(a)));
  return (
    <svg className={styles.court} viewBox={`0 0 ${PLAN.width} ${PLAN.height}`} role="img" aria-label={name}>
      <rect className={styles.courtGround} width={PLAN.width} height={PLAN.height} />
      <Lines />
      {ordered.map((shot) => (
        <Shot key={shot.key} shot={shot} faint={isFaint(shot)} />
      ))}
    </svg>
  );
}
