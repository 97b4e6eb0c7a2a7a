import { relative, sep } from "node:path";
import chokidar from "@11ty/chokidar-with-glob-support";

/** Editors save in several strokes; a pause this long ends one saving. */
const PAUSE_MS = 60;

export interface Watch {
  readonly close: () => Promise<void>;
}

/**
 * Calls `changed` after each saving in a folder. Hidden files, such as those an editor keeps beside the one it edits,
 * do not count.
 */
export async function watchFolder(folder: string, changed: () => void): Promise<Watch> {
  let timer: NodeJS.Timeout | undefined;
  const isHidden = (path: string): boolean =>
    relative(folder, path)
      .split(sep)
      .some((part) => /^\.[^.]/.test(part) || part.endsWith("~"));
  const watcher = chokidar.watch(folder, { ignoreInitial: true, disableGlobbing: true, ignored: isHidden });
  watcher.on("all", () => {
    clearTimeout(timer);
    timer = setTimeout(changed, PAUSE_MS);
  });
  await new Promise<void>((ready) => watcher.on("ready", ready));
  return {
    close: async () => {
      clearTimeout(timer);
      await watcher.close();
    },
  };
}

/** Runs `work` now and once more after each call during which it was already running; never twice at a time. */
export function oneAtATime(work: () => Promise<void>): () => Promise<void> {
  let running: Promise<void> | undefined;
  let again = false;
  const loop = async (): Promise<void> => {
    do {
      again = false;
      await work();
    } while (again);
    running = undefined;
  };
  return () => {
    again = running !== undefined;
    running ??= loop();
    return running;
  };
}
