// npm run excel — serves the add-in on this machine over https and says how to load it into Excel.
import { X509Certificate } from "node:crypto";
import { existsSync, readFileSync, rmSync } from "node:fs";
import { createServer } from "node:net";
import path from "node:path";
import { fileURLToPath } from "node:url";
import { generateCertificates } from "office-addin-dev-certs/lib/generate.js";
import webpack from "webpack";
import WebpackDevServer from "webpack-dev-server";
import { addin } from "./build/addin.mjs";
import { hostingOf } from "./build/hosting.mjs";
import { stop } from "./setup.mjs";
import { headersOf } from "./site/headers.mjs";

const PORT = 3000;
const root = fileURLToPath(new URL("..", import.meta.url));
const { version } = JSON.parse(readFileSync(path.join(root, "package.json"), "utf8"));
const folder = path.join(root, ".cache", "certificates");
const certificates = {
  ca: path.join(folder, "ca.crt"),
  cert: path.join(folder, "localhost.crt"),
  key: path.join(folder, "localhost.key"),
};

if (await isTaken(PORT)) {
  stop(`Port ${PORT} is taken by another program, and manifest.xml names this port. Stop that program and run again.`);
}
await renewCertificates();
const configuration = addin("development", hostingOf({ OFFICE_JS: process.env.OFFICE_JS }, version));
// Served from memory; a build in dist/ stays as it is.
configuration.output.clean = false;
configuration.devServer = {
  host: "localhost",
  port: PORT,
  server: {
    type: "https",
    options: {
      ca: readFileSync(certificates.ca),
      cert: readFileSync(certificates.cert),
      key: readFileSync(certificates.key),
    },
  },
  headers: ({ path: asked }) => headersOf(asked.slice(1)),
  static: false,
  hot: false,
  client: { overlay: false },
};
const server = new WebpackDevServer(configuration.devServer, webpack(configuration));
await server.start();
console.log(instructions());

function isTaken(port) {
  return new Promise((resolve, reject) => {
    const probe = createServer()
      .once("error", (fault) => (fault.code === "EADDRINUSE" ? resolve(true) : reject(fault)))
      .listen(port, "localhost", () => probe.close(() => resolve(false)));
  });
}

/** Makes certificates for localhost where there are none or they are about to end. */
async function renewCertificates() {
  const soon = Date.now() + 2 * 24 * 3600 * 1000;
  const valid =
    Object.values(certificates).every((file) => existsSync(file)) &&
    Date.parse(new X509Certificate(readFileSync(certificates.cert)).validTo) > soon;
  if (valid) return;
  rmSync(folder, { recursive: true, force: true });
  await generateCertificates(certificates.ca, certificates.cert, certificates.key, 365, ["127.0.0.1", "localhost"]);
}

function instructions() {
  const ca = path.relative(root, certificates.ca);
  return `
Dutybook is served at https://localhost:${PORT}/taskpane.html until you press Ctrl+C.

Trust the certificate ${ca} once on this machine:
  Windows  certutil -user -addstore Root ${ca}
  Mac      security add-trusted-cert -k ~/Library/Keychains/login.keychain-db ${ca}

Then load manifest.xml into Excel:
  Web      Home > Add-ins > More Add-ins > My Add-ins > Upload My Add-in, and choose the file.
  Windows  Share a folder that holds a copy of it, name the share under File > Options > Trust Center >
           Trust Center Settings > Trusted Add-in Catalogs (tick Show in Menu), restart Excel,
           then Home > Add-ins > More Add-ins > Shared Folder.
  Mac      Copy it to ~/Library/Containers/com.microsoft.Excel/Data/Documents/wef/, restart Excel,
           then Home > Add-ins.

Type =DUTY. in a cell, or open the duty pane from the Home tab.`;
}
