import { escaped, sitePage } from "./page.mjs";

/**
 * What the add-in does with what it is given.
 *
 * @param {import("../build/hosting.mjs").Hosting} hosting
 */
export function privacyPage({ base, isOfficeOwn }) {
  const host = escaped(new URL(base).host);
  const library = isOfficeOwn
    ? `It is loaded from ${host} too.`
    : "It is loaded from its maker’s servers, which see the address of your machine when it is.";
  return sitePage(
    "Dutybook: privacy",
    `
<p>Dutybook itself sends nothing. Duties, pump curves, prices and workbooks are worked out in Excel or in your browser and stay there. It has no account, no cookies, no advertising and no statistics of use.</p>
<h2>What is kept</h2>
<p>The duty in the pane, and in the workbench the open workbook, are kept in the storage of the browser (or of the web view in Excel) on your own machine, so that they are there again after a restart. A calc sheet holds its duty in the workbook; whoever gets the workbook gets that. The copy for the customer holds neither prices nor the duty.</p>
<h2>What others see</h2>
<p>${host}, which serves the add-in, sees as any web server does that your machine asks for its files, and no more: nothing you type is in what is asked for. How long that is kept is for whoever runs the server to say.</p>
<p>Inside Excel the add-in runs on the Office library of Excel’s maker. ${library} That library may report its own use to its maker, as with every add-in; the privacy settings of Office govern it. Outside Excel Dutybook does not load it.</p>
<h2>Permission</h2>
<p>In Excel the add-in asks to read and change the workbook that is open. It needs that to write sheets and to read them back; it touches no other file.</p>
<p><a href="support.html">Support</a></p>
`,
  );
}
