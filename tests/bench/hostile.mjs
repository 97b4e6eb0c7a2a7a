/**
 * Input that is made to stop a program: each generator gives one file of a record, of any size. Where `isBound`, no
 * more than `most` is read, and `tests/record/limits.test.ts` has what the builder is told beyond it; elsewhere the
 * size of the file is what bounds it.
 */
const LOT = "title: Spruce\nmaterial: timber\nreceived: 2025-01-10\n";
const FILE_BYTES = 524_288;
const PROSE = 500_000;
const HEADER = "Time (UTC),Temp (°C),RH (%)";

const lot = (facts, prose = "") => ({ path: "lots/S-2.md", text: `---\n${LOT}${facts}---\n${prose}` });
const prose = (text) => lot("", text);
const entry = (facts) => ({
  path: "entries/2025-03-09-more.md",
  text: `---\ndate: 2025-03-09\ntitle: More\nassembly: wing\n${facts}---\n`,
});
const table = (rows, header = HEADER) => ({ path: "climate/shop.csv", text: `${header}\n${rows}` });
const each = (count, line) => Array.from({ length: count }, (_, at) => line(at)).join("");
const minute = (at) => new Date(Date.UTC(2015, 0, 1) + at * 60_000).toISOString().slice(0, 16).replace("T", " ");

const bound = (name, unit, most, file) => ({ name, unit, most, isBound: true, file });
const within = (name, unit, most, file) => ({ name, unit, most, isBound: false, file });
/** So many characters of prose, in pieces. */
const pieces = (name, piece) => within(name, "characters", PROSE, (n) => prose(piece.repeat(n / piece.length)));

const NAMESPACE = 'xmlns="http://www.w3.org/2000/svg"';
const svg = (inner) => ({ path: "drawings/d.svg", text: `<svg ${NAMESPACE} viewBox="0 0 9 9">${inner}</svg>` });
/** So many characters of a drawing, in pieces; near the five million bytes that are read. */
const drawn = (name, piece, around = (inner) => inner) =>
  within(name, "characters", 4_900_000, (n) => svg(around(piece.repeat(n / piece.length))));

const FRONT_MATTER = [
  bound("keys nested in each other", "deep", 24, (n) => lot(each(n, (at) => `${" ".repeat(at)}k:\n`))),
  bound("question marks", "deep", 23, (n) => lot(`k:\n  ${"? ".repeat(n)}a\n`)),
  bound("brackets within brackets", "deep", 23, (n) => lot(`k: ${"[".repeat(n)}${"]".repeat(n)}\n`)),
  bound("unknown keys", "keys", 197, (n) => lot(each(n, (at) => `k${at}: 1\n`))),
  bound("one key again and again", "keys", 197, (n) => lot("k: 1\n".repeat(n))),
  bound("items", "items", 5000, (n) => lot(`k:\n${"- a\n".repeat(n)}`)),
  within("items that are each wrong", "items", 2500, (n) =>
    entry(`hours:\n${"- { who: x, task: y, time: z }\n".repeat(n)}`),
  ),
  bound("blank lines", "lines", 999, (n) => lot("\n".repeat(n))),
  within("runs of blank lines", "lines", 400_000, (n) => lot(`${`${"\n".repeat(900)}# a`.repeat(n / 900)}\n`)),
  bound("words, signs and blanks", "comments", 29_989, (n) => lot("#a\n".repeat(n))),
  within("brackets that close nothing", "lines", 9000, (n) => lot("k: ] }\n".repeat(n))),
  bound("a text", "characters", 20_000, (n) =>
    entry(`open_items: { raise: [{ id: O-1, what: ${"a".repeat(n)}, before: flight }] }\n`),
  ),
  bound("a quantity", "characters", 500, (n) => lot(`moisture: 10${" ".repeat(n - 3)}%\n`)),
  bound("digits", "digits", 25, (n) => lot(`moisture: 10.${"0".repeat(n - 2)} %\n`)),
  bound("an id", "characters", 100, (n) => entry(`departures: [{ id: ${"D".repeat(n)}, what: a, why: b }]\n`)),
  bound("a name of a file", "characters", 100, (n) => ({ ...lot(""), path: `lots/${"S".repeat(n)}.md` })),
];

const TEXTS = [
  bound("a file", "bytes", FILE_BYTES, (n) => prose("a".repeat(n - lot("").text.length))),
  bound("quotes within quotes", "deep", 99, (n) => prose(`${"> ".repeat(n)}a\n`)),
  bound("lists within lists", "deep", 49, (n) => prose(`${"- ".repeat(n)}a\n`)),
  bound("links", "links", 2000, (n) => prose("[the spruce](S-1)\n".repeat(n))),
  within("links that are typed otherwise", "links", 2000, (n) => prose(each(n, (at) => `[a](S&#45;1?${at})\n`))),
  within("lines that are like marks", "lines", 60_000, (n) => prose("- ::: x\n".repeat(n))),
  pieces("opening brackets", "["),
  pieces("opening pictures", "!["),
  pieces("brackets and line feeds", "[\n"),
  pieces("stars", "**a*"),
  pieces("tildes", "~~a "),
  pieces("backticks", "`a ``"),
  pieces("tags", "<b c "),
  pieces("entities", "&amp;"),
  pieces("quotes and lists", "> - a\n"),
  pieces("rows of a table", "|a|\n|-|\n|c|\n"),
];

const TABLES = [
  bound("lines", "lines", 2_099_999, (n) => table("\n".repeat(n - 1))),
  bound("one row", "characters", 16_384, (n) => table(`2025-03-08 14:00,20,50${" ".repeat(n - 22)}\n`)),
  bound("columns", "columns", 256, (n) => table("2025-03-08 14:00,20,50\n", HEADER + each(n - 3, (at) => `,c${at}`))),
  within("rows", "rows", 500_000, (n) => table(each(n, (at) => `${minute(at)},20,50\n`))),
  bound("one line of letters", "characters", 16_384, (n) => table("a".repeat(n))),
  within("one line in a whole file", "characters", 50_000_000, (n) => table("a".repeat(n))),
  within("one line of nothing but commas", "characters", 50_000_000, (n) => table("", ",".repeat(n))),
  within("quotation marks", "characters", 50_000_000, (n) => table('"'.repeat(n))),
  within("rows of uneven length", "rows", 1_000_000, (n) =>
    table(each(n, (at) => `${minute(at)},20,50${at % 2 ? ",1" : ""}\n`)),
  ),
  within("stars in the name of a file", "stars", 200, (n) => ({
    path: "climate/shop.md",
    text: `---\nfile: "${"*s".repeat(n)}b.csv"\n---\n`,
  })),
];

/** Read by `readDrawing`, a record's or not; `tests/publish/drawing-allowed.test.ts` has what is told beyond each limit. */
export const DRAWINGS = [
  drawn("blanks in a tag", " ", (blanks) => `<g${blanks}/>`),
  drawn("line feeds in a tag", "\n", (feeds) => `<g${feeds}/>`),
  drawn("groups in groups", "<g>"),
  drawn("path data", "M1 1", (d) => `<path d="${d}"/>`),
  drawn("points", "1,1 ", (points) => `<polyline points="${points}"/>`),
  drawn("transformations", "scale(1)", (all) => `<g transform="${all}"/>`),
  drawn("transformations of blanks", " ", (blanks) => `<g transform="${blanks}x"/>`),
  drawn("one attribute", "a", (id) => `<g id="${id}"/>`),
  drawn("one style", "fill:red;", (style) => `<g style="${style}"/>`),
  drawn("one sheet", ".a{fill:red}", (sheet) => `<style>${sheet}</style>`),
  within("attributes", "attributes", 100_000, (n) => svg(`<g ${each(n, (at) => `data-${at}="" `)}/>`)),
  within("a long sheet and many styles", "styles", 90_000, (n) =>
    svg(`<style>${".a{fill:red}".repeat(8000)}</style>${'<g style="fill:red"/>'.repeat(n)}`),
  ),
  drawn("elements", "<g/>"),
  drawn("comments", "<!---->"),
  drawn("entities of XML", "&amp;", (words) => `<text>${words}</text>`),
];

export const GENERATORS = [...FRONT_MATTER, ...TEXTS, ...TABLES];
