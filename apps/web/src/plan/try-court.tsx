"use client";
import { COURT } from "@courtloom/tennis";
import { type CourtMap, makeCourtMap, toScreen } from "../pad/court-map.ts";
import { courtPaths } from "../pad/court-shapes.ts";
import { useSize } from "../pad/use-size.ts";
import { directionOfTried, type TriedBall } from "./tried-ball.ts";
import styles from "./try.module.css";
import { type BallPath, useBallDrag } from "./use-ball-drag.ts";

interface TryCourtProps {
  readonly ball: TriedBall | undefined;
  /** What the drawing shows, for those who do not see it. */
  readonly name: string;
  readonly onDrawn: (path: BallPath) => void;
}

const seen = (x: number, y: number) => ({ right: x * 100, away: y * 100 });

const channelLines = (map: CourtMap): string =>
  [-COURT.sideFrom, COURT.sideFrom]
    .map((x) => {
      const [a, b] = [toScreen(map, seen(x, -13.5)), toScreen(map, seen(x, 12.5))];
      return `M${a.x.toFixed(1)} ${a.y.toFixed(1)}L${b.x.toFixed(1)} ${b.y.toFixed(1)}`;
    })
    .join("");

const arrow = (x: number, y: number, angle: number): string => {
  const at = (turn: number) =>
    `${(x - 14 * Math.cos(angle + turn)).toFixed(1)} ${(y - 14 * Math.sin(angle + turn)).toFixed(1)}`;
  return `M${at(0.5)}L${x.toFixed(1)} ${y.toFixed(1)}L${at(-0.5)}`;
};

function Thread({ map, ball }: { readonly map: CourtMap; readonly ball: TriedBall }) {
  const from = toScreen(map, seen(ball.from.x, ball.from.y));
  const to = ball.to && toScreen(map, seen(ball.to.x, ball.to.y));
  return (
    <g className={styles.thread} data-direction={directionOfTried(ball) ?? "none"}>
      {to ? (
        <>
          <path className={styles.halo} d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          <path d={`M${from.x} ${from.y}L${to.x} ${to.y}`} />
          <path d={arrow(to.x, to.y, Math.atan2(to.y - from.y, to.x - from.x))} />
        </>
      ) : null}
      <circle cx={from.x} cy={from.y} r={9} />
    </g>
  );
}

function Ground({ map }: { readonly map: CourtMap }) {
  const paths = courtPaths(map);
  const words = [
    { word: "left", at: seen(-2.75, -10.3) },
    { word: "middle", at: seen(0, -10.3) },
    { word: "right", at: seen(2.75, -10.3) },
    { word: "opponent’s end", at: seen(0, 9.2) },
  ];
  return (
    <>
      <path className={styles.channels} d={channelLines(map)} />
      <path className={styles.chalk} d={paths.lines} />
      <path className={styles.net} d={paths.net} />
      {words.map(({ word, at }) => {
        const { x, y } = toScreen(map, at);
        return (
          <text key={word} className={styles.word} x={x} y={y + 5}>
            {word}
          </text>
        );
      })}
    </>
  );
}

interface DrawnProps extends TryCourtProps {
  readonly width: number;
  readonly height: number;
}

function Drawn({ ball, name, onDrawn, width, height }: DrawnProps) {
  const map = makeCourtMap("behind", width, height);
  const { live, handlers } = useBallDrag(map, onDrawn);
  const shown = live ? { ...ball, to: undefined, ...live } : ball;
  return (
    <svg
      className={styles.drawing}
      width={width}
      height={height}
      viewBox={`0 0 ${width} ${height}`}
      role="img"
      aria-label={name}
      data-testid="try-court"
      data-map={JSON.stringify(map)}
      {...handlers}
    >
      <Ground map={map} />
      {shown ? <Thread map={map} ball={shown} /> : null}
    </svg>
  );
}

/** A court on which a ball is drawn with a finger or a mouse, from the near end; a touch is a ball kept. */
export function TryCourt(props: TryCourtProps) {
  const { ref, size } = useSize<HTMLDivElement>();
  return (
    <div ref={ref} className={styles.court}>
      {size ? <Drawn {...props} {...size} /> : null}
    </div>
  );
}
