/** The headings that a new section opens with. */
const EMPTY = "## Unreleased\n\n### Moved answers\n\n### Names\n\n### Added\n\n### Mended\n";

/**
 * The changes with what was unreleased under the number and date of its release, and an empty section above it.
 *
 * @param {string} text
 * @param {string} version
 * @param {Date} date
 */
export function releasedChanges(text, version, date) {
  const heading = "## Unreleased\n";
  if (!text.includes(`\n${heading}`)) throw new Error("CHANGELOG.md has no section “## Unreleased”");
  return text.replace(heading, `${EMPTY}\n## ${version}, ${date.toISOString().slice(0, 10)}\n`);
}
