import { PAD_HANDS, type PadHand, type PadSettings } from "../pad-settings.ts";
import { Segment } from "../segment.tsx";
import { usePadDevice } from "./pad-device.ts";

interface HandAndFeelProps {
  readonly settings: PadSettings;
  readonly onSettings: (settings: PadSettings) => void;
}

const HAND_LABELS: Readonly<Record<PadHand, string>> = { right: "Right", left: "Left" };

interface SwitchProps {
  readonly title: string;
  readonly isOn: boolean;
  readonly onChange: (isOn: boolean) => void;
}

const Switch = ({ title, isOn, onChange }: SwitchProps) => (
  <section>
    <h3>{title}</h3>
    <Segment
      label={title}
      choices={[true, false].map((value) => ({
        id: String(value),
        label: value ? "On" : "Off",
        pressed: value === isOn,
        onPress: () => onChange(value),
      }))}
    />
  </section>
);

/** In which hand the phone is held, and what is felt and heard. */
export const HandAndFeel = ({ settings, onSettings }: HandAndFeelProps) => {
  const { hasHaptics, hasSound } = usePadDevice();
  return (
    <>
      <section>
        <h3>Holding hand</h3>
        <Segment
          label="Holding hand"
          choices={PAD_HANDS.map((hand) => ({
            id: hand,
            label: HAND_LABELS[hand],
            pressed: hand === settings.hand,
            onPress: () => onSettings({ ...settings, hand }),
          }))}
        />
      </section>
      {hasHaptics && (
        <Switch
          title="Tick in the hand"
          isOn={settings.haptics}
          onChange={(haptics) => onSettings({ ...settings, haptics })}
        />
      )}
      {hasSound && (
        <Switch
          title="Tick to hear"
          isOn={settings.sound}
          onChange={(sound) => onSettings({ ...settings, sound })}
        />
      )}
    </>
  );
};
