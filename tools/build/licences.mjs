// Which packages stand in what is shipped, whether their licences allow it, and the notices they ask for.
import { existsSync, readdirSync, readFileSync } from "node:fs";
import { dirname, join } from "node:path";

/** Licences, by their SPDX names, under which a package may be shipped: notices are all they ask for. */
export const ALLOWED = [
  "0BSD",
  "Apache-2.0",
  "BlueOak-1.0.0",
  "BSD-2-Clause",
  "BSD-3-Clause",
  "CC0-1.0",
  "ISC",
  "MIT",
  "Unlicense",
  "Zlib",
];

/** What a text is known by where the package names no licence. */
const KNOWN_TEXTS = [
  { licence: "Apache-2.0", says: /Apache License\s+Version 2\.0/ },
  { licence: "MIT", says: /Permission is hereby granted, free of charge, to any person obtaining a copy/ },
];

const GRANTED_BY_MIT = `Permission is hereby granted, free of charge, to any person obtaining a copy of this software and associated
documentation files (the "Software"), to deal in the Software without restriction, including without limitation the
rights to use, copy, modify, merge, publish, distribute, sublicense, and/or sell copies of the Software, and to permit
persons to whom the Software is furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or substantial portions of the
Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT NOT LIMITED TO THE
WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR
COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM, DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR
OTHERWISE, ARISING FROM, OUT OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;

const GRANTED_BY_ISC = `Permission to use, copy, modify, and/or distribute this software for any purpose with or without fee is hereby granted,
provided that the above copyright notice and this permission notice appear in all copies.

THE SOFTWARE IS PROVIDED "AS IS" AND THE AUTHOR DISCLAIMS ALL WARRANTIES WITH REGARD TO THIS SOFTWARE INCLUDING ALL
IMPLIED WARRANTIES OF MERCHANTABILITY AND FITNESS. IN NO EVENT SHALL THE AUTHOR BE LIABLE FOR ANY SPECIAL, DIRECT,
INDIRECT, OR CONSEQUENTIAL DAMAGES OR ANY DAMAGES WHATSOEVER RESULTING FROM LOSS OF USE, DATA OR PROFITS, WHETHER IN AN
ACTION OF CONTRACT, NEGLIGENCE OR OTHER TORTIOUS ACTION, ARISING OUT OF OR IN CONNECTION WITH THE USE OR PERFORMANCE OF
THIS SOFTWARE.`;

/**
 * The folders of the packages whose modules stand in the bundles of a compilation.
 *
 * @param {import("webpack").Compilation} compilation
 * @returns {ReadonlySet<string>}
 */
export function packageFolders({ modules, chunkGraph }) {
  const shipped = [...modules].filter((module) => chunkGraph.getNumberOfModuleChunks(module) > 0);
  // What was joined into one module keeps its parts.
  const parts = shipped.flatMap((module) => [module, ...(module.modules ?? [])]);
  const files = parts.map((module) => module.nameForCondition?.()).filter((file) => file?.includes("node_modules"));
  return new Set(files.map(packageFolder));
}

/** The nearest folder above a file whose package.json has a name and a version. */
function packageFolder(file) {
  for (let folder = dirname(file); folder !== dirname(folder); folder = dirname(folder)) {
    const facts = join(folder, "package.json");
    if (!existsSync(facts)) continue;
    const { name, version } = JSON.parse(readFileSync(facts, "utf8"));
    if (name !== undefined && version !== undefined) return folder;
  }
  throw new Error(`${file} belongs to no package`);
}

/**
 * @typedef {object} Shipped
 * @property {string} name
 * @property {string} version
 * @property {string | undefined} licence An SPDX expression.
 * @property {readonly string[]} people Authors and contributors as the package names them.
 * @property {string | undefined} home
 * @property {readonly string[]} texts Licence and notice files, whole.
 */

/**
 * What a package says of its licence.
 *
 * @param {string} folder
 * @returns {Shipped}
 */
export function shippedPackage(folder) {
  const facts = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
  const texts = readdirSync(folder, { withFileTypes: true })
    .filter((entry) => entry.isFile() && /^(licen[cs]e|copying|copyright|notice)/i.test(entry.name))
    .map(({ name }) => name)
    .sort()
    .map((name) => readFileSync(join(folder, name), "utf8").replaceAll("\r\n", "\n").trim());
  const named = [facts.license, ...(facts.licenses ?? [])].map((each) => each?.type ?? each).filter(Boolean);
  const known = KNOWN_TEXTS.find(({ says }) => texts.some((text) => says.test(text)))?.licence;
  const { repository } = facts;
  return {
    name: facts.name,
    version: facts.version,
    licence: named.length > 0 ? named.join(" OR ") : known,
    people: [
      ...new Set([facts.author, ...(facts.contributors ?? [])].map((each) => each?.name ?? each).filter(Boolean)),
    ],
    home: facts.homepage ?? repository?.url ?? repository,
    texts,
  };
}

/**
 * What forbids to ship packages, in words; empty where nothing does.
 *
 * @param {readonly Shipped[]} packages
 * @returns {readonly string[]}
 */
export function licenceProblems(packages) {
  return packages.flatMap((each) => {
    const which = `${each.name} ${each.version}`;
    if (each.licence === undefined) return [`${which} names no licence`];
    if (!isAllowed(each.licence)) return [`${which} is under ${each.licence}, which is none of ${ALLOWED.join(", ")}`];
    return textsOf(each, packages).length > 0
      ? []
      : [`the text of ${each.licence}, under which ${which} is, is not here`];
  });
}

/** The texts a package carries, or else those of its licence with its authors' names. */
function textsOf({ licence, people, texts }, packages) {
  if (texts.length > 0) return texts;
  const copyright = `Copyright (c) ${people.join("; ") || "its authors"}`;
  if (licence === "MIT") return [`MIT License\n\n${copyright}\n\n${GRANTED_BY_MIT}`];
  if (licence === "ISC") return [`ISC License\n\n${copyright}\n\n${GRANTED_BY_ISC}`];
  // The same words whatever it is put on.
  const apache = packages.flatMap((each) => each.texts).find((text) => KNOWN_TEXTS[0].says.test(text));
  return licence === "Apache-2.0" && apache !== undefined ? [copyright, apache] : [];
}

/**
 * Whether an SPDX expression can be met by licences allowed.
 *
 * @param {string} expression
 */
export function isAllowed(expression) {
  const tokens = expression.match(/[()]|[^\s()]+/g) ?? [];
  let at = 0;
  const either = () => {
    let met = both();
    while (tokens[at]?.toUpperCase() === "OR") {
      at += 1;
      met = both() || met;
    }
    return met;
  };
  const both = () => {
    let met = one();
    while (tokens[at]?.toUpperCase() === "AND") {
      at += 1;
      met = one() && met;
    }
    return met;
  };
  const one = () => {
    const token = tokens[at];
    at += 1;
    if (token !== "(") return ALLOWED.includes(token);
    const met = either();
    const isClosed = tokens[at] === ")";
    at += 1;
    return met && isClosed;
  };
  // What is left over (“WITH …”, “+”) is not understood, and not allowed.
  return either() && at === tokens.length;
}

/**
 * The notices of all that is shipped with the add-in.
 *
 * @param {readonly Shipped[]} packages
 * @param {string | undefined} officeTerms Terms of the maker's Office library, where its own copy is shipped.
 */
export function noticesText(packages, officeTerms) {
  const parts = [
    "Dutybook is shipped with the packages below. Each stands under its own licence; the texts are theirs.",
    ...packages.map((each) => {
      const { name, version, licence, people, home } = each;
      return [
        `${name} ${version}`,
        `Licence: ${licence}`,
        ...(people.length > 0 ? [`By: ${people.join("; ")}`] : []),
        ...(home === undefined ? [] : [`From: ${home}`]),
        "",
        textsOf(each, packages).join("\n\n"),
      ].join("\n");
    }),
    ...(officeTerms === undefined ? [] : [officeNotice(officeTerms)]),
  ];
  return `${parts.join(`\n\n${"=".repeat(80)}\n\n`)}\n`;
}

function officeNotice(terms) {
  return `office/: a copy of the Office JavaScript library, as its maker ships it, unchanged

It is not open source. Whoever serves this copy agrees to the terms below, passes it on to nobody but the users of
this add-in, and asks them to agree to terms that protect the library at least as much. The library's maker neither
supports this add-in nor answers for it, and supports the library only as served from its own servers.

${terms.trim()}`;
}
