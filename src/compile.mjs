/**
 * Bundles the command with what it imports, the browser scripts and the style sheets into .build/: one file is read
 * faster than some hundred.
 * What a command imports only when it runs stays apart, so that no other command waits for it.
 */
import { build, transform } from "esbuild";
import { existsSync, mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from "node:fs";

const browserScripts = existsSync("src/browser")
  ? readdirSync("src/browser")
      .filter((name) => name.endsWith(".ts"))
      .map((name) => `src/browser/${name}`)
  : [];

rmSync(".build/parts", { recursive: true, force: true });
await build({
  entryPoints: ["src/cli.ts"],
  outdir: ".build",
  bundle: true,
  splitting: true,
  chunkNames: "parts/[name]-[hash]",
  platform: "node",
  format: "esm",
  target: "node20.19",
  external: ["sharp", "@11ty/*"],
  // Packages of the older kind ask for Node's own modules by `require`, which a module of the newer kind has not.
  banner: {
    js: `import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);`,
  },
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

/** Each folder of styles becomes one sheet; `layouts/sheets.ts` says which pages take it. */
mkdirSync(".build/styles", { recursive: true });
for (const sheet of readdirSync("layouts/styles")) {
  const parts = readdirSync(`layouts/styles/${sheet}`)
    .sort()
    .map((name) => readFileSync(`layouts/styles/${sheet}/${name}`, "utf8"));
  const { code } = await transform(parts.join("\n"), { loader: "css", minify: true });
  writeFileSync(`.build/styles/${sheet}.css`, code);
}
