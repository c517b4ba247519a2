import { createRequire } from "node:module";
import path from "node:path";
import { fileURLToPath } from "node:url";
import CopyWebpackPlugin from "copy-webpack-plugin";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import TerserPlugin from "terser-webpack-plugin";
import { diskCache } from "./disk-cache.mjs";
import { DEVELOPMENT_BASE, deployedManifest } from "./manifest-urls.mjs";
import { pagePolicy } from "./page-policy.mjs";

const root = fileURLToPath(new URL("../..", import.meta.url));
const officeFolder = path.join(
  path.dirname(createRequire(import.meta.url).resolve("@microsoft/office-js/package.json")),
  "dist",
);
const OFFICE_CDN = "https://appsforoffice.microsoft.com/lib/1/hosted/office.js";

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

/**
 * The add-in: taskpane.html with load-office.js, functions.js and taskpane.js, functions.json, help/, office/, manifest.xml.
 * ADDIN_ORIGIN is the address it will be served from (https://host/folder/); without it, this machine's.
 * OFFICE_JS=cdn takes office.js from its maker's servers instead of the copy in office/.
 *
 * @param {"production" | "development"} mode
 */
export function addin(mode) {
  const base = (process.env.ADDIN_ORIGIN ?? DEVELOPMENT_BASE).replace(/\/?$/, "/");
  const ownOffice = process.env.OFFICE_JS !== "cdn";
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
    },
    output: {
      path: path.join(root, "dist"),
      filename: "[name].js",
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
      minimizer: [
        // Gzips to a tenth less than what esbuild minifies.
        new TerserPlugin({ extractComments: false, terserOptions: { ecma: 2022, compress: { passes: 2 } } }),
        new EsbuildPlugin({ target: ENGINES, css: true, include: /\.css$/ }),
      ],
    },
    plugins: [
      new MiniCssExtractPlugin({ filename: "[name].css" }),
      new HtmlWebpackPlugin({
        filename: "taskpane.html",
        template: "./taskpane/taskpane.html",
        chunks: ["load-office", "functions", "taskpane"],
        chunksSortMode: "manual",
        // The page says where each stands: functions.js holds up the page, taskpane.js waits for it.
        inject: false,
        officeJs: ownOffice ? "office/office.js" : OFFICE_CDN,
        policy: pagePolicy(ownOffice ? [] : [new URL(OFFICE_CDN).origin]),
      }),
      new CopyWebpackPlugin({
        patterns: [
          { from: "assets/*.png" },
          { from: "assets/help.css", to: "help/style.css" },
          {
            from: "manifest.xml",
            transform: (xml) => deployedManifest(xml.toString(), process.env.ADDIN_ORIGIN),
          },
          ...(ownOffice ? OFFICE_FILES : []).map((file) => ({
            from: path.join(officeFolder, file),
            to: path.join("office", file),
            info: { minimized: true },
          })),
        ],
      }),
    ],
    performance: { hints: false },
  };
}
