/** Bags of our own for each case of the published conformance suite of BagIt: its folders and what each is about, none of its bytes. */
import { type BagShape, hex } from "../make.ts";

type Files = BagShape["files"];

const A: Files = { "data/a.txt": "a", "data/deep/b.txt": "b" };
const INFO = "Bagging-Date: 2021-03-09\nPayload-Oxum: 2.2\n";
const line = (path: string, text: string, algorithm = "sha256"): string => `${hex(algorithm, text)}  ${path}\n`;
const GOOD = line("data/a.txt", "a") + line("data/deep/b.txt", "b");

const declared = (version: string, encoding = "UTF-8"): string =>
  `BagIt-Version: ${version}\nTag-File-Character-Encoding: ${encoding}\n`;
const of = (version: string, files: Files = A, more: Partial<BagShape> = {}): BagShape => ({
  files,
  declaration: declared(version),
  tagAlgorithms: ["sha256"],
  ...more,
});
const listing = (version: string, manifest: string, files: Files = A): BagShape =>
  of(version, { ...files, "manifest-sha256.txt": manifest });
const named = (path: string, version = "0.97"): BagShape => listing(version, GOOD + line(path, "x"));
const fetched = (path: string, version = "0.97"): BagShape =>
  of(version, { ...A, "fetch.txt": `https://example.org/x - ${path}\n` });
const utf16 = (text: string): Buffer =>
  Buffer.concat([Buffer.from([0xfe, 0xff]), Buffer.from(text, "utf16le").swap16()]);
const REPEATED = "Bagging-Date: 2021-03-09\nBagging-Date: 2021-03-10\ncontact-name: A\nContact-Name: B\n";

const valid = (version: string): { readonly [name: string]: BagShape } => ({
  [`${version}/valid/basic-bag`]: of(version.slice(1), { ...A, "bag-info.txt": INFO }),
  [`${version}/valid/duplicate-metadata-entries`]: of(version.slice(1), { ...A, "bag-info.txt": REPEATED }),
});

const odd = (version: string): { readonly [name: string]: BagShape } => {
  const number = version.slice(1);
  return {
    [`${version}/valid/bag-in-a-bag`]: of(number, {
      "data/inner/bagit.txt": declared("0.97"),
      "data/inner/data/a.txt": "a",
      "data/inner/manifest-sha256.txt": line("data/a.txt", "a"),
    }),
    [`${version}/valid/bag-with-encoded-names`]: of(number, { "data/%7Ea.txt": "a", "data/%b.txt": "b" }),
    [`${version}/valid/bag-with-escapable-characters`]: of(number, { "data/it's & (one) $more.txt": "a" }),
    [`${version}/valid/bag-with-leading-dot-slash-in-manifest`]: listing(number, GOOD.replaceAll("data/", "./data/")),
    [`${version}/valid/bag-with-space`]: of(number, { "data/a b/c d.txt": "a" }),
    [`${version}/valid/holey-bag`]: of(number, { ...A, "fetch.txt": "https://example.org/a 1 data/a.txt\n" }),
  };
};

const unsafe: { readonly [folder: string]: { readonly [name: string]: string } } = {
  "v0.97/invalid": { "using-dot-notation": "../../../README.md" },
  "v0.97/linux-only": {
    "using-absolute-path": "/tmp/foo",
    "using-shortcut": "~/foo",
    "using-shortcut-username": "~root/foo",
  },
  "v0.97/windows-only": {
    "using-absolute-path": "C:\\Windows\\x.exe",
    "using-shortcut": "%HomeDrive%\\x.exe",
    "using-unc": "\\\\?\\UNC\\server\\x.exe",
  },
};

/** Shapes by the suite's folder and the case's name. */
export const CASES: { readonly [path: string]: BagShape } = {
  ...valid("v0.93"),
  ...valid("v0.94"),
  ...valid("v0.95"),
  ...valid("v0.96"),
  ...odd("v0.96"),
  ...valid("v0.97"),
  ...odd("v0.97"),
  "v0.97/valid/ISO-8859-1-encoded-tag-files": of(
    "0.97",
    { ...A, "bag-info.txt": Buffer.from("Contact-Name: Ren\u00e9\n", "latin1") },
    { declaration: declared("0.97", "ISO-8859-1") },
  ),
  "v0.97/valid/UTF-16-encoded-tag-files": of(
    "0.97",
    { ...A, "bag-info.txt": utf16(INFO), "manifest-sha256.txt": utf16(GOOD) },
    { declaration: declared("0.97", "UTF-16"), tagAlgorithms: [] },
  ),
  "v0.97/valid/minimal-bag": of("0.97", { "data/a.txt": "" }, { tagAlgorithms: [] }),
  "v0.97/valid/uncommon-metadata-separators": of("0.97", { ...A, "bag-info.txt": "One:1\nTwo :  2\nThree\t:\t3\n" }),
  "v0.97/invalid/baginfo-missing-encoding": of("0.97", A, { declaration: "BagIt-Version: 0.97\n" }),
  "v0.97/invalid/bom-in-bagit.txt": of("0.97", A, { declaration: `\ufeff${declared("0.97")}` }),
  "v0.97/invalid/corrupt-data-file": listing("0.97", GOOD.replace(hex("sha256", "a"), hex("sha256", "c"))),
  "v0.97/invalid/corrupt-tag-file": of("0.97", {
    ...A,
    "tagmanifest-sha256.txt": line("bagit.txt", "other") + line("manifest-sha256.txt", GOOD),
  }),
  "v0.97/invalid/extra-file-in-bag": listing("0.97", GOOD, { ...A, "data/more.txt": "m" }),
  "v0.97/invalid/invalid-version-number": of("0.97", A, { declaration: declared(".97") }),
  "v0.97/invalid/missing-baginfo": of("0.97", {
    ...A,
    "tagmanifest-sha256.txt":
      line("bagit.txt", declared("0.97")) + line("manifest-sha256.txt", GOOD) + line("bag-info.txt", INFO),
  }),
  "v0.97/invalid/missing-bagit.txt": of("0.97", A, { declaration: "-" }),
  "v0.97/invalid/same-filename-listed-twice-with-different-hashes": listing("0.97", GOOD + line("data/a.txt", "z")),
  ...Object.fromEntries(
    Object.entries(unsafe).flatMap(([folder, paths]) =>
      Object.entries(paths).flatMap(([name, path]) => [
        [`${folder}/out-of-scope-file-paths-${name}`, named(path)] as const,
        [`${folder}/out-of-scope-file-paths-${name}-for-fetch`, fetched(path)] as const,
      ]),
    ),
  ),
  "v0.97/warning/duplicate-file-with-different-case": named("data/A.TXT"),
  "v0.97/warning/made-with-md5sum-tools": of(
    "0.97",
    { "data/a.txt": "a", "manifest-md5.txt": `${hex("md5", "a")} *data/a.txt\n` },
    { algorithms: ["md5"] },
  ),
  "v0.97/warning/relative-path": listing("0.97", GOOD.replaceAll("data/", "./data/")),
  "v0.97/warning/same-filename-listed-twice-with-different-normalization": listing(
    "0.97",
    line("data/N\u00fa\u00f1ez", "") + line("data/Nu\u0301n\u0303ez", ""),
    { "data/N\u00fa\u00f1ez": "" },
  ),
  "v0.97/warning/same-filename-listed-twice-with-the-same-hash": listing("0.97", GOOD + line("data/a.txt", "a")),
  "v0.97/warning/special-system-files": named("data/.DS_Store"),
  "v1.0/valid/basicBag": of("1.0"),
  "v1.0/invalid/bagit-with-invalid-whitespace": of("1.0", A, {
    declaration: "BagIt-Version : 1.0\nTag-File-Character-Encoding : UTF-8\n",
  }),
  "v1.0/invalid/notAllManifestsListAllFiles": of(
    "1.0",
    { ...A, "manifest-md5.txt": line("data/a.txt", "a", "md5") },
    { algorithms: ["sha256", "md5"] },
  ),
  "v1.0/invalid/same-filename-listed-twice-with-different-hashes": listing("1.0", GOOD + line("data/a.txt", "z")),
  "v1.0/invalid/same-filename-listed-twice-with-the-same-hash": listing("1.0", GOOD + line("data/a.txt", "a")),
};
