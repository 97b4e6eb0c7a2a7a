/** `npm run edits` tries 2,000, each time others; a plain test run has 100, always the same. */
import { cpSync, existsSync, readFileSync, rmSync, statSync, truncateSync, utimesSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import fc from "fast-check";
import sharp from "sharp";
import { expect, it } from "vitest";
import { seal } from "../../src/archive/seal/seal.ts";
import { build, type BuildRequest } from "../../src/build.ts";
import { buildUnlessStanding } from "../../src/cli/build-command.ts";
import { AUDIENCES } from "../../src/facts/values.ts";
import { apply, type Edit, EDITS, EDITS_OF_PROSE, writeStart } from "./edits.ts";
import { contentOf, scratchFolders, writeAll } from "./scratch.ts";

const scratch = scratchFolders();
const ASKED = Number(process.env["SCARFLINE_EDITS"] ?? 0);
const IN_A_ROW = 10;
const RUNS = (ASKED || 100) / IN_A_ROW;

const tell = { line: () => undefined, progress: () => undefined };
const installed = new URL("../..", import.meta.url).pathname;
const LONG_AGO_S = Date.UTC(2024, 4, 1) / 1000;

/** Where a record is built again and again, with what was kept of earlier builds. */
interface Bench {
  readonly folder: string;
  readonly content: string;
  readonly out: string;
  readonly cache: string;
  /** Which of the editions is built, or all. */
  edition: number;
  program: string;
}

/** Too large to be read at every build; no two of a time are one picture. */
async function photograph(bench: Bench, at: number): Promise<void> {
  const file = join(bench.content, "photos/jig.jpg");
  const noise = { type: "gaussian", mean: 100 + at, sigma: 40 } as const;
  const picture = sharp({ create: { width: 640, height: 480, channels: 3, background: "black", noise } });
  writeFileSync(file, await picture.jpeg({ quality: 95 }).toBuffer());
  utimesSync(file, LONG_AGO_S, LONG_AGO_S + at);
}

const oneOf = (folder: string, at: number, of: RegExp): string | undefined => {
  const paths = existsSync(folder) ? [...contentOf(folder).keys()].filter((path) => of.test(path)) : [];
  const path = paths[at % Math.max(1, paths.length)];
  return path === undefined ? undefined : join(folder, path);
};

const cut = (file: string | undefined): void => (file === undefined ? undefined : truncateSync(file, 9));
const gone = (file: string | undefined): void => (file === undefined ? undefined : rmSync(file));

function otherDigit(file: string | undefined, at: number): void {
  if (file === undefined) return;
  const text = readFileSync(file, "utf8");
  const from = (at * 997) % text.length;
  writeFileSync(file, text.slice(0, from) + text.slice(from).replace(/\d/, `${at % 10}`));
}

/** What happens to the record besides its text, to what is kept, and to the site. */
const HAPPENINGS: { readonly [what: string]: (bench: Bench, at: number) => void | Promise<void> } = {
  nothing: () => undefined,
  "nothing, again": () => undefined,
  "another photograph": photograph,
  "an own sheet": ({ content }, at) => writeAll(content, { "style.css": `:root { --own: ${at}px }\n` }),
  "no own sheet": ({ content }) => rmSync(join(content, "style.css"), { force: true }),
  "another drawing": ({ content }, at) =>
    writeAll(content, {
      "drawings/fin.svg": `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 200 300"><path d="M${at} 10h90v200z"/></svg>`,
    }),
  "a seal": ({ content }, at) =>
    seal({ content, date: `2029-02-${10 + (at % 10)}` }, () => undefined).then(
      () => undefined,
      () => undefined,
    ),
  "another edition": (bench, at) => void (bench.edition = at % (AUDIENCES.length + 1)),
  "another program": (bench, at) => void (bench.program = `program ${at}`),
  "something kept cut short": ({ cache }, at) => cut(oneOf(cache, at, /./)),
  "what is kept of the site cut short": ({ cache }, at) => cut(oneOf(cache, at, /standing/)),
  "a digit of what was read another": ({ cache }, at) => otherDigit(oneOf(cache, at, /readings/), at),
  "a digit of what is kept of pages another": ({ cache }, at) => otherDigit(oneOf(cache, at, /\.pages$/), at),
  "what was read cut short": ({ cache }, at) => cut(oneOf(cache, at, /readings/)),
  "something kept gone": ({ cache }, at) => gone(oneOf(cache, at, /./)),
  "all that is kept of an earlier time": ({ cache, folder }) => back(join(folder, "cache-earlier"), cache),
  "the site of an earlier time": ({ out, folder }) => back(join(folder, "out-earlier"), out),
  "both of an earlier time": ({ out, cache, folder }) => {
    back(join(folder, "cache-earlier"), cache);
    back(join(folder, "out-earlier"), out);
  },
  "a page cut short": ({ out }, at) => cut(oneOf(out, at, /\.html$/)),
  "a letter of a page another": ({ out }, at) => {
    const file = oneOf(out, at, /\.html$/);
    if (file !== undefined) writeFileSync(file, readFileSync(file, "utf8").replace("shown", "shewn"));
  },
  "a page gone": ({ out }, at) => gone(oneOf(out, at, /\.html$/)),
  "a picture of the site written into": ({ out }, at) => cut(oneOf(out, at, /photos\/.*\.(?:jpg|webp|avif)$/)),
};

function back(from: string, to: string): void {
  if (!existsSync(from)) return;
  rmSync(to, { recursive: true, force: true });
  cpSync(from, to, { recursive: true, preserveTimestamps: true });
}

async function happen(bench: Bench, { does, at }: Edit): Promise<void> {
  await HAPPENINGS[does]?.(bench, at);
  apply(bench.content, { does, at });
}

function requestOf({ content, cache, out, edition }: Bench): BuildRequest {
  const one = AUDIENCES[edition];
  const editions = one === undefined ? AUDIENCES : [one];
  return { content, cache, out, editions, apart: one === undefined, today: "2030-01-01", program: installed };
}

interface Tally {
  stood: number;
  good: number;
  refused: number;
  /** Builds that kept some pages and made others. */
  part: number;
}

const pagesIn = (out: string): Map<string, number> =>
  new Map(
    [...contentOf(out).keys()]
      .filter((path) => path.endsWith(".html"))
      .map((path) => [path, statSync(join(out, path)).ino]),
  );

/** What stands after a build by all that was kept, held against one that knows of nothing. */
async function held(bench: Bench, tally: Tally): Promise<void> {
  const { folder, content, out } = bench;
  const request = requestOf(bench);
  const before = existsSync(out) ? contentOf(out) : undefined;
  for (const kept of ["out", "cache"]) back(join(folder, kept), join(folder, `${kept}-earlier`));
  const pages = existsSync(out) ? pagesIn(out) : undefined;
  const built = await buildUnlessStanding(request, bench.program, tell);
  const [clean, fresh] = [join(folder, "clean"), join(folder, "clean-cache")];
  for (const each of [clean, fresh]) rmSync(each, { recursive: true, force: true });
  const anew = await build({ ...request, out: clean, cache: fresh }, tell);
  if ("problems" in anew) {
    expect("problems" in built && built.problems).toEqual(anew.problems);
    expect(existsSync(out) ? contentOf(out) : undefined).toEqual(before);
    tally.refused += 1;
    back(join(folder, "good"), content);
    return;
  }
  if ("stands" in built) tally.stood += 1;
  else if (pages !== undefined && [...pagesIn(out)].some(([path, ino]) => pages.get(path) === ino)) tally.part += 1;
  tally.good += 1;
  const [made, expected] = [contentOf(out), contentOf(clean)];
  expect([...made.keys()]).toEqual([...expected.keys()]);
  for (const [path, text] of expected) expect(made.get(path) === text, path).toBe(true);
  back(content, join(folder, "good"));
}

const edits: fc.Arbitrary<readonly Edit[]> = fc.array(
  fc.record({
    does: fc.oneof(fc.constantFrom(...EDITS_OF_PROSE), fc.constantFrom(...EDITS, ...Object.keys(HAPPENINGS))),
    at: fc.nat(97),
  }),
  { minLength: IN_A_ROW, maxLength: IN_A_ROW },
);

it(
  "A site built by all that earlier builds kept is, after any edit, byte for byte the site of a clean build",
  async () => {
    const tally: Tally = { stood: 0, good: 0, refused: 0, part: 0 };
    await fc.assert(
      fc.asyncProperty(edits, async (sequence) => {
        const folder = scratch();
        const [content, out, cache] = ["content", "out", "cache"].map((name) => join(folder, name));
        const bench = { folder, content, out, cache, edition: AUDIENCES.length, program: "a program" } as Bench;
        await writeStart(bench.content);
        await photograph(bench, 0);
        await held(bench, tally);
        for (const edit of sequence) {
          await happen(bench, edit);
          await held(bench, tally);
        }
      }),
      { numRuns: RUNS, endOnFailure: true, seed: ASKED === 0 ? 11 : Date.now() },
    );
    expect(tally.good).toBeGreaterThan(5 * RUNS);
    expect(tally.stood).toBeGreaterThan(RUNS / 2);
    expect(tally.refused).toBeGreaterThan(RUNS / 2);
    expect(tally.part).toBeGreaterThan(2 * RUNS);
  },
  60_000 + RUNS * IN_A_ROW * 20_000,
);
