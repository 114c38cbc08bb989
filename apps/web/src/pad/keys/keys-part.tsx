import type { PadSettings } from "../pad-settings.ts";
import { Segment } from "../segment.tsx";

interface KeysPartProps {
  readonly settings: PadSettings;
  readonly onSettings: (settings: PadSettings) => void;
  readonly onShow: () => void;
}

/** The keys of a keyboard: what they are, and whether single ones act. */
export const KeysPart = ({ settings, onSettings, onShow }: KeysPartProps) => (
  <section>
    <h3>Keyboard</h3>
    <Segment
      label="Keyboard"
      choices={[
        { id: "show", label: "Show the keys", onPress: onShow, action: "keyMap" },
        {
          id: "on",
          label: "Keys on",
          pressed: settings.keys,
          onPress: () => onSettings({ ...settings, keys: true }),
        },
        {
          id: "off",
          label: "Keys off",
          pressed: !settings.keys,
          onPress: () => onSettings({ ...settings, keys: false }),
        },
      ]}
    />
  </section>
);
