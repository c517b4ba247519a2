// What can be known of a manifest without Excel. The maker's own validator sends the file away; this needs no network.
import { JSDOM } from "jsdom";

const NAMESPACES = {
  OfficeApp: "http://schemas.microsoft.com/office/appforoffice/1.1",
  VersionOverrides: "http://schemas.microsoft.com/office/taskpaneappversionoverrides",
};

/**
 * Children in the order the schema demands, by parent; a parent's own parents may be named before it. A child marked
 * with "!" must be there, one with "*" may stand more than once.
 */
const ORDER = {
  OfficeApp:
    "Id! AlternateId Version! ProviderName! DefaultLocale! DisplayName! Description! IconUrl! HighResolutionIconUrl! SupportUrl! AppDomains Hosts! Requirements! DefaultSettings! Permissions! VersionOverrides! ExtendedOverrides",
  AppDomains: "AppDomain*",
  "OfficeApp>Requirements": "Sets! Methods",
  Sets: "Set*",
  DefaultSettings: "SourceLocation! RequestedWidth RequestedHeight",
  VersionOverrides: "Description Requirements Hosts! Resources! WebApplicationInfo EquivalentAddins",
  "VersionOverrides>Hosts>Host": "Runtimes! AllFormFactors! DesktopFormFactor!",
  Runtimes: "Runtime!",
  AllFormFactors: "ExtensionPoint!",
  "AllFormFactors>ExtensionPoint": "Script! Page! Metadata! Namespace!",
  DesktopFormFactor: "GetStarted FunctionFile! ExtensionPoint*",
  GetStarted: "Title! Description! LearnMoreUrl!",
  OfficeTab: "Group*",
  Group: "OverriddenByRibbonApi Label! Icon! Control*",
  Control: "OverriddenByRibbonApi Label! Supertip! Icon! Action! Enabled Items",
  Supertip: "Title! Description!",
  Icon: "Image*",
  Resources: "Images! Urls! ShortStrings! LongStrings!",
};

/** Which kind of resource an element's resid must name. */
const KIND = {
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

const LONGEST_RESOURCE = { ShortStrings: 125, LongStrings: 250, Urls: 2048, Images: 2048 };
const LONGEST = { ProviderName: 125, DisplayName: 125, Description: 250 };
const PERMISSIONS = ["Restricted", "ReadDocument", "ReadAllDocument", "WriteDocument", "ReadWriteDocument"];
const ADDRESSES =
  /^(Url|Image|SourceLocation|IconUrl|HighResolutionIconUrl|SupportUrl|AppDomain|LearnMoreUrl|FunctionFile|Runtime)$/;

/** Sets that the code rests on. Functions answer with errors (#NUM!, #DIV/0!, #NULL!) that only runtime 1.3 knows. */
const REQUIRED = { SharedRuntime: [1, 1], CustomFunctionsRuntime: [1, 3], ExcelApi: [1, 9] };

/** Pixels of the icons that are named without a size. */
const ICON_PIXELS = { IconUrl: 32, HighResolutionIconUrl: 64 };
const BUTTON_ICONS = [16, 32, 80];

/**
 * What is wrong with a manifest of an add-in with a shared runtime, in words; empty when nothing is. With what was
 * built, the files it names must be there and be what they are named for.
 *
 * @param {string} xml
 * @param {{ readonly base: string, readonly file: (path: string) => Uint8Array | undefined }} [built]
 * @returns {readonly string[]}
 */
export function manifestProblems(xml, built) {
  let document;
  try {
    ({ document } = new JSDOM(xml, { contentType: "text/xml" }).window);
  } catch (fault) {
    return [`not well-formed: ${fault.message.split("\n")[0]}`];
  }
  const problems = [
    ...orderProblems(document),
    ...resourceProblems(document),
    ...runtimeProblems(document),
    ...requirementProblems(document),
    ...factProblems(document),
    ...addressProblems(document),
  ];
  return built === undefined ? problems : [...problems, ...buildProblems(document, built)];
}

/**
 * The namespace the functions get in Excel.
 *
 * @param {string} xml
 */
export function manifestNamespace(xml) {
  const { document } = new JSDOM(xml, { contentType: "text/xml" }).window;
  return resourceOf(document, first("Namespace", document));
}

function every(name, root) {
  return [...root.getElementsByTagName("*")].filter((element) => element.localName === name);
}

function first(name, root) {
  return root === undefined ? undefined : every(name, root)[0];
}

function textOf(name, document) {
  return first(name, document)?.textContent ?? "";
}

/** What the resource that an element names stands for. */
function resourceOf(document, element) {
  const id = element?.getAttribute("resid");
  const resource = [...(first("Resources", document)?.children ?? [])]
    .flatMap((group) => [...group.children])
    .find((each) => each.getAttribute("id") === id);
  return resource?.getAttribute("DefaultValue") ?? undefined;
}

function orderProblems(document) {
  const problems = [];
  for (const [name, namespace] of Object.entries(NAMESPACES)) {
    if (first(name, document)?.namespaceURI !== namespace) problems.push(`<${name}> is not in ${namespace}`);
  }
  if (document.documentElement.getAttribute("xsi:type") !== "TaskPaneApp") problems.push("not a TaskPaneApp");
  for (const [place, order] of Object.entries(ORDER)) {
    const chain = place.split(">");
    const children = order.split(" ").map((child) => child.replace(/[!*]$/, ""));
    for (const element of every(chain.at(-1), document)) {
      if (!isAt(element, chain)) continue;
      const names = [...element.children].map(({ localName }) => localName);
      let last = -1;
      for (const name of names) {
        const position = children.indexOf(name);
        if (position < 0) problems.push(`<${name}> is not allowed in <${element.localName}>`);
        else if (position < last) problems.push(`<${name}> is out of order in <${element.localName}>`);
        last = Math.max(last, position);
      }
      for (const child of order.split(" ")) {
        const name = child.replace(/[!*]$/, "");
        const count = names.filter((each) => each === name).length;
        if (count === 0 && child.endsWith("!")) problems.push(`<${element.localName}> lacks <${name}>`);
        if (count > 1 && !child.endsWith("*"))
          problems.push(`<${name}> stands ${count} times in <${element.localName}>`);
      }
    }
  }
  return problems;
}

function isAt(element, chain) {
  let parent = element;
  for (const name of [...chain].reverse()) {
    if (parent?.localName !== name) return false;
    parent = parent.parentElement;
  }
  return true;
}

function resourceProblems(document) {
  const problems = [];
  const groupOf = new Map();
  for (const group of first("Resources", document)?.children ?? []) {
    for (const resource of group.children) {
      const id = resource.getAttribute("id") ?? "";
      const value = resource.getAttribute("DefaultValue") ?? "";
      if (groupOf.has(id)) problems.push(`resource ${id} stands twice`);
      if (id === "" || id.length > 32) problems.push(`resource id “${id}” is empty or longer than 32`);
      if (value === "" || value.length > (LONGEST_RESOURCE[group.localName] ?? 0)) {
        problems.push(`${id} is empty or too long`);
      }
      groupOf.set(id, group.localName);
    }
  }
  const used = new Set();
  for (const element of document.getElementsByTagName("*")) {
    const id = element.getAttribute("resid");
    if (id === null) continue;
    used.add(id);
    const group = groupOf.get(id);
    if (group === undefined) problems.push(`<${element.localName}> names ${id}, which is no resource`);
    else if (KIND[element.localName] !== group) {
      problems.push(`<${element.localName}> names ${id}, which is in ${group}`);
    }
  }
  for (const id of groupOf.keys()) if (!used.has(id)) problems.push(`resource ${id} is never used`);
  for (const icon of every("Icon", document)) {
    for (const size of BUTTON_ICONS) {
      if (![...icon.children].some((image) => image.getAttribute("size") === String(size))) {
        problems.push(`an <Icon> lacks size ${size}`);
      }
    }
  }
  return problems;
}

function runtimeProblems(document) {
  const problems = [];
  const runtime = first("Runtime", document);
  const page = runtime?.getAttribute("resid");
  if (runtime?.getAttribute("lifetime") !== "long") problems.push('a shared runtime needs lifetime="long"');
  const panes = every("Action", document)
    .filter((action) => action.getAttribute("xsi:type") === "ShowTaskpane")
    .map((action) => first("SourceLocation", action));
  for (const element of [first("SourceLocation", first("Page", document)), first("FunctionFile", document), ...panes]) {
    if (element?.getAttribute("resid") !== page) problems.push(`every page of a shared runtime is ${page}`);
  }
  const opened = first("SourceLocation", first("DefaultSettings", document))?.getAttribute("DefaultValue");
  if (opened !== resourceOf(document, runtime)) problems.push(`${opened} is not the page of the shared runtime`);
  if (every("TaskpaneId", document).length > 0) problems.push("a shared runtime has one pane, so no <TaskpaneId>");
  return problems;
}

function requirementProblems(document) {
  const problems = [];
  const sets = new Map(every("Set", document).map((set) => [set.getAttribute("Name"), set]));
  for (const [name, least] of Object.entries(REQUIRED)) {
    const set = sets.get(name);
    if (set === undefined) {
      problems.push(`the requirement ${name} is missing`);
      continue;
    }
    const asked = set.getAttribute("MinVersion") ?? first("Sets", document)?.getAttribute("DefaultMinVersion") ?? "";
    const [major = 0, minor = 0] = asked.split(".").map(Number);
    if (!/^\d+\.\d+$/.test(asked) || major < least[0] || (major === least[0] && minor < least[1])) {
      problems.push(`${name} ${asked} is asked for, ${least.join(".")} is needed`);
    }
  }
  return problems;
}

function factProblems(document) {
  const problems = [];
  const id = textOf("Id", document);
  if (!/^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/i.test(id) || /^[0-]*$/.test(id)) problems.push("Id is not a GUID");
  const version = textOf("Version", document);
  const parts = version.split(".");
  // The first part as the maker's store wants it; the others as every Excel reads them.
  const isVersion =
    parts.length === 4 && parts.every((part) => /^(0|[1-9]\d{0,4})$/.test(part) && Number(part) <= 65_535);
  if (!isVersion || Number(parts[0]) < 1 || Number(parts[0]) > 9999) {
    problems.push(`Version “${version}” is not a.b.c.d with a from 1 to 9999`);
  }
  if (!/^[a-z]{2,3}-[A-Z]{2}$/.test(textOf("DefaultLocale", document))) problems.push("DefaultLocale is no language");
  if (!PERMISSIONS.includes(textOf("Permissions", document))) problems.push("Permissions are none that there are");
  for (const [name, longest] of Object.entries(LONGEST)) {
    const element = first(name, document);
    const text = element?.getAttribute("DefaultValue") ?? element?.textContent ?? "";
    if (text === "" || text.length > longest) problems.push(`<${name}> is empty or longer than ${longest}`);
  }
  const ids = [...every("Group", document), ...every("Control", document)].map((each) => each.getAttribute("id") ?? "");
  for (const each of ids) if (each === "" || each.length > 125) problems.push(`the id “${each}” is empty or too long`);
  if (new Set(ids).size < ids.length) problems.push("an id of a group or control stands twice");
  for (const action of every("Action", document)) {
    if (action.getAttribute("xsi:type") === "ExecuteFunction" && textOf("FunctionName", action) === "") {
      problems.push("an <Action> names no function");
    }
  }
  return problems;
}

/** Elements that hold an address of their own, and the address. */
function addressesOf(document) {
  return [...document.getElementsByTagName("*")]
    .filter((element) => ADDRESSES.test(element.localName) && !element.hasAttribute("resid"))
    .map((element) => ({ element, value: element.getAttribute("DefaultValue") ?? element.textContent ?? "" }));
}

function addressProblems(document) {
  return addressesOf(document)
    .filter(({ value }) => !URL.canParse(value) || !value.startsWith("https://") || /\s/.test(value))
    .map(({ value }) => `${value} is not an https address`);
}

function buildProblems(document, { base, file }) {
  const problems = [];
  for (const { element, value } of addressesOf(document)) {
    if (element.localName === "AppDomain") {
      if (value !== new URL(base).origin) problems.push(`the domain ${value} is not that of ${base}`);
    } else if (!value.startsWith(base)) {
      // Users of a firm may ask on a page of that firm's own.
      if (element.localName !== "SupportUrl") problems.push(`${value} is not under ${base}`);
    } else if (file(pathOf(value, base)) === undefined) problems.push(`${pathOf(value, base)} is not in the build`);
  }
  return [...problems, ...iconProblems(document, base, file), ...functionProblems(document, base, file)];
}

function pathOf(address, base) {
  return address.slice(base.length).split(/[?#]/)[0];
}

function iconProblems(document, base, file) {
  const named = Object.entries(ICON_PIXELS).map(([name, pixels]) => ({
    value: first(name, document)?.getAttribute("DefaultValue"),
    pixels,
  }));
  const sized = every("Icon", document)
    .flatMap((icon) => [...icon.children])
    .map((image) => ({ value: resourceOf(document, image), pixels: Number(image.getAttribute("size")) }));
  const problems = [...named, ...sized].flatMap(({ value, pixels }) => {
    const content = value === undefined || !value.startsWith(base) ? undefined : file(pathOf(value, base));
    if (content === undefined) return [];
    const size = pngSize(content);
    return size === `${pixels} × ${pixels}` ? [] : [`${value} is ${size}, not ${pixels} × ${pixels}`];
  });
  return [...new Set(problems)];
}

/** "32 × 32", as the head of a PNG file tells. */
function pngSize(content) {
  const isPng = content.length > 24 && [0x89, 0x50, 0x4e, 0x47].every((byte, i) => content[i] === byte);
  if (!isPng) return "no PNG file";
  const view = new DataView(content.buffer, content.byteOffset, content.byteLength);
  return `${view.getUint32(16)} × ${view.getUint32(20)}`;
}

function functionProblems(document, base, file) {
  const problems = [];
  const sourceOf = (name) => resourceOf(document, first("SourceLocation", first(name, document)));
  const metadata = sourceOf("Metadata") ?? "";
  const version = textOf("Version", document);
  if (!metadata.endsWith(`?v=${version}`)) problems.push(`${metadata} does not end in the version, ?v=${version}`);
  const read = (address) => {
    const content = address.startsWith(base) ? file(pathOf(address, base)) : undefined;
    return content === undefined ? "" : new TextDecoder().decode(content);
  };
  let functions;
  try {
    ({ functions } = JSON.parse(read(metadata)));
  } catch {
    return [...problems, "functions.json is not JSON"];
  }
  const script = read(sourceOf("Script") ?? "");
  const seen = new Set();
  for (const { id, name, helpUrl } of functions) {
    if (id !== name || !/^[A-Z][A-Z0-9.]{2,63}$/.test(id)) problems.push(`${id} is no name of a function`);
    if (seen.has(id)) problems.push(`${id} stands twice in functions.json`);
    seen.add(id);
    if (!new RegExp(`["'\`]${id.replaceAll(".", "\\.")}["'\`]`).test(script))
      problems.push(`the script does not know ${id}`);
    if (!helpUrl.startsWith(base) || file(pathOf(helpUrl, base)) === undefined) problems.push(`${id} has no help page`);
  }
  return problems;
}
