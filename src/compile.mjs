/**
 * Bundles the command with what it imports, the browser scripts and the style sheets into .build/: one file is read
 * faster than some hundred.
 * What a command imports only when it runs stays apart, so that no other command waits for it.
 */
import { build, transform } from "esbuild";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative, resolve } from "node:path";
import { brotliCompressSync } from "node:zlib";
import { licencesOf } from "./licences.mjs";

const browserScripts = existsSync("src/browser")
  ? readdirSync("src/browser")
      .filter((name) => name.endsWith(".ts"))
      .map((name) => `src/browser/${name}`)
  : [];

/** Everything is made before anything is put into its place: who runs a command meanwhile has the program as it was. */
const made = [];

/** What packages ask for and is never called here; a call would fail at once, and say so. */
const neverCalled = {
  name: "never-called",
  setup(bundle) {
    // gray-matter is given another reader of YAML, and style sheets are written without maps.
    bundle.onResolve({ filter: /^js-yaml$|^source-map-js\// }, ({ importer }) =>
      /[\\/]gray-matter[\\/]|[\\/]css-tree[\\/]/.test(importer)
        ? { path: "never-called", namespace: "never-called" }
        : undefined,
    );
    bundle.onLoad({ filter: /.*/, namespace: "never-called" }, () => ({ contents: NEVER_CALLED }));
  },
};
const NEVER_CALLED = `
  const left = () => { throw new Error("this was left out of the program, which never calls it"); };
  export { left as safeLoad, left as safeDump, left as SourceMapGenerator };
`;

/** The same code twice over: as modules of the newer kind, whose unused parts are left out. */
const asModules = {
  name: "as-modules",
  setup: (bundle) =>
    bundle.onResolve({ filter: /^yaml$/ }, () => ({ path: resolve("node_modules/yaml/browser/dist/index.js") })),
};

const program = await build({
  write: false,
  entryPoints: {
    cli: "src/cli.ts",
    "own-pages": "src/publish/own/child.ts",
    "set-papers": "src/publish/paper/child.ts",
    eleventy: "src/plugin/eleventy.ts",
  },
  outdir: ".build",
  bundle: true,
  splitting: true,
  chunkNames: "parts/[name]-[hash]",
  platform: "node",
  format: "esm",
  target: "node20.19",
  external: Object.keys(JSON.parse(readFileSync("package.json", "utf8")).dependencies),
  // Packages of the older kind ask for Node's own modules by `require`, which a module of the newer kind has not.
  banner: {
    js: `import { createRequire as requireFrom } from "node:module"; const require = requireFrom(import.meta.url);`,
  },
  jsx: "automatic",
  jsxImportSource: "preact",
  minify: true,
  legalComments: "external",
  sourcemap: "linked",
  metafile: true,
  plugins: [neverCalled, asModules],
});
made.push(...scriptsOf(program));

/** Types of what other programs import: files that need no other. */
const types = ["src/pages/own/edition-view.ts", "src/plugin/options.ts"].map((path) => readFileSync(path, "utf8"));
made.push([
  ".build/eleventy.d.ts",
  `${types.join("\n")}\ndeclare const scarfline: ScarflinePlugin;\nexport default scarfline;\n`,
]);

if (browserScripts.length > 0) {
  const scripts = await build({
    write: false,
    entryPoints: browserScripts,
    outdir: ".build/browser",
    bundle: true,
    platform: "browser",
    format: "iife",
    target: "es2020",
    minify: true,
    legalComments: "external",
    metafile: true,
  });
  made.push([".build/browser/licences.txt", licencesIn(scripts)], ...scriptsOf(scripts));
}

/** The page at the bench, apart from what goes into every edition. */
const bench = await build({
  write: false,
  entryPoints: { page: "src/browser/bench/main.tsx", worker: "src/browser/bench/worker.ts" },
  outdir: ".build/bench",
  bundle: true,
  platform: "browser",
  format: "iife",
  target: "es2022",
  jsx: "automatic",
  jsxImportSource: "preact",
  minify: true,
  legalComments: "external",
  metafile: true,
});
made.push([".build/licences.txt", licencesIn(program, bench)]);
/** The program only puts it out, and never runs it: it lies there as a web server would send it. */
made.push(...scriptsOf(bench).map(([path, script]) => [`${path}.br`, brotliCompressSync(script)]));
const benchSheet = await transform(readFileSync("src/browser/bench/bench.css", "utf8"), {
  loader: "css",
  minify: true,
});
made.push([".build/bench/page.css", benchSheet.code]);

/** Each folder of styles becomes one sheet; `layouts/sheets.ts` says which pages take it. */
for (const sheet of readdirSync("layouts/styles")) {
  const parts = readdirSync(`layouts/styles/${sheet}`)
    .sort()
    .map((name) => readFileSync(`layouts/styles/${sheet}/${name}`, "utf8"));
  const { code } = await transform(parts.join("\n"), { loader: "css", minify: true });
  made.push([`.build/styles/${sheet}.css`, code]);
}

/** Each file is whole at once, and the command itself comes last: parts have their content in their names. */
const isCommand = (path) => /[\\/]cli\.js$/.test(path);
made.sort(([a], [b]) => Number(isCommand(a)) - Number(isCommand(b)));
for (const [path, content] of made) {
  mkdirSync(dirname(path), { recursive: true });
  const making = `${path}.${process.pid}`;
  writeFileSync(making, content);
  renameSync(making, path);
}

/** Parts of earlier programs stay for a day: a command that began before may still ask for them. A package has none of them. */
const DAY_MS = process.argv.includes("--alone") ? 0 : 86_400_000;
const kept = new Set(made.map(([path]) => relative(".", path)));
for (const path of [".build/parts", ".build/bench"].flatMap((folder) =>
  readdirSync(folder).map((name) => join(folder, name)),
)) {
  if (!kept.has(path) && Date.now() - statSync(path).mtimeMs > DAY_MS) rmSync(path, { force: true });
}

function scriptsOf({ outputFiles }) {
  return outputFiles.filter(({ path }) => !isNotice(path)).map(({ path, contents }) => [path, contents]);
}

function licencesIn(...bundles) {
  const comments = bundles.flatMap(({ outputFiles }) => outputFiles.filter(({ path }) => isNotice(path)));
  return licencesOf(
    bundles.flatMap(({ metafile }) => Object.keys(metafile.inputs)),
    comments.map(({ text }) => text),
  );
}

/** What stands in comments of the sources is collected beside the licences, and in no script. */
function isNotice(path) {
  return path.endsWith(".LEGAL.txt");
}
