import { SIDES } from "@courtloom/core";
import type { Tile } from "@courtloom/protocol";
import type { BoardChoice } from "../choice/board-choice.ts";
import { useBoard } from "../use-board.ts";
import styles from "./panel.module.css";

interface Option {
  readonly id: string;
  readonly name: string;
}

/** The academy's own players of the day, by name; a player who is on two courts once. */
const ownPlayers = (tiles: readonly Tile[]): readonly Option[] => {
  const byId = new Map<string, string>();
  for (const { staff, names, own } of tiles) {
    for (const side of SIDES) if (staff && names && own?.[side]) byId.set(staff.playerIds[side], names[side]);
  }
  return [...byId].map(([id, name]) => ({ id, name })).sort((a, b) => a.name.localeCompare(b.name));
};

const courtOptions = (tiles: readonly Tile[]): readonly Option[] =>
  tiles.map(({ courtId, courtNo }) => ({ id: courtId, name: String(courtNo) }));

/** Both lists as text, so that they are drawn again only when a court or a player is another one. */
const useOptions = (): { readonly courts: readonly Option[]; readonly players: readonly Option[] } => {
  const text = useBoard(({ board }) => {
    const tiles = board.order.flatMap((id) => board.courts.get(id)?.tile ?? []);
    return JSON.stringify({ courts: courtOptions(tiles), players: ownPlayers(tiles) });
  });
  return JSON.parse(text) as ReturnType<typeof useOptions>;
};

function Choices(props: {
  readonly legend: string;
  readonly options: readonly Option[];
  readonly chosen: readonly string[];
  readonly onChange: (id: string, isIn: boolean) => void;
}) {
  return (
    <fieldset className={styles.choices}>
      <legend>{props.legend}</legend>
      {props.options.map(({ id, name }) => (
        <label key={id} className={styles.choice}>
          <input
            type="checkbox"
            checked={props.chosen.includes(id)}
            onChange={(event) => props.onChange(id, event.currentTarget.checked)}
          />
          <span>{name}</span>
        </label>
      ))}
    </fieldset>
  );
}

/** Chooses the courts and players that are the person's own. */
export function ChooseMine(props: {
  readonly choice: BoardChoice;
  readonly isKept: boolean;
  readonly onCourt: (id: string, isIn: boolean) => void;
  readonly onPlayer: (id: string, isIn: boolean) => void;
}) {
  const { courts, players } = useOptions();
  return (
    <details className={styles.mine}>
      <summary>Choose my courts and players</summary>
      <Choices
        legend="My courts, this day"
        options={courts}
        chosen={props.choice.courts}
        onChange={props.onCourt}
      />
      <Choices
        legend="My players, every day"
        options={players}
        chosen={props.choice.players}
        onChange={props.onPlayer}
      />
      <p>
        {props.isKept
          ? "Kept on this device, for your account."
          : "This browser keeps nothing: the choice ends with this page."}
      </p>
    </details>
  );
}
