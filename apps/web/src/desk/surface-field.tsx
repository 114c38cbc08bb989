import { SURFACES, type Surface } from "@courtloom/tennis";
import { Field } from "../form/field.tsx";

export const SURFACE_LABELS: Readonly<Record<Surface, string>> = {
  hard: "Hard",
  clay: "Clay",
  grass: "Grass",
  artificialGrass: "Artificial grass",
  carpet: "Carpet",
};

/** What a form's text names; `undefined` for the choice that leaves it open. */
export const surfaceFrom = (text: string): Surface | undefined =>
  SURFACES.find((surface) => surface === text);

interface SurfaceFieldProps {
  /** The choice that says nothing. */
  readonly open: string;
  readonly error?: string | undefined;
}

/** What the courts are made of; it may be left open. */
export function SurfaceField({ open, error }: SurfaceFieldProps) {
  return (
    <Field label="Surface" error={error}>
      {(control) => (
        <select {...control} name="surface" defaultValue="">
          <option value="">{open}</option>
          {SURFACES.map((surface) => (
            <option key={surface} value={surface}>
              {SURFACE_LABELS[surface]}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}
