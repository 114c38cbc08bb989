import { FILTERS, type Filter, withId } from "../choice/board-choice.ts";
import type { ChoiceStore } from "../choice/choice-store.ts";
import { useChoice } from "../choice/use-choice.ts";
import { ChooseMine } from "./choose-mine.tsx";
import styles from "./panel.module.css";

export const FILTER_WORDS = {
  all: "All courts",
  players: "My players",
  courts: "My courts",
  alerts: "Alerts only",
} satisfies Record<Filter, string>;

/** What to do where a filter lets no court stand out. */
const hintFor = (filter: Filter, isEmpty: boolean): string | null => {
  if (filter === "players" && isEmpty) return "No player of yours yet. Choose below.";
  if (filter === "courts" && isEmpty) return "No court of yours yet. Choose below.";
  return null;
};

/** Which courts stand out. The others keep their places. */
export function ShowPart({ store }: { readonly store: ChoiceStore }) {
  const choice = useChoice();
  const mine = choice.filter === "players" ? choice.players : choice.courts;
  const hint = hintFor(choice.filter, mine.length === 0);
  return (
    <section className={styles.part} aria-labelledby="show">
      <h2 id="show">Show</h2>
      <fieldset className={styles.filters} aria-labelledby="show">
        {FILTERS.map((filter) => (
          <label key={filter} className={styles.filter}>
            <input
              type="radio"
              name="filter"
              value={filter}
              checked={choice.filter === filter}
              onChange={() => store.set({ ...choice, filter })}
            />
            <span>{FILTER_WORDS[filter]}</span>
          </label>
        ))}
      </fieldset>
      {hint === null ? null : <p>{hint}</p>}
      <ChooseMine
        choice={choice}
        isKept={store.isKept()}
        onCourt={(id, isIn) => store.set({ ...choice, courts: withId(choice.courts, id, isIn) })}
        onPlayer={(id, isIn) => store.set({ ...choice, players: withId(choice.players, id, isIn) })}
      />
    </section>
  );
}
