/**
 * What makes a path unsafe to follow on some system, as the end of a sentence that begins with the path; undefined for a safe one.
 * A safe path has `/` between its parts and stays below the folder it starts in, whatever the system.
 */
export function pathFault(path: string): string | undefined {
  if (path === "") return "is empty";
  if (path.includes("\0")) return "holds a zero byte";
  if (path.startsWith("/")) return "begins at the root of the disk";
  if (/^[A-Za-z]:/.test(path)) return "names a drive";
  if (path.startsWith("~")) return "begins in someone's home folder";
  if (path.includes("\\")) return "holds a backslash, which some systems take for the end of a folder's name";
  const parts = path.split("/");
  if (parts.includes("..")) return "leads out of its folder with `..`";
  if (parts.includes(".") || parts.includes("")) return "is not written in its shortest form";
  return undefined;
}

/** Equal for names that some disk takes for one: those that differ in their Unicode form or in capital letters. */
export function foldedPath(path: string): string {
  return path.normalize("NFC").toUpperCase().toLowerCase().normalize("NFC");
}

/** How two paths with the same folded form differ. */
export function differenceOf(one: string, other: string): string {
  return one.normalize("NFC") === other.normalize("NFC")
    ? "differ only in the form of their Unicode letters"
    : "differ only in capital letters";
}

/** What keeps a name from being written in a manifest that every tool reads alike; undefined where nothing does. */
export function nameFault(path: string): string | undefined {
  if (/[\n\r]/.test(path)) return "a line break";
  if (path.includes("\\")) return "a backslash";
  if (path.includes("%")) return "a percent sign";
  if (/\p{Cc}/u.test(path)) return "a control character";
  return /[\p{Cs}\ufffd]/u.test(path) ? "letters that are not UTF-8" : undefined;
}
