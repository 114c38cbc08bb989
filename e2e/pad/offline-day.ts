import { padTest } from "./pad-day.ts";

/** The flows without a network share a product and day of their own. */
export const test = padTest("pad-offline");
