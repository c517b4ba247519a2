// With what headers each file of the built site is served: told to the servers here, and to whoever hosts a release.

/**
 * Pages that hold Excel on the web. Its maker publishes no list; these are those that its public reports name. On the
 * desktop nothing frames a pane.
 */
const EXCEL_ON_THE_WEB = [
  "https://*.officeapps.live.com",
  "https://*.sharepoint.com",
  "https://*.office.com",
  "https://*.cloud.microsoft",
  "https://*.microsoft365.com",
  "https://onedrive.live.com",
  "https://*.onedrive.live.com",
  "https://teams.microsoft.com",
];

/** What a page's own policy cannot say: its <meta> takes no frame-ancestors. */
const policy = (ancestors) => `frame-ancestors ${ancestors}; base-uri 'none'; form-action 'none'`;

/**
 * The first rule that fits a path decides. `paths` is for people to read, `fits` takes a path within the site.
 *
 * @type {readonly { readonly paths: string, readonly fits: RegExp, readonly headers: Readonly<Record<string, string>> }[]}
 */
export const HEADER_RULES = [
  {
    paths: "taskpane.html",
    fits: /^taskpane\.html$/,
    headers: {
      "Cache-Control": "no-cache",
      "Content-Security-Policy": policy(["'self'", ...EXCEL_ON_THE_WEB].join(" ")),
      "X-Content-Type-Options": "nosniff",
    },
  },
  {
    paths: "functions.json",
    fits: /^functions\.json$/,
    headers: {
      // Excel on the web fetches it from a page of its own.
      "Access-Control-Allow-Origin": "*",
      "Cache-Control": "no-cache",
      "X-Content-Type-Options": "nosniff",
    },
  },
  {
    paths: "*.html",
    fits: /(^|\/)$|\.html$/,
    headers: {
      "Cache-Control": "no-cache",
      "Content-Security-Policy": policy("'none'"),
      "X-Content-Type-Options": "nosniff",
    },
  },
  {
    paths: "*.????????.js, *.????????.css",
    fits: /\.[0-9a-f]{8}\.(js|css)$/,
    headers: { "Cache-Control": "public, max-age=31536000, immutable", "X-Content-Type-Options": "nosniff" },
  },
  {
    paths: "*",
    fits: /^/,
    headers: { "Cache-Control": "no-cache", "X-Content-Type-Options": "nosniff" },
  },
];

/**
 * The headers of one file, by its path within the site.
 *
 * @param {string} path
 * @returns {Readonly<Record<string, string>>}
 */
export function headersOf(path) {
  return HEADER_RULES.find(({ fits }) => fits.test(path)).headers;
}
