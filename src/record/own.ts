/** Files beside the facts of a record that say how its site is to look: they are read by no rule and prove nothing. */

import { existsSync } from "node:fs";
import { join } from "node:path";

/** The sheet of one's own. */
export const OWN_SHEET = "style.css";
const OWN_FOLDERS = ["pages/", "layouts/"] as const;

export const isOwn = (file: string): boolean =>
  file === OWN_SHEET || OWN_FOLDERS.some((folder) => file.startsWith(folder));

/** Whether a record's folder has anything of the kind. */
export const hasOwn = (content: string): boolean =>
  [OWN_SHEET, ...OWN_FOLDERS].some((name) => existsSync(join(content, name)));

/** Stands in a record that was brought back from a bag with code of its own, for as long as nobody has said to trust it. */
export const NOT_RUN = ".own-not-run";

/** Whether code in a record's folder may be that of somebody unknown: it was brought back from a bag, or lies in one. */
export const cameInBag = (content: string): boolean =>
  hasOwn(content) && (existsSync(join(content, NOT_RUN)) || existsSync(join(content, "../../bagit.txt")));

/** Whether such a file is code, or a template, and not a text from which the same comes each time: either may ask for the hour. */
export const isOwnCode = (file: string, text: string): boolean =>
  isOwn(file) && (/\.[cm]?[jt]sx?$/i.test(file) || /\{[{%]|^\uFEFF?---[^\S\n]*\S/.test(text));
