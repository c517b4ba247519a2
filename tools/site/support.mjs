import { escaped, sitePage, table } from "./page.mjs";

/**
 * The page that users are sent to with a question.
 *
 * @param {import("../build/hosting.mjs").Hosting} hosting
 */
export function supportPage({ base, version, supportAddress, hasOwnSupport }) {
  const whom = hasOwnSupport
    ? `<p>Ask your firm: <a href="${escaped(supportAddress)}">${escaped(supportAddress)}</a>.</p>`
    : `<p>Ask whoever put Dutybook into your Excel: your firm’s administrators, at ${escaped(new URL(base).host)}.</p>`;
  return sitePage(
    "Dutybook: support",
    `
${whom}
<p>Say which version it is (${escaped(version)}), which Excel (File, Account), and what stood in the cell or the box. Send a workbook only if your customer’s figures may be seen.</p>
<h2>Before you ask</h2>
${table(
  ["what you see", "what it is", "what to do"],
  [
    [
      "<code>#NAME?</code> in a DUTY cell",
      "the workbook was opened before the add-in was there",
      "Home, Repair functions",
    ],
    ["<code>#BUSY!</code>", "the add-in is starting", "wait; where it stays, close Excel and open it again"],
    ["<code>#VALUE!</code>", "an argument would not do", "point at the cell: Excel shows which and why"],
    [
      "the old figures, and nothing calculates",
      "the add-in’s server cannot be reached",
      "reconnect to your firm’s network, then Ctrl+Alt+F9",
    ],
    [
      "no Dutybook on the Home tab",
      "this Excel is too old, or the add-in was not given to you",
      'see <a href="administrator.html#versions">the Excels it runs in</a>',
    ],
  ],
)}
<p><a href="help/index.html">Function reference</a>, <a href="privacy.html">privacy</a>, <a href="THIRD-PARTY-NOTICES.txt">notices</a> of the packages it is built from.</p>
<p>Dutybook is an aid to estimating. A competent, where the law asks for it a licensed, engineer checks each sheet; local codes and the pump maker’s data govern.</p>
`,
  );
}
