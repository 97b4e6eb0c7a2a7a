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

/** Whether such a file is code, or a template, and not a text from which the same comes each time: either may ask for the hour. */
export const isOwnCode = (file: string, text: string): boolean =>
  isOwn(file) && (/\.[cm]?[jt]sx?$/i.test(file) || /\{[{%]|^\uFEFF?---[^\S\n]*\S/.test(text));
