import { RULES_VERSION } from "../../evidence/version.ts";
import { BAG_FORM } from "../form.ts";
import { manifestLine } from "../manifest.ts";

export const MANIFEST_ALGORITHMS = ["sha256", "sha512"] as const;

export interface BagInfo {
  readonly aircraft: string;
  /** The date of the record. */
  readonly day: string;
  readonly baggingDate: string;
  readonly version: string;
  /** By what its PDFs were set, if it has any. */
  readonly maker: string | undefined;
  /** Name of the bag, or of the group that it is a part of. */
  readonly group: string;
  readonly part: number;
  readonly of: number;
  readonly bytes: number;
  readonly files: number;
}

/** Labels of our own, as RFC 8493 2.2.2 allows them: versions of what the bag holds. Without them it is of the first. */
export const FORM_LABEL = "Scarfline-Form-Version";
export const RULES_LABEL = "Scarfline-Rules-Version";
/** By what the PDFs in it were set: another version may set them otherwise. A bag without PDFs has no such line. */
const MAKER_LABEL = "Scarfline-Paper-Maker";

export const DECLARATION = "BagIt-Version: 1.0\nTag-File-Character-Encoding: UTF-8\n";

/** Nothing in it tells of the time or the machine, so that the same record gives the same bag on any day. */
export function infoText(info: BagInfo): string {
  const parted = info.of > 1;
  const fields: readonly (readonly [string, string])[] = [
    ["External-Description", `Record of the building of ${info.aircraft}, up to ${info.day}`],
    ["Internal-Sender-Description", "Begin with README.txt: it says what is here, how to read it and how to check it"],
    ["External-Identifier", info.group],
    ["Bagging-Date", info.baggingDate],
    ["Payload-Oxum", `${info.bytes}.${info.files}`],
    ...(parted
      ? ([
          ["Bag-Group-Identifier", info.group],
          ["Bag-Count", `${info.part} of ${info.of}`],
        ] as const)
      : []),
    ["Bag-Software-Agent", `Scarfline ${info.version}`],
    [FORM_LABEL, String(BAG_FORM)],
    [RULES_LABEL, String(RULES_VERSION)],
    ...(info.maker === undefined ? [] : ([[MAKER_LABEL, info.maker]] as const)),
  ];
  return fields.map(([label, value]) => `${label}: ${value.replaceAll(/\s+/g, " ")}\n`).join("");
}

/** Digests by path, as lines sorted by path. */
export function manifestText(digests: ReadonlyMap<string, ReadonlyMap<string, string>>, algorithm: string): string {
  const paths = [...digests.keys()].sort();
  return paths.map((path) => manifestLine(digests.get(path)?.get(algorithm) ?? "", path)).join("");
}
