import type { Miss } from "@courtloom/match-log";
import type { DraftEvent } from "./draft-reducer.ts";
import type { Ending, PointDraft } from "./point-draft.ts";
import { Segment } from "./segment.tsx";

interface EndingRowProps {
  /** Who struck the last ball. */
  readonly striker: string;
  readonly opponent: string;
  readonly draft: PointDraft;
  readonly ending: Ending | undefined;
  readonly send: (event: DraftEvent) => void;
}

const MISS_LABELS: Readonly<Record<Miss, string>> = { net: "Net", wide: "Wide", long: "Long" };

/** How the point ended, told of the last ball. Nothing is chosen beforehand but what the drawing says for certain. */
export const EndingRow = ({ striker, opponent, draft, ending, send }: EndingRowProps) => {
  const choose = (chosen: Ending) => () => send({ type: "endingChosen", ending: chosen, chosen: ending });
  if (ending?.type === "missed") {
    const forced = (value: boolean) => ({
      pressed: draft.missForced === value,
      onPress: () => send({ type: "forcedChosen", forced: value }),
    });
    return (
      <Segment
        label={`${striker} missed`}
        caption={striker}
        choices={[
          {
            id: "missed",
            label: ending.miss ? `Missed ${ending.miss}` : "Missed, called out",
            ...(ending.miss ? { action: ending.miss } : {}),
            pressed: true,
            onPress: choose(ending),
          },
          { id: "forced", label: "Forced", action: "forced", ...forced(true) },
          { id: "unforced", label: "Not forced", action: "notForced", ...forced(false) },
        ]}
      />
    );
  }
  const misses = (Object.keys(MISS_LABELS) as Miss[]).map((miss) => ({
    id: miss,
    label: MISS_LABELS[miss],
    action: miss,
    pressed: false,
    onPress: choose({ type: "missed", miss }),
  }));
  return (
    <Segment
      label={`How ${striker}’s last ball ended the point`}
      caption={striker}
      choices={[
        {
          id: "winner",
          label: "Winner",
          action: "winner",
          pressed: ending?.type === "winner",
          onPress: choose({ type: "winner" }),
        },
        {
          id: "forcedMiss",
          label: "Forced",
          action: "forcedMiss",
          hint: `Forced a miss from ${opponent}`,
          pressed: ending?.type === "forced",
          onPress: choose({ type: "forced" }),
        },
        ...misses,
      ]}
    />
  );
};
