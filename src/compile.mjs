/**
 * Bundles the command with what it imports, the browser scripts and the style sheets into .build/: one file is read
 * faster than some hundred.
 * What a command imports only when it runs stays apart, so that no other command waits for it.
 */
import { build, transform } from "esbuild";
import { existsSync, mkdirSync, readdirSync, readFileSync, renameSync, rmSync, statSync, writeFileSync } from "node:fs";
import { dirname, join, relative } from "node:path";

const browserScripts = existsSync("src/browser")
  ? readdirSync("src/browser")
      .filter((name) => name.endsWith(".ts"))
      .map((name) => `src/browser/${name}`)
  : [];

/** Everything is made before anything is put into its place: who runs a command meanwhile has the program as it was. */
const made = [];

/** Markdown reads entities and writes none; the table for writing them is as large. */
const entitiesAsRead = {
  name: "entities-as-read",
  setup: (bundle) =>
    bundle.onResolve({ filter: /^entities$/ }, ({ importer, ...rest }) =>
      /[\\/]markdown-it[\\/]lib[\\/]/.test(importer)
        ? bundle.resolve("entities/lib/decode.js", { importer, ...only(rest) })
        : undefined,
    ),
};
const only = ({ resolveDir, kind }) => ({ resolveDir, kind });

const program = await build({
  write: false,
  entryPoints: { cli: "src/cli.ts", "own-pages": "src/publish/own/child.ts", eleventy: "src/plugin/eleventy.ts" },
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
  minify: true,
  sourcemap: "linked",
  metafile: true,
  plugins: [entitiesAsRead],
});
made.push(...program.outputFiles.map(({ path, contents }) => [path, contents]));

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
    metafile: true,
  });
  made.push([".build/browser/licences.txt", licencesOf(Object.keys(scripts.metafile.inputs))]);
  made.push(...scripts.outputFiles.map(({ path, contents }) => [path, contents]));
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
  legalComments: "none",
  metafile: true,
});
made.push(...bench.outputFiles.map(({ path, contents }) => [path, contents]));
const bundled = [...Object.keys(program.metafile.inputs), ...Object.keys(bench.metafile.inputs)];
made.push([".build/licences.txt", licencesOf(bundled)]);
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
for (const name of readdirSync(".build/parts")) {
  const path = join(".build/parts", name);
  if (!kept.has(path) && Date.now() - statSync(path).mtimeMs > DAY_MS) rmSync(path, { force: true });
}

/** The licences of the packages that are bundled, as they came with each; one text that several have stands once. */
function licencesOf(inputs) {
  const folders = new Set(inputs.flatMap((path) => /^.*node_modules\/(?:@[^/]+\/)?[^/]+(?=\/)/.exec(path)?.[0] ?? []));
  const byText = new Map();
  for (const folder of [...folders].sort()) {
    const { name, version, license } = JSON.parse(readFileSync(join(folder, "package.json"), "utf8"));
    const file = readdirSync(folder).find((each) => /^(licen[cs]e|copying)/i.test(each));
    const text = file === undefined ? "" : readFileSync(join(folder, file), "utf8").trim();
    byText.set(text, [...(byText.get(text) ?? []), `${name} ${version}: ${license ?? "its licence is below"}\n`]);
  }
  const told = [...byText].map(([text, names]) => `${names.join("")}${text === "" ? "" : `\n${text}\n`}`);
  return withoutRepeats(`Bundled here, each under its own licence:\n\n${told.join(`\n${"-".repeat(72)}\n`)}`);
}

/** The terms that many licences begin with stand where they come first; each later one says where, and goes on with what is its own. */
function withoutRepeats(text) {
  const terms = /^ *Apache License\n[^]*?\n *END OF TERMS AND CONDITIONS\n/gm;
  const known = new Map();
  return text.replace(terms, (whole) => {
    const words = whole.replace(/\s+/g, " ");
    const number = known.get(words);
    if (number !== undefined)
      return `[The Apache License, version 2.0, word for word as at (${number}) above, from its title to the end of its terms.]\n`;
    known.set(words, known.size + 1);
    return `(${known.size})\n${whole}`;
  });
}
