/** Where the add-in is served while it is developed; manifest.xml is written with this address. */
export const DEVELOPMENT_BASE = "https://localhost:3000/";

/** The manifest for the address the add-in is deployed at; unchanged where none is given. */
export function deployedManifest(xml, address) {
  if (address === undefined || address === "") return xml;
  const base = address.replace(/\/?$/, "/");
  // An application domain is an origin, without the folder.
  const deployed = xml
    .replaceAll(DEVELOPMENT_BASE, base)
    .replaceAll(new URL(DEVELOPMENT_BASE).origin, new URL(base).origin);
  if (/localhost/i.test(deployed)) throw new Error("the manifest still mentions localhost");
  return deployed;
}
