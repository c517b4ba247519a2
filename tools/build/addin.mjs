import { readFileSync } from "node:fs";
import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import CopyWebpackPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import TerserPlugin from "terser-webpack-plugin";
import { diskCache } from "./disk-cache.mjs";
import { pagePolicy } from "./page-policy.mjs";
import { SiteFiles } from "./site-files.mjs";
import { stampedManifest } from "./stamped-manifest.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const officeFolder = path.join(
  path.dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/package.json")),
  "dist",
);

/** The terms under which its copy may be passed on. */
export const officeTerms = () => readFileSync(path.join(path.dirname(officeFolder), "LICENSE.md"), "utf8");

/** The engines behind Excel's panes: Edge on Windows, Safari on Mac, any of the two or Chrome on the web. */
const ENGINES = ["es2022", "chrome109", "safari16"];

/** Modules loaded while the build runs the catalogue for its help pages. */
const HELP_LAYER = "help";

/** What Excel on Windows, Mac and the web asks for, in the folders office.js looks in. */
const OFFICE_FILES = [
  "office.js",
  "excel-web-16.00.js",
  "excel-win32-16.01.js",
  "excel-mac-16.00.js",
  "o15apptofilemappingtable.js",
  "telemetry/oteljs_agave.js",
  "ariatelemetry/aria-web-telemetry.js",
  "en-us/office_strings.js",
];

/** Where the calculation stands, and what the pane reads off it. */
const CALCULATION = /[\\/]shared[\\/](calc-sheet|package)[\\/]/;

/** Whether a module is of the calculation, and in the part that the pane loads once its first screen stands. */
function isOfWhole(module, { chunkGraph }) {
  const isLater = [...chunkGraph.getModuleChunksIterable(module)].some(({ name }) => name === "later");
  return isLater && CALCULATION.test(module.nameForCondition() ?? "");
}

/**
 * The add-in: taskpane.html with its scripts, functions.json, help/, office/, manifest.xml and the pages beside it.
 *
 * @param {"production" | "development"} mode
 * @param {import("./hosting.mjs").Hosting} hosting
 */
export function addin(mode, hosting) {
  const production = mode === "production";
  const { base, isOfficeOwn, officeScript } = hosting;
  // What is named for its content may be kept for good.
  const name = production ? "[name].[contenthash:8]" : "[name]";
  return {
    name: "addin",
    mode,
    context: root,
    target: ["web", "es2022"],
    // The policy of the page lets nothing be evaluated.
    devtool: "source-map",
    // The address stands in what the catalogue's loader emits.
    cache: diskCache(`addin-${mode}`, fileURLToPath(import.meta.url), base),
    entry: {
      "load-office": "./taskpane/load-office.ts",
      functions: ["./functions/index.ts", "./functions/emitted.ts"],
      // Shares what functions.js holds; the page loads that first.
      taskpane: { import: "./taskpane/main.ts", dependOn: "functions" },
      // The pages name it.
      help: { import: "./help/page.ts", filename: "help/help.js" },
    },
    output: {
      path: path.join(root, "dist"),
      filename: `${name}.js`,
      chunkFilename: "[name].[contenthash:8].js",
      clean: { keep: /^workbench(\/|$)/ },
    },
    module: {
      rules: [
        { test: /\.ts$/, loader: "esbuild-loader", options: { target: ENGINES } },
        {
          test: /\.ts$/,
          include: path.join(root, "shared", "catalogue"),
          issuerLayer: { not: [HELP_LAYER] },
          enforce: "pre",
          loader: path.join(root, "tools", "build", "without-help.mjs"),
        },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
        {
          test: path.join(root, "functions", "emitted.ts"),
          resourceQuery: { not: [/run/] },
          loader: path.join(root, "tools", "build", "emit-catalogue.mjs"),
          options: { base, layer: HELP_LAYER },
        },
      ],
    },
    experiments: { layers: true },
    optimization: {
      moduleIds: "size",
      mangleExports: "size",
      // Laying out and opening again take it too: it stands in one file of its own, loaded once.
      splitChunks: {
        cacheGroups: {
          calculation: { name: "calculation", chunks: "async", test: isOfWhole, enforce: true },
        },
      },
      minimizer: [
        // Gzips to a tenth less than what esbuild minifies.
        new TerserPlugin({ extractComments: false, terserOptions: { ecma: 2022, compress: { passes: 2 } } }),
        new EsbuildPlugin({ target: ENGINES, css: true, include: /\.css$/ }),
      ],
    },
    plugins: [
      new MiniCssExtractPlugin({ filename: `${name}.css` }),
      new HtmlWebpackPlugin({
        filename: "taskpane.html",
        template: "./taskpane/taskpane.html",
        chunks: ["load-office", "functions", "taskpane"],
        chunksSortMode: "manual",
        // The page says where each stands: functions.js holds up the page, taskpane.js waits for it.
        inject: false,
        officeJs: officeScript,
        policy: pagePolicy(isOfficeOwn ? [] : [new URL(officeScript).origin]),
      }),
      new CopyWebpackPlugin({
        patterns: [
          { from: "assets/*.png" },
          { from: "help/style.css", to: "help/style.css" },
          {
            from: "manifest.xml",
            transform: (xml) => stampedManifest(xml.toString(), hosting),
          },
          ...(isOfficeOwn ? OFFICE_FILES : []).map((file) => ({
            from: path.join(officeFolder, file),
            to: path.join("office", file),
            info: { minimized: true },
          })),
        ],
      }),
      new SiteFiles(hosting),
    ],
    performance: { hints: false },
  };
}
