/** Bundles the command with what it imports, and the browser scripts, into .build/: one file is read faster than some hundred. */
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
  external: ["sharp", "@11ty/*"],
  // Packages of the older kind ask for Node's own modules by `require`, which a module of the newer kind has not.
  banner: { js: `import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);` },
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
