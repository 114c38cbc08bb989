import process from "node:process";

/** Tells on the error stream how far a run is: at every tenth, so that the table on the other stream stays clean. */
export const createProgress = (what: string): ((done: number, of: number) => void) => {
  const beganMs = performance.now();
  let told = 0;
  return (done, of) => {
    const tenths = Math.floor((10 * done) / of);
    if (tenths === told) return;
    told = tenths;
    const seconds = Math.round((performance.now() - beganMs) / 1000);
    process.stderr.write(`${what}: ${done} of ${of}, ${seconds} s\n`);
  };
};
