import { createServer } from "node:http";
import type { AddressInfo } from "node:net";
import { SOCKET_PATH } from "@courtloom/protocol";
import { Server } from "socket.io";

/**
 * The floor of `broadcast`, in a process of its own as the live part is: whoever says "point" is answered, and then
 * everybody is told what came with it. Says its port and ends with its parent.
 */
const web = createServer();
const sockets = new Server(web, { path: SOCKET_PATH, addTrailingSlash: false, transports: ["websocket"] });
sockets.on("connection", (socket) => {
  socket.on("point", (message: unknown, answer: () => void) => {
    answer();
    sockets.emit("told", message);
  });
});
web.listen(0, "127.0.0.1", () => process.send?.((web.address() as AddressInfo).port));
process.on("disconnect", () => process.exit(0));
