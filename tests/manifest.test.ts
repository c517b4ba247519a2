import { readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { functionMetadata } from "../shared/catalogue/metadata.ts";
import { NAMESPACE } from "../shared/ports/namespace.ts";
import { type Built, manifestNamespace, manifestProblems } from "../tools/build/check-manifest.mjs";
import { hostingOf } from "../tools/build/hosting.mjs";
import { stampedManifest } from "../tools/build/stamped-manifest.mjs";

const xml = readFileSync("manifest.xml", "utf8");
const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { readonly version: string };

const HOSTED = hostingOf({ ADDIN_ORIGIN: "https://pumps.example/dutybook", ADDIN_BUILD: "7" }, version);
const DEPLOYED = stampedManifest(xml, HOSTED);

interface Described {
  id: string;
  name: string;
  helpUrl: string;
}

/** What a build holds of what a manifest names: the project's own icons, metadata of its own, and stand-ins. */
function builtOf(change: (files: Map<string, Uint8Array>, functions: Described[]) => void = () => {}): Built {
  const metadata = functionMetadata(HOSTED.base);
  const functions: Described[] = metadata.functions.map((each) => ({ ...each }));
  const bytes = (text: string): Uint8Array => new TextEncoder().encode(text);
  const script = functions.map(({ id }) => `associate("${id}")`).join(";");
  const files = new Map<string, Uint8Array>([
    ...[16, 32, 64, 80].map((size) => [`assets/icon-${size}.png`, readFileSync(`assets/icon-${size}.png`)] as const),
    ...functions.map(({ id }) => [`help/${id}.html`, bytes("")] as const),
    ["help/index.html", bytes("")],
    ["support.html", bytes("")],
    ["taskpane.html", bytes("")],
    ["functions.js", bytes(script)],
  ]);
  change(files, functions);
  files.set("functions.json", files.get("functions.json") ?? bytes(JSON.stringify({ ...metadata, functions })));
  return { base: HOSTED.base, file: (path) => files.get(path) };
}

describe("the manifest", () => {
  it("holds together", () => {
    expect(manifestProblems(xml)).toEqual([]);
  });

  it("gives the functions the catalogue's namespace", () => {
    expect(manifestNamespace(xml)).toBe(NAMESPACE);
  });

  it("carries the package's version", () => {
    expect(xml).toContain(`<Version>${version}.0</Version>`);
  });
});

describe("the manifest of a build", () => {
  it("holds together, with the files it names", () => {
    expect(manifestProblems(DEPLOYED, builtOf())).toEqual([]);
  });

  it("names the address it is served from throughout, and no other", () => {
    expect(DEPLOYED).not.toContain("localhost");
    expect(DEPLOYED).toContain('"https://pumps.example/dutybook/taskpane.html"');
    expect(DEPLOYED).toContain("<AppDomain>https://pumps.example</AppDomain>");
  });

  it("has the number of the build in its version, and asks for the functions under it", () => {
    expect(DEPLOYED).toContain(`<Version>${version}.7</Version>`);
    expect(DEPLOYED).toContain(`"https://pumps.example/dutybook/functions.json?v=${version}.7"`);
  });

  it("sends its users to the page of the firm where there is one", () => {
    expect(DEPLOYED).toContain('<SupportUrl DefaultValue="https://pumps.example/dutybook/support.html"/>');
    const asked = { ADDIN_ORIGIN: "https://pumps.example", SUPPORT_URL: "https://help.example/?of=dutybook&on=1" };
    const own = stampedManifest(xml, hostingOf(asked, version));
    expect(own).toContain('<SupportUrl DefaultValue="https://help.example/?of=dutybook&amp;on=1"/>');
    expect(manifestProblems(own)).toEqual([]);
  });
});

const SPOILT_BUILDS: readonly { readonly why: string; readonly built: Built; readonly say: string }[] = [
  {
    why: "a file that is missing",
    built: builtOf((files) => files.delete("taskpane.html")),
    say: "taskpane.html is not",
  },
  {
    why: "an icon of another size",
    built: builtOf((files) => files.set("assets/icon-80.png", readFileSync("assets/icon-64.png"))),
    say: "icon-80.png is 64 × 64, not 80 × 80",
  },
  {
    why: "an icon that is not square",
    built: builtOf((files) => {
      const icon = Buffer.from(readFileSync("assets/icon-80.png"));
      icon.writeUInt32BE(64, 20);
      files.set("assets/icon-80.png", icon);
    }),
    say: "icon-80.png is 80 × 64, not 80 × 80",
  },
  {
    why: "an icon that is no PNG file",
    built: builtOf((files) => files.set("assets/icon-32.png", new Uint8Array(100))),
    say: "icon-32.png is no PNG file",
  },
  {
    why: "a function that the script does not know",
    built: builtOf((files) => files.set("functions.js", new TextEncoder().encode('associate("BOREX")'))),
    say: "the script does not know BORE",
  },
  {
    why: "a function described twice",
    built: builtOf((_, functions) => functions.push({ ...(functions[0] as Described) })),
    say: "BORE stands twice",
  },
  {
    why: "a function whose name is not its identity",
    built: builtOf((_, functions) => Object.assign(functions[0] as Described, { name: "OTHER" })),
    say: "BORE is no name of a function",
  },
  {
    why: "a function without help",
    built: builtOf((files) => files.delete("help/BORE.html")),
    say: "BORE has no help page",
  },
  {
    why: "metadata that is not JSON",
    built: builtOf((files) => files.set("functions.json", new TextEncoder().encode("{"))),
    say: "functions.json is not JSON",
  },
  {
    why: "another address than it is served from",
    built: { ...builtOf(), base: "https://other.example/" },
    say: "not under",
  },
];

describe("the manifest check", () => {
  it.each([
    {
      why: "an element out of order",
      from: /(<Id>.*<\/Id>)\s*(<Version>.*<\/Version>)/,
      to: "$2$1",
      say: "out of order",
    },
    { why: "an unknown element", from: "<Hosts>", to: "<Hoosts/><Hosts>", say: "not allowed" },
    {
      why: "an element that is missing",
      from: /<Supertip>.*?<\/Supertip>/s,
      to: "",
      say: "<Control> lacks <Supertip>",
    },
    { why: "an element said twice", from: /(<Permissions>.*<\/Permissions>)/, to: "$1$1", say: "stands 2 times" },
    { why: "an element of another schema", from: "office/taskpaneapp", to: "office/mailapp", say: "is not in" },
    {
      why: "a dangling resource",
      from: 'Action xsi:type="ShowTaskpane">\n                    <SourceLocation resid="Pane.Url"',
      to: 'Action xsi:type="ShowTaskpane">\n                    <SourceLocation resid="Nowhere"',
      say: "no resource",
    },
    {
      why: "a resource of another kind",
      from: 'FunctionFile resid="Pane.Url"',
      to: 'FunctionFile resid="Icon.16"',
      say: "which is in Images",
    },
    {
      why: "a resource that nothing uses",
      from: "<bt:Urls>",
      to: '<bt:Urls><bt:Url id="X" DefaultValue="https://localhost:3000/x"/>',
      say: "never used",
    },
    { why: "a resource said twice", from: /(<bt:Url id="Help.Url".*\/>)/, to: "$1$1", say: "stands twice" },
    {
      why: "a second runtime page",
      from: '<FunctionFile resid="Pane.Url"/>',
      to: '<FunctionFile resid="Help.Url"/>',
      say: "every page",
    },
    {
      why: "a pane that is another page",
      from: '<SourceLocation DefaultValue="https://localhost:3000/taskpane.html"',
      to: '<SourceLocation DefaultValue="https://localhost:3000/other.html"',
      say: "is not the page of the shared runtime",
    },
    { why: "a runtime that ends", from: ' lifetime="long"', to: "", say: "lifetime" },
    { why: "an unsafe address", from: /(id="Pane.Url" DefaultValue="http)s/, to: "$1", say: "https" },
    {
      why: "an address with a blank",
      from: 'id="Help.Url" DefaultValue="https://localhost:3000/help',
      to: 'id="Help.Url" DefaultValue="https://localhost:3000/the help',
      say: "is not an https address",
    },
    { why: "a missing icon size", from: '<bt:Image size="80" resid="Icon.80"/>', to: "", say: "size 80" },
    {
      why: "an over-long label",
      from: 'DefaultValue="Repair functions"',
      to: `DefaultValue="${"x".repeat(126)}"`,
      say: "too long",
    },
    {
      why: "an over-long description",
      from: /(<Description DefaultValue=")/,
      to: `$1${"x".repeat(250)}`,
      say: "longer than 250",
    },
    { why: "two controls of one id", from: "Dutybook.RepairFunctions", to: "Dutybook.OpenPane", say: "stands twice" },
    { why: "a bad identity", from: /<Id>..../, to: "<Id>", say: "GUID" },
    {
      why: "an identity of zeros",
      from: /<Id>.*<\/Id>/,
      to: "<Id>00000000-0000-0000-0000-000000000000</Id>",
      say: "GUID",
    },
    { why: "a bad version", from: /<Version>.*<\/Version>/, to: "<Version>1</Version>", say: "Version" },
    { why: "a version before the first", from: "<Version>1", to: "<Version>0", say: "a from 1 to 9999" },
    {
      why: "an older runtime than the functions need",
      from: 'Runtime" MinVersion="1.3"',
      to: 'Runtime" MinVersion="1.2"',
      say: "CustomFunctionsRuntime 1.2 is asked for, 1.3 is needed",
    },
    {
      why: "a requirement that is missing",
      from: '<Set Name="SharedRuntime" MinVersion="1.1"/>',
      to: "",
      say: "SharedRuntime is missing",
    },
    { why: "a permission that there is not", from: "ReadWriteDocument", to: "ReadWriteAll", say: "Permissions" },
    { why: "a language that there is not", from: "en-US", to: "English", say: "DefaultLocale" },
    { why: "a text that is not XML", from: "</OfficeApp>", to: "", say: "well-formed" },
  ])("finds $why", ({ from, to, say }) => {
    const spoilt = xml.replace(from, to);
    expect(spoilt).not.toBe(xml);
    expect(manifestProblems(spoilt).join("\n")).toContain(say);
  });

  it.each(SPOILT_BUILDS)("finds in a build $why", ({ built, say }) => {
    expect(manifestProblems(DEPLOYED, built).join("\n")).toContain(say);
  });

  it("finds functions asked for under the name of another version", () => {
    const spoilt = DEPLOYED.replace(/\?v=[\d.]+/, "?v=0.9.0.0");
    expect(manifestProblems(spoilt, builtOf()).join("\n")).toContain("does not end in the version");
  });
});
