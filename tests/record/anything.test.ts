import fc from "fast-check";
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync, writeFileSync } from "node:fs";
import { tmpdir } from "node:os";
import { join } from "node:path";
import { SaxesParser } from "saxes";
import { afterAll, beforeAll, describe, expect, it } from "vitest";
import { isMap, isScalar, isSeq, parseDocument, type Node } from "yaml";
import { readDrawing } from "../../src/publish/pictures/drawing.ts";
import type { Read } from "../../src/record/read.ts";
import { markdownParser } from "../../src/record/text/markdown.ts";
import { readPassages } from "../../src/record/text/passages.ts";
import { Source } from "../../src/record/text/source.ts";
import { expectAsTyped, expectTold } from "./anything/held.ts";
import { cutsIn, flipped, flipsIn, prose, typed } from "./anything/typed.ts";
import { readerOfCopies } from "./read-changed.ts";

/** `npm run fuzz` asks for more; each property takes its share, and so its seed from fast-check. */
const RUNS = Number(process.env["SCARFLINE_FUZZ"] ?? 2000);
const share = (part: number): { readonly numRuns: number } => ({ numRuns: Math.ceil(RUNS * part) });
/** Nothing may take longer, s of processor time; asked only where nobody waits for it, so that no plain test is timed. */
const LONGEST = process.env["SCARFLINE_FUZZ"] === undefined ? Number.POSITIVE_INFINITY : 2;

const SMALL = new URL("small", import.meta.url).pathname;
const ENTRY = "entries/2025-03-08-caps.md";
/** Files whose every text is kept as typed in the record. */
const FILES = [
  ENTRY,
  "entries/2025-03-15-pieces.md",
  "entries/2025-03-22-looked.md",
  "lots/R-1.md",
  "lots/S-1.md",
  "adhesives/resin-7.md",
  "trials/wiping.md",
];
const LOGGER = "climate/shop.csv";
const LOGGED = `Time (UTC);Temperature (°C);Humidity (%)\n${Array.from({ length: 12 }, (_, hour) => `2025-03-08 ${10 + hour}:00;19,${hour % 10};5${hour % 10}\n`).join("")}`;

const readCopy = readerOfCopies(SMALL);
let folder = "";
let slowest = 0;
beforeAll(() => {
  folder = mkdtempSync(join(tmpdir(), "scarfline-anything-"));
  cpSync(SMALL, folder, { recursive: true });
  mkdirSync(join(folder, "climate"));
});
afterAll(() => rmSync(folder, { recursive: true }));

/** Reads the record with one file changed, holds what must always hold, and puts the file back. */
async function readWith(file: string, content: string | Uint8Array): Promise<Read> {
  writeFileSync(join(folder, file), content);
  try {
    const before = process.cpuUsage();
    const read = await readCopy(folder);
    const { user, system } = process.cpuUsage(before);
    slowest = Math.max(slowest, (user + system) / 1e6);
    expect((user + system) / 1e6).toBeLessThan(LONGEST);
    expectTold(read, folder);
    if ("record" in read) expectAsTyped(read.record);
    return read;
  } finally {
    if (file === LOGGER) rmSync(join(folder, file));
    else writeFileSync(join(folder, file), readFileSync(join(SMALL, file)));
  }
}

/** Where each value of a file's front matter stands in its text. */
function valuesIn(file: string): [file: string, start: number, end: number][] {
  const text = readFileSync(join(SMALL, file), "utf8");
  const found: [string, number, number][] = [];
  const visit = (node: Node | null): void => {
    if (isScalar(node) && node.range) found.push([file, node.range[0] + 3, node.range[1] + 3]);
    if (isSeq(node)) node.items.forEach((item) => visit(item as Node));
    if (isMap(node)) node.items.forEach((pair) => visit(pair.value as Node | null));
  };
  visit(parseDocument(text.slice(3).split("\n---\n")[0] ?? "", { schema: "failsafe" }).contents as Node);
  return found;
}

const values = fc.constantFrom(...FILES.flatMap(valuesIn));
const whole = readFileSync(join(SMALL, ENTRY), "utf8");

/** A file of the small record with other text in place of one value. */
function withValue([file, start, end]: readonly [string, number, number], text: string): string {
  const before = readFileSync(join(SMALL, file), "utf8");
  return `${before.slice(0, start)}${text}${before.slice(end)}`;
}

describe("Whatever is typed", () => {
  it("is held against what is typed as a whole", async () => {
    const read = await readCopy(folder);
    expect("record" in read ? expectAsTyped(read.record) : 0).toBeGreaterThan(20);
  });

  it("in any field is kept as typed or told as a problem", async () => {
    const accepted = async (at: readonly [string, number, number], text: string): Promise<void> => {
      const read = await readWith(at[0], withValue(at, JSON.stringify(text)));
      if (!("record" in read)) return;
      const kept = JSON.stringify(read.record, (_key, value: unknown) =>
        value instanceof Map ? Object.fromEntries(value) : value,
      );
      expect(kept).toContain(JSON.stringify(text).slice(1, -1));
    };
    await fc.assert(fc.asyncProperty(values, typed, accepted), share(0.3));
  });

  it("without quotation marks never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(values, typed, async (at, text) => void (await readWith(at[0], withValue(at, text)))),
      share(0.15),
    );
  });

  it("of bytes as an entry never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(fc.uint8Array({ maxLength: 400 }), async (bytes) => {
        expect("problems" in (await readWith(ENTRY, bytes))).toBe(true);
      }),
      share(0.05),
    );
  });

  it("with bytes changed, in whatever encoding, never breaks the reader", async () => {
    const changed = fc.constantFrom(...FILES, LOGGER).chain((file) => {
      const text = file === LOGGER ? LOGGED : readFileSync(join(SMALL, file), "utf8");
      const wide = Buffer.from(`\ufeff${text}`, "utf16le");
      const encoded = fc.constantFrom<Uint8Array>(
        Buffer.from(text),
        Buffer.from(`\ufeff${text.replaceAll("\n", "\r\n")}`),
        wide,
        Buffer.from(wide).swap16(),
        Buffer.from(text, "latin1"),
      );
      return encoded.chain((bytes) => flipsIn(bytes.length).map((flips) => ({ file, bytes: flipped(bytes, flips) })));
    });
    await fc.assert(
      fc.asyncProperty(changed, async ({ file, bytes }) => void (await readWith(file, bytes))),
      share(0.15),
    );
  });

  it("in place of stretches of an entry never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(cutsIn(whole.length), async (cuts) => {
        const text = cuts.reduce((left, [at, length, put]) => left.slice(0, at) + put + left.slice(at + length), whole);
        await readWith(ENTRY, text);
      }),
      share(0.15),
    );
  });

  it("in prose never breaks the reader", async () => {
    await fc.assert(
      fc.asyncProperty(prose, async (text) => void (await readWith(ENTRY, `${whole}\n${text}\n`))),
      share(0.1),
    );
  });

  it("tells how long the slowest took", () => {
    if (LONGEST === 2)
      process.stdout.write(`${RUNS} records; the slowest took ${slowest.toFixed(3)} s of processor time\n`);
    expect(slowest).toBeGreaterThan(0);
  });
});

describe("Two readers of one text", () => {
  const parser = markdownParser();
  const secret = "The vault";

  it("agree on passages: what is hidden in none is in no token that is shown, and other blocks are the same", () => {
    const planted = fc.tuple(
      fc.array(prose, { maxLength: 5 }),
      fc.array(prose, { maxLength: 5 }),
      fc.constantFrom("archive", "inspector"),
    );
    fc.assert(
      fc.property(planted, ([before, after, word]) => {
        const body = [...before, `::: ${word}`, secret, ":::", ...after].join("\n");
        const { body: passages, problems } = readPassages(new Source("entry.md", body), body, 1);
        const lines = body.split("\n").length;
        for (const { line } of problems) expect(line).toBeLessThanOrEqual(lines);
        if (problems.length > 0) return;
        const shown = passages.filter(({ audience }) => audience === "public").map(({ markdown }) => markdown);
        expect(
          shown.flatMap((markdown) => parser.parse(markdown, {}).map(({ content }) => content)).join("\n"),
        ).not.toContain(secret);
        expect(shown.join("\n")).not.toMatch(/^ {0,3}:::/m);
        expect(passages.some(({ audience, markdown }) => audience === word && markdown.includes(secret))).toBe(true);
      }),
      share(0.05),
    );
  });

  it("agree on drawings: what is accepted is XML, and what is written is read as the same again", () => {
    const drawing = `<?xml version="1.0"?>
<svg xmlns="http://www.w3.org/2000/svg" xmlns:xlink="http://www.w3.org/1999/xlink" xmlns:ink="http://example.org/ink" viewBox="0 0 100 40" ink:note="a">
<defs><linearGradient id="fade"><stop offset="0" stop-color="#000"/></linearGradient><g id="rib"><path d="M0 0L9 9"/></g></defs>
<style>.spar { stroke: #123; fill: url(#fade) }</style>
<g class="spar" style="stroke-width: 2"><path d="M0 20H100"/><use xlink:href="#rib" x="5"/><text x="1" y="2">Holm &amp; Rippe</text></g>
<!-- a note --></svg>
`;
    const put = fc.string({
      unit: fc.constantFrom(
        "<",
        ">",
        "/",
        "&",
        ";",
        '"',
        "'",
        "=",
        " ",
        "g",
        "a",
        "script",
        "href",
        "url(",
        ")",
        "xmlns:",
        ":",
        "\n",
        "]]>",
        "<!--",
        "-->",
        "&#60;",
        "{",
        "}",
      ),
      maxLength: 8,
    });
    const cuts = fc.array(fc.tuple(fc.nat(drawing.length), fc.nat(10), put), { minLength: 1, maxLength: 3 });
    fc.assert(
      fc.property(cuts, (all) => {
        const text = all.reduce(
          (left, [at, length, with_]) => left.slice(0, at) + with_ + left.slice(at + length),
          drawing,
        );
        const read = readDrawing(text);
        if (!("svg" in read)) {
          expect(read.length).toBeGreaterThan(0);
          return;
        }
        expect(() => wellFormed(text)).not.toThrow();
        wellFormed(read.svg);
        expect(read.svg).not.toMatch(/<script|javascript:|\son\w+=/i);
        expect(readDrawing(read.svg)).toEqual(read);
      }),
      share(0.05),
    );
  });

  /** Throws at anything that is no XML with namespaces. */
  function wellFormed(xml: string): void {
    const strict = new SaxesParser({ xmlns: true });
    strict.on("error", (error) => {
      throw error;
    });
    strict.write(xml).close();
  }
});
