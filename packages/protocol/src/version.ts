/**
 * Version of the messages. A server understands this one and the one before; a client that is newer
 * than its server, or more than one behind, is told to reload. History:
 *   1  first version.
 *   2  points may count balls that sat up and were kept; facts may be put in before others or at the end, and say whose they are;
 *      a lane may be opened as second; staff are told of alerts and say what was done about them.
 */
export const PROTOCOL_VERSION = 2;
export const OLDEST_PROTOCOL_VERSION = 1;
