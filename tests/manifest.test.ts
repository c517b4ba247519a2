import { existsSync, readFileSync } from "node:fs";
import { describe, expect, it } from "vitest";
import { NAMESPACE } from "../shared/ports/namespace.ts";
// @ts-expect-error a build script in plain JavaScript
import { deployedManifest } from "../tools/build/manifest-urls.mjs";
import { manifestNamespace, manifestProblems } from "./support/check-manifest.ts";

const xml = readFileSync("manifest.xml", "utf8");

describe("the manifest", () => {
  it("holds together", () => {
    expect(manifestProblems(xml)).toEqual([]);
  });

  it("gives the functions the catalogue's namespace", () => {
    expect(manifestNamespace(xml)).toBe(NAMESPACE);
  });

  it("carries the package's version", () => {
    const { version } = JSON.parse(readFileSync("package.json", "utf8")) as { readonly version: string };
    expect(xml).toContain(`<Version>${version}.0</Version>`);
  });

  // Only a build has the files; `npm run build` makes one.
  it.runIf(existsSync("dist/manifest.xml"))("names files that the build has", () => {
    expect(manifestProblems(readFileSync("dist/manifest.xml", "utf8"), "dist")).toEqual([]);
  });
});

describe("the manifest for another address", () => {
  it("names that address throughout", () => {
    const deployed = deployedManifest(xml, "https://pumps.example/dutybook") as string;
    expect(manifestProblems(deployed)).toEqual([]);
    expect(deployed).not.toContain("localhost");
    expect(deployed).toContain('"https://pumps.example/dutybook/taskpane.html"');
    expect(deployed).toContain("<AppDomain>https://pumps.example</AppDomain>");
  });

  it("is the same where no address is given", () => {
    expect(deployedManifest(xml, undefined)).toBe(xml);
  });

  it("is refused where it would still name this machine", () => {
    expect(() => deployedManifest(`${xml}<!-- https://LOCALHOST:4000 -->`, "https://pumps.example")).toThrow(
      "localhost",
    );
  });
});

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
      why: "a dangling resource",
      from: 'Action xsi:type="ShowTaskpane">\n                    <SourceLocation resid="Pane.Url"',
      to: 'Action xsi:type="ShowTaskpane">\n                    <SourceLocation resid="Nowhere"',
      say: "no resource",
    },
    {
      why: "a second runtime page",
      from: '<FunctionFile resid="Pane.Url"/>',
      to: '<FunctionFile resid="Help.Url"/>',
      say: "every page",
    },
    { why: "a runtime that ends", from: ' lifetime="long"', to: "", say: "lifetime" },
    { why: "an unsafe address", from: /(id="Pane.Url" DefaultValue="http)s/, to: "$1", say: "https" },
    { why: "a missing icon size", from: '<bt:Image size="80" resid="Icon.80"/>', to: "", say: "size 80" },
    {
      why: "an over-long label",
      from: 'DefaultValue="Repair functions"',
      to: `DefaultValue="${"x".repeat(126)}"`,
      say: "too long",
    },
    { why: "a bad identity", from: /<Id>..../, to: "<Id>", say: "GUID" },
    { why: "a bad version", from: /<Version>.*<\/Version>/, to: "<Version>1</Version>", say: "Version" },
    { why: "a text that is not XML", from: "</OfficeApp>", to: "", say: "well-formed" },
  ])("finds $why", ({ from, to, say }) => {
    const spoilt = xml.replace(from, to);
    expect(spoilt).not.toBe(xml);
    expect(manifestProblems(spoilt).join("\n")).toContain(say);
  });
});
