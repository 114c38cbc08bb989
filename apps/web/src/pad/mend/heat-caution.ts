/** What is said where play stops for heat or treatment: no judgement of what is safe. */
export const HEAT_CAUTION =
  "Follow the event’s heat policy and the officials. Stop and get help if a player feels unwell; call emergency services for collapse or confusion.";
