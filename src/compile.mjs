/** Bundles the command and the browser scripts into .build/, so that commands start fast. */
import { build } from "esbuild";
import { existsSync, readdirSync } from "node:fs";

const browserScripts = existsSync("src/browser")
  ? readdirSync("src/browser").filter((name) => name.endsWith(".ts")).map((name) => `src/browser/${name}`)
  : [];

await build({
  entryPoints: ["src/cli.ts"],
  outdir: ".build",
  bundle: true,
  platform: "node",
  format: "esm",
  target: "node20.19",
  packages: "external",
  jsx: "automatic",
  jsxImportSource: "preact",
  sourcemap: "linked",
});

if (browserScripts.length > 0) {
  await build({
    entryPoints: browserScripts,
    outdir: ".build/browser",
    bundle: true,
    platform: "browser",
    format: "iife",
    target: "es2020",
    minify: true,
  });
}
