import { HEADER_RULES } from "./headers.mjs";
import { escaped, sitePage, table } from "./page.mjs";

const code = (text) => `<code>${escaped(text)}</code>`;

/**
 * The page for whoever hosts the add-in and gives it to people.
 *
 * @param {import("../build/hosting.mjs").Hosting} hosting
 */
export function administratorPage(hosting) {
  const { base, version, isLocal } = hosting;
  const address = code(base);
  return sitePage(
    `Dutybook ${version}: for administrators`,
    `
${isLocal ? "<p><strong>This build is for one machine alone; it cannot be hosted.</strong> Build a release with ADDIN_ORIGIN, the address it will be served from.</p>" : ""}
<p>Dutybook is a folder of files. Whoever serves it needs a web server with https, and nothing else: no database, no program on the server, no licence key.</p>
<nav><ol>
<li><a href="#serve">Serve the files</a></li>
<li><a href="#give">Give the add-in to people</a></li>
<li><a href="#versions">The Excels it runs in</a></li>
<li><a href="#update">Update, and go back</a></li>
<li><a href="#offline">Without a connection</a></li>
<li><a href="#office">The Office library</a></li>
<li><a href="#papers">Privacy, licences, support</a></li>
</ol></nav>

<h2 id="serve">1. Serve the files</h2>
<ol>
<li>Unpack the zip into an empty folder of your web server, so that ${code("taskpane.html")} is at ${code(`${base}taskpane.html`)}. This build is made for ${address} and for no other address: the address stands in ${code("manifest.xml")} and ${code("functions.json")}. For another one, build again.</li>
<li>Use a certificate that the machines of your users trust. Without one Excel shows nothing.</li>
<li>Send these headers. The first row that fits a path counts; ${code("*")} stands for any characters, folders too, ${code("?")} for one.
${headerTable()}
</li>
<li>Send no ${code("X-Frame-Options")}: Excel on the web shows the pane in a frame. Where it stays blank there, the browser’s console names the page that frames it; add that to ${code("frame-ancestors")}. Excel’s maker publishes no list; the one above is taken from public reports.</li>
<li>Send ${code("Content-Type")} by the file’s ending, as web servers do: ${code("text/html")}, ${code("text/javascript")}, ${code("text/css")}, ${code("application/json")}, ${code("text/plain")}, ${code("image/png")}. Compress texts (gzip or brotli): the pane is then a third of its size.</li>
<li>Look: ${code(`${base}help/index.html`)} shows the functions, ${code(`${base}taskpane.html`)} the pane, ${code(`${base}workbench/`)} a spreadsheet with the functions in the browser.</li>
</ol>

<h2 id="give">2. Give the add-in to people</h2>
<p>In the Microsoft 365 admin centre: Settings, Integrated apps, Upload custom apps. Choose “Office Add-in”, upload ${code("manifest.xml")}, and name who gets it: try it on a few first. It appears on their Home tab within a day, usually sooner, after Excel is started again. It asks for leave to read and change the open workbook.</p>
<p>Without the admin centre: put ${code("manifest.xml")} into a shared folder, and name that folder in Excel under File, Options, Trust Center, Trusted Add-in Catalogs (Windows alone).</p>

<h2 id="versions">3. The Excels it runs in</h2>
${versionTable()}
<p>An Excel that is too old does not show the add-in and says nothing. A reader without the add-in, of whatever Excel, sees the figures as last calculated; a cell that is entered or calculated again there shows ${code("#NAME?")}. For them there is the customer’s copy, in which every figure is a plain number.</p>

<h2 id="update">4. Update, and go back</h2>
<ol>
<li>Unpack the new zip over the old files. Leave the old ones: scripts have a name of their own for each version, and a pane that is open still asks for its own. After a month delete what the new zip does not hold.</li>
<li>Upload the new ${code("manifest.xml")} in the admin centre (Integrated apps, Dutybook, Update). Its version, ${code(version)}, is above the last, which makes Excel read the list of functions anew; without it Excel keeps the old list for up to a day, and new functions show ${code("#NAME?")}.</li>
<li>To go back, unpack the old zip over the files and upload the manifest of that version with its ${code("Version")} raised above the one in use: Excel takes no lower one. Formulas of newer functions show ${code("#NAME?")} until the update is made again; names and arguments that were released once are never changed or taken away.</li>
</ol>

<h2 id="offline">5. Without a connection</h2>
<p>Excel loads the add-in from ${address} when it starts. Where that cannot be reached, DUTY cells keep their last figures and do not calculate; nothing in the workbook is lost. For people on the road, host it where their connection (VPN) reaches.</p>

<h2 id="office">6. The Office library</h2>
<p>${officeText(hosting)}</p>

<h2 id="papers">7. Privacy, licences, support</h2>
<ul>
<li><a href="privacy.html">Privacy</a>: what is kept where, and what is sent.</li>
<li><a href="support.html">Support</a>: the page that Excel’s “Support” leads to. To send your people to a page of your own, build with ${code("SUPPORT_URL=https://…")}.</li>
<li><a href="LICENSE.txt">Licence</a> of Dutybook, <a href="THIRD-PARTY-NOTICES.txt">notices</a> of the packages in it, <a href="sbom.json">bill of materials</a> (CycloneDX).</li>
</ul>
<p>Dutybook is an aid to estimating. A competent, where the law asks for it a licensed, engineer checks each sheet; local codes and the pump maker’s data govern.</p>
`,
  );
}

function headerTable() {
  const rows = HEADER_RULES.map(({ paths, headers }) => [
    paths.split(", ").map(code).join("<br>"),
    Object.entries(headers)
      .map(([name, value]) => code(`${name}: ${value}`))
      .join("<br>"),
  ]);
  return table(["files", "headers"], rows, "headers");
}

/** From the maker's tables of requirement sets: those of the manifest, CustomFunctionsRuntime 1.3 being the latest. */
function versionTable() {
  return table(
    ["Excel", "from", "remark"],
    [
      ["Windows, Microsoft 365", "version 2008 (build 13127)", "August 2020"],
      ["Windows, bought once in a shop (2016, 2019, 2021, 2024)", "version 2311 (build 17029)", "after its updates"],
      ["Windows, volume licence", "LTSC 2021 (version 2108) and later", "not 2016 and 2019: they never show it"],
      ["Mac", "16.40, on macOS 12 or later", "pages need its Safari 16"],
      ["Web", "any", "in a current Edge, Chrome or Safari"],
      ["iPad, iPhone, Android", "none", "they show the last figures"],
    ],
    "excels",
  );
}

function officeText({ isOfficeOwn, base }) {
  return isOfficeOwn
    ? `This build serves a copy of the Office library from ${code(`${base}office/`)}. Its maker supports the library only from its own servers, offers the copy for development and closed networks, and forbids to publish it for others; a later Excel may ask for a file that is not in it, and then shows no pane. Its terms are at the end of the <a href="THIRD-PARTY-NOTICES.txt">notices</a>: who serves it agrees to them. To take it from its maker’s servers, build without ${code("OFFICE_JS=own")}.`
    : `This build takes the Office library from its maker’s servers (${code("https://appsforoffice.microsoft.com")}), as its maker asks; machines must reach them. On a closed network, build with ${code("OFFICE_JS=own")}: the copy is then served with the add-in, which its maker does not support.`;
}
