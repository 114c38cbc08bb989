import { FACET_VALUES, type Facet } from "@courtloom/decisions";
import { CHANNELS, DEPTHS_STRUCK } from "@courtloom/tennis";
import { FACET_LABELS, FACET_NAMES } from "./facet-words.ts";
import { ToggleGroup } from "./toggle-group.tsx";
import { channelTo, depthOf, placeFrom, placeTo, sideOf, type TriedBall } from "./tried-ball.ts";
import styles from "./try.module.css";

interface TryChoicesProps {
  readonly ball: TriedBall | undefined;
  readonly onBall: (ball: TriedBall) => void;
}

const ANSWERS = ["ballHeight", "ballTime", "opponent"] as const satisfies readonly Facet[];

const START: TriedBall = { from: placeFrom("behindBaseline", "left") };

/** Where the ball was struck and sent, by names: the same as drawing it. */
export function TryPlaces({ ball, onBall }: TryChoicesProps) {
  const at = ball ?? START;
  const depth = ball && depthOf(ball);
  const side = ball && sideOf(ball);
  const sent = ball && (ball.to ? channelTo(ball) : "kept");
  const sendTo = (id: string) => {
    const channel = CHANNELS.find((each) => each === id);
    onBall({ ...at, to: channel && placeTo(channel) });
  };
  return (
    <div className={styles.places}>
      <ToggleGroup
        legend="Struck from"
        toggles={DEPTHS_STRUCK.map((id) => ({
          id,
          label: FACET_LABELS.depth[id],
          pressed: depth === id,
        }))}
        onPress={(id) =>
          onBall({
            ...at,
            from: placeFrom(DEPTHS_STRUCK.find((each) => each === id) ?? depthOf(at), sideOf(at)),
          })
        }
      />
      <ToggleGroup
        legend="On the player's"
        toggles={CHANNELS.map((id) => ({ id, label: FACET_LABELS.side[id], pressed: side === id }))}
        onPress={(id) =>
          onBall({ ...at, from: placeFrom(depthOf(at), CHANNELS.find((each) => each === id) ?? sideOf(at)) })
        }
      />
      <ToggleGroup
        legend="Sent to the player's"
        toggles={[
          ...CHANNELS.map((id) => ({ id, label: FACET_LABELS.side[id], pressed: sent === id })),
          { id: "kept", label: "Kept, not drawn", pressed: sent === "kept" },
        ]}
        onPress={sendTo}
      />
    </div>
  );
}

/** What a chartist may answer about the ball; pressed again it is not answered. */
export function TryAnswers({ ball, onBall }: TryChoicesProps) {
  const at = ball ?? START;
  return (
    <div className={styles.answers}>
      {ANSWERS.map((facet) => {
        const labels: Readonly<Record<string, string>> = FACET_LABELS[facet];
        const answer = ball?.[facet];
        return (
          <ToggleGroup
            key={facet}
            legend={answer === undefined ? `${FACET_NAMES[facet]}: not said` : FACET_NAMES[facet]}
            toggles={FACET_VALUES[facet].map((id) => ({
              id,
              label: labels[id] ?? id,
              pressed: answer === id,
            }))}
            onPress={(id) => onBall({ ...at, [facet]: answer === id ? undefined : id })}
          />
        );
      })}
    </div>
  );
}
