import type { Page } from "@playwright/test";

export interface BigDay {
  readonly dayId: string;
  /** One per court, in their order. */
  readonly matchIds: readonly string[];
}

interface Asked {
  readonly path: string;
  readonly input: object;
  readonly isQuery?: true;
}

/** Asks the procedure in the page, as its screens do: with its own origin and cookie. */
const ask = async <T>(page: Page, asked: Asked): Promise<T> => {
  const answer = await page.evaluate(async ({ path, input, isQuery }) => {
    const query = isQuery ? `?input=${encodeURIComponent(JSON.stringify(input))}` : "";
    const init = isQuery
      ? {}
      : { method: "POST", headers: { "content-type": "application/json" }, body: JSON.stringify(input) };
    return (await fetch(`/api/trpc/${path}${query}`, init)).json() as Promise<unknown>;
  }, asked);
  const { result } = answer as { readonly result?: { readonly data: T } };
  if (!result) throw new Error(`${asked.path} was refused: ${JSON.stringify(answer)}`);
  return result.data;
};

/** A day of so many courts with a match on each, made by the procedures that the desk uses; the page is a director's. */
export const makeBigDay = async (page: Page, courts: number): Promise<BigDay> => {
  const date = new Date().toISOString().slice(0, 10);
  const { dayId } = await ask<{ dayId: string }>(page, {
    path: "day.create",
    input: { name: "Broadcast day", date, courts },
  });
  const day = await ask<{ courts: readonly { readonly courtId: string }[] }>(page, {
    path: "day.get",
    input: { dayId },
    isQuery: true,
  });
  const matchIds: string[] = [];
  for (const [i, { courtId }] of day.courts.entries()) {
    const player = (name: string, own: boolean) => [{ name: `${name} ${i + 1}`, hand: "right", own }];
    const { matchId } = await ask<{ matchId: string }>(page, {
      path: "match.add",
      input: {
        ...{ dayId, courtId, firstServer: "A", format: "bestOfThree" },
        sides: { A: player("Player", true), B: player("Visitor", false) },
      },
    });
    matchIds.push(matchId);
  }
  return { dayId, matchIds };
};
