/** Ways of tampering with a bag's or a record's files, by what a file is. Each changes the map it is given and says what it did. */
import { hex } from "../make.ts";
import type { Chance } from "./chance.ts";

export type Files = Map<string, Buffer>;
type Edit = (files: Files, chance: Chance) => string;

const text = (files: Files, path: string): string => (files.get(path) ?? Buffer.alloc(0)).toString("latin1");
const put = (files: Files, path: string, value: string): void => void files.set(path, Buffer.from(value, "latin1"));
const pick = (files: Files, chance: Chance, like: RegExp): string => {
  const fitting = [...files.keys()].filter((path) => like.test(path));
  return chance.of(fitting.length > 0 ? fitting : [...files.keys()]);
};

/** Of bytes, whatever they are. */
export function bytesTampered(bytes: Buffer, chance: Chance): { bytes: Buffer; what: string } {
  const at = chance.below(Math.max(bytes.length, 1));
  const more = Buffer.from(chance.of([" ", "\n", "\0", "x", "\r\n"]));
  const changed = Buffer.from(bytes);
  switch (chance.below(5)) {
    case 0:
      if (changed.length > 0) changed[at] = ((changed[at] ?? 0) + 1 + chance.below(255)) % 256;
      return { bytes: changed, what: `byte ${at} changed` };
    case 1:
      return { bytes: bytes.subarray(0, at), what: `cut to ${at}` };
    case 2:
      return { bytes: Buffer.concat([bytes, more]), what: "bytes added at the end" };
    case 3:
      return { bytes: Buffer.concat([bytes.subarray(0, at), more, bytes.subarray(at)]), what: `bytes put in at ${at}` };
    default:
      return {
        bytes: Buffer.concat([bytes.subarray(0, at), bytes.subarray(at + 1 + chance.below(40))]),
        what: `bytes taken out at ${at}`,
      };
  }
}

const anyBytes: Edit = (files, chance) => {
  const path = chance.of([...files.keys()]);
  const { bytes, what } = bytesTampered(files.get(path) ?? Buffer.alloc(0), chance);
  files.set(path, bytes);
  return `${path}: ${what}`;
};

const taken: Edit = (files, chance) => {
  const path = chance.of([...files.keys()]);
  files.delete(path);
  return `${path} taken away`;
};

const renamed: Edit = (files, chance) => {
  const path = chance.of([...files.keys()]);
  const to = chance.of([
    path.toUpperCase(),
    `${path}.old`,
    path.replace(/([^/]+)$/, ".$1"),
    path.replace("data/", "Data/"),
    path.replace("a", "a\u0301"),
  ]);
  const bytes = files.get(path) ?? Buffer.alloc(0);
  files.delete(path);
  files.set(to, bytes);
  return `${path} renamed ${to}`;
};

const added: Edit = (files, chance) => {
  const near = chance.of([...files.keys()]);
  const folder = near.slice(0, near.lastIndexOf("/") + 1);
  const path = folder + chance.of(["new.txt", ".hidden", "Thumbs.db", "index.html", "fetch.txt", "manifest-md5.txt"]);
  files.set(path, Buffer.from("added\n"));
  return `${path} added`;
};

const swapped: Edit = (files, chance) => {
  const [one, other] = [chance.of([...files.keys()]), chance.of([...files.keys()])];
  const bytes = files.get(one) ?? Buffer.alloc(0);
  files.set(one, files.get(other) ?? Buffer.alloc(0));
  files.set(other, bytes);
  return `${one} and ${other} swapped`;
};

/** Lines of a manifest, a list of seals or `bag-info.txt`. */
const lines: Edit = (files, chance) => {
  const path = pick(files, chance, /(manifest-\w+|bag-info|bagit|seals|record)\.(txt|sha256)$|seals\/.*\.sha256$/);
  const all = text(files, path).split("\n").slice(0, -1);
  const at = chance.below(Math.max(all.length, 1));
  const line = all[at] ?? "";
  const changes: readonly (readonly [string, readonly string[]])[] = [
    ["line taken out", []],
    ["line twice", [line, line]],
    ["line's digits in capitals", [line.toUpperCase()]],
    ["line with a path in other letters", [line.replace(/a(?=[^a]*$)/, "A")]],
    ["line with `./`", [line.replace("  ", "  ./")]],
    ["line with an asterisk", [line.replace("  ", " *")]],
    ["line with another digest", [line.replace(/[0-9a-f]/, (digit) => (digit === "0" ? "1" : "0"))]],
    ["line of a file that is not here", [line, line.replace(/ {2}.*/, "  data/none.txt")]],
    ["line with `..`", [line.replace("  ", "  ../")]],
    ["line with a number more", [line.replace(/\d/, (digit) => String((Number(digit) + 1) % 10))]],
    ["line with a carriage return", [`${line}\r`]],
    ["line after an empty one", ["", line]],
  ];
  const [what, now] = chance.of(changes);
  put(files, path, [...all.slice(0, at), ...now, ...all.slice(at + 1)].map((each) => `${each}\n`).join(""));
  return `${path}:${at + 1}: ${what}`;
};

const allTags: Edit = (files, chance) => {
  const like = chance.of([
    /^tagmanifest-/,
    /manifest-sha512/,
    /manifest-sha256/,
    /manifest-/,
    /^(tagmanifest-.*|bag-info\.txt)$/,
  ]);
  for (const path of [...files.keys()].filter((each) => !each.startsWith("data/") && like.test(each)))
    files.delete(path);
  return `without ${like.source}`;
};

/** A payload file is changed and some of what vouches for it is put right, but never all of it: that no bag can show by itself. */
const forged: Edit = (files, chance) => {
  const path = pick(files, chance, /^data\/(record|ledgers)\//);
  const { bytes, what } = bytesTampered(files.get(path) ?? Buffer.alloc(0), chance);
  files.set(path, bytes);
  const mend = chance.below(7);
  const algorithms = mend === 0 ? ["sha256"] : ["sha256", "sha512"];
  for (const name of algorithms) mendLine(files, `manifest-${name}.txt`, path, hex(name, bytes));
  if (mend >= 2) mendLine(files, "data/record.sha256", path.slice("data/".length), hex("sha256", bytes));
  if (mend === 3)
    for (const name of algorithms)
      mendLine(
        files,
        "tagmanifest-sha256.txt",
        `manifest-${name}.txt`,
        hex("sha256", files.get(`manifest-${name}.txt`) ?? ""),
      );
  if (mend >= 4) for (const name of ["sha256", "sha512"]) files.delete(`tagmanifest-${name}.txt`);
  if (mend === 5) put(files, "bag-info.txt", text(files, "bag-info.txt").replace(/Bag-Software-Agent.*\n/, ""));
  if (mend === 6) put(files, "bagit.txt", text(files, "bagit.txt").replace("1.0", "0.97"));
  return `${path}: ${what}, and what vouches for it put right in part (${mend})`;
};

function mendLine(files: Files, manifest: string, path: string, digest: string): void {
  if (!files.has(manifest)) return;
  const mended = text(files, manifest)
    .split("\n")
    .map((line) => (line.endsWith(`  ${Buffer.from(path).toString("latin1")}`) ? `${digest}  ${path}` : line));
  put(files, manifest, mended.join("\n"));
}

const fetched: Edit = (files, chance) => {
  const path = pick(files, chance, /^data\//);
  files.delete(path);
  put(files, "fetch.txt", `https://example.org/${path} - ${path}\n`);
  return `${path} left to be fetched`;
};

export const OF_BAGS: readonly Edit[] = [
  anyBytes,
  anyBytes,
  taken,
  renamed,
  added,
  swapped,
  lines,
  lines,
  allTags,
  forged,
  forged,
  fetched,
];
export const OF_RECORDS: readonly Edit[] = [anyBytes, anyBytes, taken, renamed, swapped, lines, lines];
