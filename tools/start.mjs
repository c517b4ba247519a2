// `npm start`: installs what is missing, builds, serves the workbench and prints its address.
import { join } from "node:path";
import { npmPackages, ROOT } from "./setup.mjs";

npmPackages();
const { built } = await import("./build.mjs");
await built();
const { serve } = await import("./serve.mjs");
const port = Number(process.env.PORT ?? 3001);
const { address } = await serve(join(ROOT, "dist"), port);
process.stdout.write(`Workbench: ${address}/workbench/\nFunction reference: ${address}/help/\nPress Ctrl+C to stop.\n`);
