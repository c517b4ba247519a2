import { DEVELOPMENT_BASE } from "./hosting.mjs";

/**
 * The manifest as a build ships it: with the address it is served from, its version, where its users ask, and
 * functions.json under a name that is new with each version, since Excel keeps what it has read of a name.
 *
 * @param {string} xml manifest.xml
 * @param {import("./hosting.mjs").Hosting} hosting
 */
export function stampedManifest(xml, { base, version, supportAddress }) {
  return xml
    .replace(/(<Version>)[^<]*/, `$1${version}`)
    .replace(/(<SupportUrl DefaultValue=")[^"]*/, `$1${attribute(supportAddress)}`)
    .replace(/(functions\.json)(?=")/, `$1?v=${version}`)
    .replaceAll(DEVELOPMENT_BASE, base)
    .replaceAll(`>${new URL(DEVELOPMENT_BASE).origin}<`, `>${new URL(base).origin}<`);
}

function attribute(text) {
  return text.replaceAll("&", "&amp;").replaceAll('"', "&quot;").replaceAll("<", "&lt;");
}
