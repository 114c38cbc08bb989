/**
 * Version of the messages. A server understands this one and the one before; a client that is newer
 * than its server, or more than one behind, is told to reload. History:
 *   1  first version.
 */
export const PROTOCOL_VERSION = 1;
export const OLDEST_PROTOCOL_VERSION = 1;
