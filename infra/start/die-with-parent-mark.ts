/** Set in the environment of a process that is to end with its supervisor, and of no other. */
export const DIE_WITH_PARENT_MARK = "COURTLOOM_DIES_WITH_PARENT";
