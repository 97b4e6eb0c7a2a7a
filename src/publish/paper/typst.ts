/** Typst, by which PDFs are set. It is there only if whoever runs the program has installed it. */
import { createRequire } from "node:module";
import { setImmediate } from "node:timers/promises";
import { setFlagsFromString } from "node:v8";
import { runInNewContext } from "node:vm";
import { TEMPLATE } from "../../../layouts/paper/template.ts";
import { TYPESETTER } from "../../pages/appendix/typesetter.ts";
import type { PaperData } from "./blocks.ts";

type Typst = typeof import("@myriaddreamin/typst-ts-node-compiler");

export interface Maker {
  /** Its name and version, and that of the package it comes in. */
  readonly name: string;
  /**
   * Sets one paper; `files` are its pictures and drawings, by the names that it calls them. The same gives the same bytes.
   * @throws Error where it cannot be set, which is a mistake of the program
   */
  readonly set: (paper: PaperData, files: ReadonlyMap<string, Uint8Array>) => Promise<Uint8Array>;
}

/** Nothing is read from a disk: all that a paper is made of is given, and this folder is looked into for nothing else. */
const NOWHERE = "/nowhere";
/** What Typst keeps for a next compilation of the same is of no use to the next paper. */
const KEPT = 0;

/** Undefined where it is not installed, or has nothing for this machine. */
export async function openMaker(name: string = TYPESETTER[0]): Promise<Maker | undefined> {
  const typst = await import(name).catch(() => undefined);
  if (typst === undefined) return undefined;
  const { NodeCompiler } = typst as Typst;
  const compiler = NodeCompiler.create({ workspace: NOWHERE });
  const { version } = createRequire(import.meta.url)(`${name}/package.json`) as { version: string };
  const [own] = compiler.query({ mainFileContent: "#metadata(str(sys.version)) <version>" }, { selector: "<version>" });
  return {
    name: `Typst ${(own as { value: string }).value}, by ${name} ${version}`,
    set: async (paper, files) => {
      const bytes = setBy(compiler, paper, files);
      await letGo();
      return bytes;
    },
  };
}

/**
 * What Typst has laid out stays for as long as the object that stands for it, which V8 takes for a small one and is in
 * no hurry to clear: ten times the memory in the end.
 */
async function letGo(): Promise<void> {
  setFlagsFromString("--expose-gc");
  const clear = runInNewContext("gc") as (how: { readonly type: "minor" }) => void;
  clear({ type: "minor" });
  await setImmediate();
}

function setBy(
  compiler: InstanceType<Typst["NodeCompiler"]>,
  paper: PaperData,
  files: ReadonlyMap<string, Uint8Array>,
): Uint8Array {
  compiler.resetShadow();
  for (const [name, bytes] of files) compiler.mapShadow(`${NOWHERE}/${name}`, Buffer.from(bytes));
  compiler.mapShadow(`${NOWHERE}/paper.json`, Buffer.from(paper.json));
  const run = compiler.compile({ mainFileContent: TEMPLATE, resetRead: true });
  const { result } = run;
  if (result === null) throw new Error(`A PDF could not be set: ${JSON.stringify(faultsOf(compiler, run))}`);
  const [year, month, day] = paper.date;
  const bytes = compiler.pdf(result, { creationTimestamp: Date.UTC(year, month - 1, day) / 1000, pdfTags: true });
  compiler.resetShadow();
  compiler.evictCache(KEPT);
  return bytes;
}

function faultsOf(
  compiler: InstanceType<Typst["NodeCompiler"]>,
  run: ReturnType<InstanceType<Typst["NodeCompiler"]>["compile"]>,
): unknown {
  const faults = run.takeDiagnostics();
  return faults === null ? "no reason was told" : compiler.fetchDiagnostics(faults);
}
