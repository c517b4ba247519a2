import { existsSync } from "node:fs";
import { join } from "node:path";
import { JSDOM } from "jsdom";

/** Children in the order the schema demands, by parent; a parent's own parents may be named before it. */
const ORDER: Readonly<Record<string, string>> = {
  OfficeApp:
    "Id AlternateId Version ProviderName DefaultLocale DisplayName Description IconUrl HighResolutionIconUrl SupportUrl AppDomains Hosts Requirements DefaultSettings Permissions VersionOverrides ExtendedOverrides",
  VersionOverrides: "Description Requirements Hosts Resources WebApplicationInfo EquivalentAddins",
  "VersionOverrides>Hosts>Host": "Runtimes AllFormFactors DesktopFormFactor",
  DesktopFormFactor: "GetStarted FunctionFile ExtensionPoint",
  "AllFormFactors>ExtensionPoint": "Script Page Metadata Namespace",
  Group: "OverriddenByRibbonApi Label Icon Control",
  Control: "OverriddenByRibbonApi Label Supertip Icon Action Enabled Items",
  Resources: "Images Urls ShortStrings LongStrings",
};

/** Which kind of resource an element's resid must name. */
const KIND: Readonly<Record<string, string>> = {
  Image: "Images",
  SourceLocation: "Urls",
  FunctionFile: "Urls",
  Runtime: "Urls",
  LearnMoreUrl: "Urls",
  Label: "ShortStrings",
  Title: "ShortStrings",
  Namespace: "ShortStrings",
  Description: "LongStrings",
};

const LONGEST: Readonly<Record<string, number>> = { ShortStrings: 125, LongStrings: 250, Urls: 2048, Images: 2048 };

/**
 * What is wrong with a manifest of an add-in with a shared runtime, in words; empty when nothing is. The maker's own
 * validator sends the file away; this one needs no network. With a folder, the files named must be in it.
 */
export function manifestProblems(xml: string, builtFolder?: string): readonly string[] {
  let document: Document;
  try {
    document = new JSDOM(xml, { contentType: "text/xml" }).window.document;
  } catch (fault) {
    return [`not well-formed: ${(fault as Error).message.split("\n")[0]}`];
  }
  return [
    ...orderProblems(document),
    ...resourceProblems(document),
    ...runtimeProblems(document),
    ...factProblems(document),
    ...(builtFolder === undefined ? [] : missingFiles(xml, builtFolder)),
  ];
}

type Parent = Document | Element;

function every(name: string, root: Parent): readonly Element[] {
  return [...root.getElementsByTagName("*")].filter((element) => element.localName === name);
}

function first(name: string, root: Parent | undefined): Element | undefined {
  return root === undefined ? undefined : every(name, root)[0];
}

function orderProblems(document: Document): readonly string[] {
  const problems: string[] = [];
  for (const [place, order] of Object.entries(ORDER)) {
    const chain = place.split(">");
    const names = order.split(" ");
    for (const element of every(chain.at(-1) as string, document)) {
      if (!isAt(element, chain)) continue;
      let last = -1;
      for (const child of element.children) {
        const position = names.indexOf(child.localName);
        if (position < 0) problems.push(`<${child.localName}> is not allowed in <${element.localName}>`);
        else if (position < last) problems.push(`<${child.localName}> is out of order in <${element.localName}>`);
        last = Math.max(last, position);
      }
    }
  }
  return problems;
}

function isAt(element: Element, chain: readonly string[]): boolean {
  let parent: Element | null = element;
  for (const name of [...chain].reverse()) {
    if (parent?.localName !== name) return false;
    parent = parent.parentElement;
  }
  return true;
}

function resourceProblems(document: Document): readonly string[] {
  const problems: string[] = [];
  const groupOf = new Map<string, string>();
  for (const group of first("Resources", document)?.children ?? []) {
    for (const resource of group.children) {
      const id = resource.getAttribute("id") ?? "";
      const value = resource.getAttribute("DefaultValue") ?? "";
      if (groupOf.has(id)) problems.push(`resource ${id} stands twice`);
      if (id === "" || id.length > 32) problems.push(`resource id “${id}” is empty or longer than 32`);
      if (value === "" || value.length > (LONGEST[group.localName] ?? 0)) problems.push(`${id} is empty or too long`);
      groupOf.set(id, group.localName);
    }
  }
  const used = new Set<string>();
  for (const element of document.getElementsByTagName("*")) {
    const id = element.getAttribute("resid");
    if (id === null) continue;
    used.add(id);
    const group = groupOf.get(id);
    if (group === undefined) problems.push(`<${element.localName}> names ${id}, which is no resource`);
    else if (KIND[element.localName] !== group)
      problems.push(`<${element.localName}> names ${id}, which is in ${group}`);
  }
  for (const id of groupOf.keys()) if (!used.has(id)) problems.push(`resource ${id} is never used`);
  for (const icon of every("Icon", document)) {
    for (const size of ["16", "32", "80"]) {
      if (![...icon.children].some((image) => image.getAttribute("size") === size)) {
        problems.push(`an <Icon> lacks size ${size}`);
      }
    }
  }
  return problems;
}

function runtimeProblems(document: Document): readonly string[] {
  const problems: string[] = [];
  const runtime = first("Runtime", document);
  const page = runtime?.getAttribute("resid");
  if (runtime?.getAttribute("lifetime") !== "long") problems.push('a shared runtime needs lifetime="long"');
  const panes = every("Action", document)
    .filter((action) => action.getAttribute("xsi:type") === "ShowTaskpane")
    .map((action) => first("SourceLocation", action));
  for (const element of [first("SourceLocation", first("Page", document)), first("FunctionFile", document), ...panes]) {
    if (element?.getAttribute("resid") !== page) problems.push(`every page of a shared runtime is ${page}`);
  }
  if (every("TaskpaneId", document).length > 0) problems.push("a shared runtime has one pane, so no <TaskpaneId>");
  const sets = every("Set", document).map((set) => set.getAttribute("Name"));
  for (const name of ["SharedRuntime", "CustomFunctionsRuntime", "ExcelApi"]) {
    if (!sets.includes(name)) problems.push(`the requirement ${name} is missing`);
  }
  return problems;
}

/** The namespace the functions get in Excel. */
export function manifestNamespace(xml: string): string | undefined {
  const { document } = new JSDOM(xml, { contentType: "text/xml" }).window;
  const id = first("Namespace", document)?.getAttribute("resid");
  const resource = every("String", document).find((element) => element.getAttribute("id") === id);
  return resource?.getAttribute("DefaultValue") ?? undefined;
}

function factProblems(document: Document): readonly string[] {
  const problems: string[] = [];
  const id = first("Id", document)?.textContent ?? "";
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id)) problems.push("Id is not a GUID");
  const version = first("Version", document)?.textContent ?? "";
  if (!/^\d{1,5}(\.\d{1,5}){2,3}$/.test(version)) problems.push("Version is not n.n.n or n.n.n.n");
  for (const element of document.getElementsByTagName("*")) {
    const value = element.getAttribute("DefaultValue") ?? element.textContent ?? "";
    if (/^(Url|Image|SourceLocation|IconUrl|HighResolutionIconUrl|SupportUrl|AppDomain)$/.test(element.localName)) {
      if (element.hasAttribute("resid") || (element.localName === "Image" && !element.hasAttribute("id"))) continue;
      if (!value.startsWith("https://")) problems.push(`${value} is not an https address`);
    }
  }
  return problems;
}

function missingFiles(xml: string, folder: string): readonly string[] {
  return [...xml.matchAll(/DefaultValue="https:\/\/[^/"]+\/([^"#?]+)"/g)]
    .map(([, file]) => file as string)
    .filter((file) => !existsSync(join(folder, file)))
    .map((file) => `${file} is not in the build`);
}
