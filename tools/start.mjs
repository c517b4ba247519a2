// `npm start`: installs what is missing, builds, serves the workbench and prints its address. PORT names its port.
import { join } from "node:path";
import { npmPackages, ROOT, say, stop } from "./setup.mjs";

const port = wantedPort(process.env.PORT);
npmPackages();
const { built } = await import("./build.mjs");
await built();
const { serve, serveNear } = await import("./serve.mjs");
const folder = join(ROOT, "dist");
const { address } = await (port === undefined ? serveNear(folder, 3001, say) : serve(folder, port)).catch(explain);
process.stdout.write(`Workbench: ${address}/workbench/\nFunction reference: ${address}/help/\nPress Ctrl+C to stop.\n`);

function wantedPort(text) {
  if (text === undefined || text === "") return undefined;
  const number = Number(text);
  if (Number.isInteger(number) && number >= 0 && number <= 65_535) return number;
  return stop(`PORT is “${text}”; a whole number from 0 to 65535 would do.`);
}

/** Where a port was named, somebody counts on it: another one is not taken in its place. */
function explain(fault) {
  if (fault.code === "EADDRINUSE" && port === undefined)
    stop("Port 3001 and those after it are taken: name one, PORT=8080 npm start.");
  if (fault.code === "EADDRINUSE")
    stop(
      `Port ${port} is taken by another program. Stop that, or name another: PORT=${port < 65_535 ? port + 1 : 3001} npm start.`,
    );
  if (fault.code === "EACCES") stop(`Port ${port} is kept by the system. Name one above 1023: PORT=3001 npm start.`);
  throw fault;
}
