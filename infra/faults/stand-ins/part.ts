// A small stand-in for `web` or `live`, for proving the supervisor alone: answers like them, does nothing.
import { createServer } from "node:http";
import process from "node:process";
import { Server } from "socket.io";

const [name = "web", port = "0"] = process.argv.slice(2);
const { INSTANCE_ID: instanceId } = process.env;

const server = createServer((request, response) => {
  const body = request.url === "/healthz" ? { instanceId } : { name, headers: request.headers };
  response.writeHead(200, { "content-type": "application/json" });
  response.end(JSON.stringify(body));
  if (request.url === "/ask-for-demo") process.send?.({ kind: "demo-loaded" });
});
if (name === "live") {
  const io = new Server(server, { path: "/rt", addTrailingSlash: false, transports: ["websocket"] });
  io.on("connection", (socket) => {
    socket.on("echo", (value: unknown, acknowledge: (value: unknown) => void) => acknowledge(value));
  });
}
server.listen(Number(port), "127.0.0.1");
process.on("SIGTERM", () => process.exit(0));
