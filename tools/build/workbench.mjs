// The page with the spreadsheet grid, built into dist/workbench/.
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";
import { diskCache } from "./disk-cache.mjs";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const TARGET = "es2022";

/** @param {"production" | "development"} mode */
export function workbench(mode) {
  const production = mode === "production";
  // What is named for its content may be kept for good.
  const name = production ? "[name].[contenthash:8]" : "[name]";
  return {
    name: "workbench",
    context: ROOT,
    mode,
    devtool: production ? false : "inline-source-map",
    target: ["web", TARGET],
    entry: { workbench: "./workbench/workbench.ts" },
    output: {
      path: join(ROOT, "dist", "workbench"),
      filename: `${name}.js`,
      chunkFilename: `parts/${name}.js`,
      clean: true,
    },
    resolve: { extensions: [".ts", ".tsx", ".mjs", ".js"] },
    cache: diskCache(`workbench-${mode}`, fileURLToPath(import.meta.url)),
    module: {
      rules: [
        {
          test: /\.tsx?$/,
          exclude: /node_modules/,
          loader: "esbuild-loader",
          options: { target: TARGET, jsx: "automatic" },
        },
        { test: /\.css$/, use: [MiniCssExtractPlugin.loader, "css-loader"] },
      ],
    },
    plugins: [
      new MiniCssExtractPlugin({ filename: `${name}.css`, chunkFilename: `parts/${name}.css`, ignoreOrder: true }),
      new HtmlWebpackPlugin({
        template: join(ROOT, "workbench", "workbench.html"),
        favicon: join(ROOT, "assets", "icon-32.png"),
        scriptLoading: "defer",
      }),
    ],
    optimization: {
      minimizer: [new EsbuildPlugin({ target: TARGET, css: true, legalComments: "none" })],
      // While a browser reads one script the pane answers nothing: of the seven megabytes of the grid, that is long.
      splitChunks: { maxAsyncSize: 1_500_000 },
    },
    performance: { hints: false },
  };
}
