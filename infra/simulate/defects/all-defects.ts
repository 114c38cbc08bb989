import type { Defect } from "../defect.ts";
import { IN_THE_LOG } from "./in-the-log.ts";
import { ON_THE_DEVICE } from "./on-the-device.ts";
import { ON_THE_NODE } from "./on-the-node.ts";

/** Each must be caught, or the simulator proves nothing. SPEC SM6. */
export const ALL_DEFECTS: readonly Defect[] = [...ON_THE_NODE, ...IN_THE_LOG, ...ON_THE_DEVICE];
