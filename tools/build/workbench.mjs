// The page with the spreadsheet grid, built into dist/workbench/.
import { dirname, join } from "node:path";
import { fileURLToPath } from "node:url";
import { EsbuildPlugin } from "esbuild-loader";
import HtmlWebpackPlugin from "html-webpack-plugin";
import MiniCssExtractPlugin from "mini-css-extract-plugin";

const ROOT = join(dirname(fileURLToPath(import.meta.url)), "..", "..");
const TARGET = "es2022";

export default function workbench(_env, argv = {}) {
  const production = argv.mode !== "development";
  return {
    name: "workbench",
    context: ROOT,
    mode: production ? "production" : "development",
    devtool: production ? false : "inline-source-map",
    target: ["web", TARGET],
    entry: { workbench: "./workbench/workbench.ts" },
    output: {
      path: join(ROOT, "dist", "workbench"),
      filename: "[name].js",
      chunkFilename: "parts/[name].js",
      clean: true,
    },
    resolve: { extensions: [".ts", ".tsx", ".mjs", ".js"] },
    cache: {
      type: "filesystem",
      name: `workbench-${production ? "production" : "development"}`,
      cacheDirectory: join(ROOT, ".cache", "webpack"),
      buildDependencies: { config: [fileURLToPath(import.meta.url)] },
    },
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
      new MiniCssExtractPlugin({ filename: "[name].css", chunkFilename: "parts/[name].css", ignoreOrder: true }),
      new HtmlWebpackPlugin({
        template: join(ROOT, "workbench", "workbench.html"),
        favicon: join(ROOT, "assets", "icon-32.png"),
        scriptLoading: "defer",
      }),
    ],
    optimization: { minimizer: [new EsbuildPlugin({ target: TARGET, css: true, legalComments: "none" })] },
    performance: { hints: false },
    stats: "errors-warnings",
  };
}
