import type { FilterChoices, HistoryFilter } from "@courtloom/api";
import { LEVEL_WORDS } from "../board/tile-words.ts";
import { ActionButton } from "../form/action-button.tsx";
import { Field } from "../form/field.tsx";
import { filterWords, OPPONENT_WORDS, SURFACE_WORDS } from "./history-words.ts";
import { daysBefore, PERIODS } from "./period.ts";
import styles from "./players.module.css";

interface FilterPartProps {
  readonly filter: HistoryFilter;
  /** Absent while nothing was read yet. */
  readonly choices: FilterChoices | undefined;
  /** Today by the academy's clocks, as "2026-05-30". */
  readonly today: string;
  readonly set: (filter: HistoryFilter) => void;
}

interface SelectProps {
  readonly label: string;
  readonly all: string;
  readonly value: string | undefined;
  readonly options: readonly { readonly value: string; readonly label: string }[];
  readonly choose: (value: string | undefined) => void;
}

function Select({ label, all, value, options, choose }: SelectProps) {
  const isListed = value === undefined || options.some((option) => option.value === value);
  return (
    <Field label={label}>
      {(control) => (
        <select
          {...control}
          value={value ?? ""}
          onChange={(event) => choose(event.target.value === "" ? undefined : event.target.value)}
        >
          <option value="">{all}</option>
          {isListed ? null : <option value={value}>{value}</option>}
          {options.map((option) => (
            <option key={option.value} value={option.value}>
              {option.label}
            </option>
          ))}
        </select>
      )}
    </Field>
  );
}

/** The filter with one member set, or without it. */
const withMember = <K extends keyof HistoryFilter>(
  filter: HistoryFilter,
  name: K,
  value: HistoryFilter[K] | undefined,
): HistoryFilter => {
  const { [name]: _, ...rest } = filter;
  return value === undefined ? rest : { ...rest, [name]: value };
};

function Period({ filter, choices, today, set }: FilterPartProps) {
  const date = (label: string, name: "from" | "to") => (
    <Field label={label}>
      {(control) => (
        <input
          {...control}
          type="date"
          value={filter[name] ?? ""}
          min={choices?.first ?? undefined}
          max={today}
          onChange={(event) => set(withMember(filter, name, event.target.value || undefined))}
        />
      )}
    </Field>
  );
  return (
    <>
      <fieldset className={styles.periods}>
        <legend>Period</legend>
        {PERIODS.map(({ label, days }) => {
          const from = daysBefore(today, days);
          const isChosen = filter.from === from && filter.to === undefined;
          return (
            <button
              key={label}
              type="button"
              aria-pressed={isChosen}
              onClick={() => set({ ...withMember(filter, "to", undefined), from })}
            >
              {label}
            </button>
          );
        })}
      </fieldset>
      {date("From", "from")}
      {date("To", "to")}
    </>
  );
}

const asOptions = <T extends string>(values: readonly T[], words: Readonly<Record<T, string>>) =>
  values.map((value) => ({ value, label: words[value] }));

const asTheyAre = (values: readonly string[]) => values.map((value) => ({ value, label: value }));

/** Which matches count: period, opponent's level, surface, format, charting level and chartist. SPEC PF6. */
export function FilterPart(props: FilterPartProps) {
  const { filter, choices, set } = props;
  const select = <K extends Exclude<keyof HistoryFilter, "from" | "to">>(
    name: K,
    label: string,
    options: SelectProps["options"],
  ) => (
    <Select
      label={label}
      all="All"
      value={filter[name]}
      options={options}
      choose={(value) => set(withMember(filter, name, value as HistoryFilter[K]))}
    />
  );
  return (
    <details className={styles.filters} data-testid="filters">
      <summary>
        Counted: <b>{filterWords(filter)}</b>
      </summary>
      <div className={styles.fields}>
        <Period {...props} />
        {select("opponent", "Opponents", asOptions(choices?.opponents ?? [], OPPONENT_WORDS))}
        {select("surface", "Surface", asOptions(choices?.surfaces ?? [], SURFACE_WORDS))}
        {select("format", "Format", asTheyAre(choices?.formats ?? []))}
        {select("level", "Charted as", asOptions(choices?.levels ?? [], LEVEL_WORDS))}
        {select("chartist", "Charted by", asTheyAre(choices?.chartists ?? []))}
      </div>
      {Object.keys(filter).length === 0 ? null : (
        <div className={styles.filterEnd}>
          <ActionButton label="Count all matches" onPress={() => set({})} />
        </div>
      )}
    </details>
  );
}
