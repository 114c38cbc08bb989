/** Every cache of ours begins with this; the build's id follows. */
export const SHELL_CACHE_PREFIX = "courtloom-pad-";

/** Where the pad's page is, and the only page that is ever kept. */
export const SHELL_PATH = "/pad";

/** The worker's script; a new build gives another text, which is how browsers notice it. */
export const WORKER_PATH = "/pad-worker.js";
