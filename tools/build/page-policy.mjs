/**
 * The content-security policy of a page, to stand in the page itself: everything from its own address, scripts from the
 * others named too. What may frame the page cannot be said there; a server says that in a header.
 *
 * @param {readonly string[]} [scriptOrigins]
 */
export function pagePolicy(scriptOrigins = []) {
  const scripts = ["'self'", ...scriptOrigins].join(" ");
  return [
    "default-src 'self'",
    `script-src ${scripts}`,
    `connect-src ${scripts}`,
    "img-src 'self' data: blob:",
    "frame-src 'none'",
    "object-src 'none'",
    "base-uri 'none'",
    "form-action 'none'",
  ].join("; ");
}
