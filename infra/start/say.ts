const SAY_AFTER_MS = 1000;
const SAY_AGAIN_MS = 10_000;

export type Say = (line: string) => void;

/** Writes a line for the person at the terminal; one that was closed is no reason to stop. */
export const say: Say = (line) => {
  process.stdout.write(`${line}\n`);
};

/** Tells of a step that takes over a second, that it goes on every ten, and how long it took. */
export async function step<T>(label: string, tell: Say, work: () => Promise<T>): Promise<T> {
  const began = performance.now();
  const seconds = (): string => ((performance.now() - began) / 1000).toFixed(1);
  let said = false;
  const first = setTimeout(() => {
    tell(`${label} …`);
    said = true;
  }, SAY_AFTER_MS);
  const again = setInterval(() => tell(`  … ${Math.round(Number(seconds()))} s`), SAY_AGAIN_MS);
  try {
    const result = await work();
    tell(said ? `${label}: ${seconds()} s` : `${label}: done`);
    return result;
  } finally {
    clearTimeout(first);
    clearInterval(again);
  }
}
