import { type CourtWatch, type CourtWatchReply, courtWatchShape } from "./court-watch.ts";

/** Read a page of a match's log without subscribing; fills gaps. Same shape and reply as `court.watch`. */
export type CourtRead = CourtWatch;
export type CourtReadReply = CourtWatchReply;
export const courtReadShape = courtWatchShape;
