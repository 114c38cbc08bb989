import styles from "./plan.module.css";

export interface Toggle {
  readonly id: string;
  readonly label: string;
  readonly pressed: boolean;
}

interface ToggleGroupProps {
  readonly legend: string;
  /** Read out after the legend, where several groups on the page are called the same. */
  readonly about?: string;
  readonly toggles: readonly Toggle[];
  readonly onPress: (id: string) => void;
}

/** Buttons that belong together; each that holds is filled and says so. */
export function ToggleGroup({ legend, about, toggles, onPress }: ToggleGroupProps) {
  return (
    <fieldset className={styles.toggles}>
      <legend>
        {legend}
        {about ? <span className="vh"> {about}</span> : null}
      </legend>
      <div>
        {toggles.map(({ id, label, pressed }) => (
          <button key={id} type="button" aria-pressed={pressed} onClick={() => onPress(id)}>
            {label}
          </button>
        ))}
      </div>
    </fieldset>
  );
}
