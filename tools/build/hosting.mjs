// Where a build will be served from, and what else is asked of it: read from the environment, once.

/** Where the add-in is served while it is developed; manifest.xml is written with this address. */
export const DEVELOPMENT_BASE = "https://localhost:3000/";

const OFFICE_OF_MAKER = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";
const OFFICE_OF_OURS = "office/office.js";

/** The variables of the environment that a build heeds. */
export const HOSTING_VARIABLES = ["ADDIN_ORIGIN", "ADDIN_BUILD", "OFFICE_JS", "SUPPORT_URL"];

/**
 * What the environment asks of a build. Throws an error with words where something in it would not do.
 *
 * ADDIN_ORIGIN is the address the add-in will be served from (https://host/folder/); without it, this machine's.
 * OFFICE_JS says where office.js comes from: "cdn", its maker's servers, or "own", the copy in office/. Unless it is
 * said, a build for this machine takes the copy, and a hosted one the maker's, who supports no other.
 * SUPPORT_URL is the page of the firm that hosts the add-in for its users' questions; without it, support.html.
 * ADDIN_BUILD is the last part of the manifest's version.
 *
 * @param {Readonly<Record<string, string | undefined>>} environment
 * @param {string} packageVersion
 */
export function hostingOf(environment, packageVersion) {
  const base = baseOf(environment.ADDIN_ORIGIN);
  const isLocal = base === DEVELOPMENT_BASE;
  const office = oneOf("OFFICE_JS", environment.OFFICE_JS, ["cdn", "own"]) ?? (isLocal ? "own" : "cdn");
  const supportUrl = environment.SUPPORT_URL || undefined;
  return {
    base,
    isLocal,
    isOfficeOwn: office === "own",
    officeScript: office === "own" ? OFFICE_OF_OURS : OFFICE_OF_MAKER,
    version: `${packageVersion}.${buildNumber(environment.ADDIN_BUILD || "0")}`,
    supportAddress: supportUrl === undefined ? `${base}support.html` : address("SUPPORT_URL", supportUrl).href,
    hasOwnSupport: supportUrl !== undefined,
  };
}

function baseOf(given) {
  if (given === undefined || given === "") return DEVELOPMENT_BASE;
  const url = address("ADDIN_ORIGIN", given);
  if (url.search !== "" || url.hash !== "" || /[?#]/.test(given)) {
    throw new Error(`ADDIN_ORIGIN is “${given}”: a folder would do, without “?” and “#”.`);
  }
  if (/^(localhost|.*\.localhost|127(\.\d+){3}|0\.0\.0\.0|\[::1?\])$/.test(url.hostname)) {
    throw new Error(
      `ADDIN_ORIGIN is “${given}”, this machine. Leave it out to build for this machine; to host, name the server.`,
    );
  }
  return url.href.replace(/\/?$/, "/");
}

/** An address over https, spelled so that it needs no mending. */
function address(name, given) {
  const like = "https://pumps.example.com/dutybook/ would do";
  if (/\s/.test(given)) throw new Error(`${name} is “${given}”, with a blank in it: ${like}.`);
  if (!URL.canParse(given)) throw new Error(`${name} is “${given}”, which is no address: ${like}.`);
  const url = new URL(given);
  if (url.protocol !== "https:") throw new Error(`${name} is “${given}”: Excel takes https alone; ${like}.`);
  if (url.username !== "" || url.password !== "") throw new Error(`${name} holds a name or a password: ${like}.`);
  return url;
}

function oneOf(name, given, choices) {
  if (given === undefined || given === "" || choices.includes(given)) return given || undefined;
  throw new Error(`${name} is “${given}”: ${choices.join(" or ")} would do.`);
}

function buildNumber(given) {
  if (/^\d{1,5}$/.test(given) && Number(given) <= 65_535) return Number(given);
  throw new Error(`ADDIN_BUILD is “${given}”: a whole number from 0 to 65535 would do.`);
}
