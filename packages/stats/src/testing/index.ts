export { drawBeta, drawCount, drawNormal, seeded } from "./seeded.ts";
export type { SimulatedPlayer } from "./simulated-academy.ts";
export { pool, simulateAcademy } from "./simulated-academy.ts";
