import { mkdir, mkdtemp, realpath, rm } from "node:fs/promises";
import { join, resolve } from "node:path";
import { build, type BuildRequest, type Built, type Teller } from "../build.ts";
import type { Trouble } from "./overlay.ts";
import { type PreviewServer, servePreview } from "./server.ts";
import { oneAtATime, watchFolder } from "./watch.ts";

export interface PreviewRequest extends Omit<BuildRequest, "out" | "apart"> {
  readonly port: number;
}

export interface PreviewTeller extends Teller {
  /** The server is up; the first build comes after. */
  readonly serving: (url: string) => void;
  readonly built: (built: Built | Error, milliseconds: number) => void;
  readonly error: (text: string) => void;
}

export interface Preview {
  readonly url: string;
  readonly close: () => Promise<void>;
}

/** Serves a record's site, builds it anew after each change of the record, and keeps serving the last good one while there are problems. */
export async function startPreview(request: PreviewRequest, tell: PreviewTeller): Promise<Preview> {
  await mkdir(request.cache, { recursive: true });
  const folder = await mkdtemp(join(resolve(request.cache), "preview-"));
  const out = join(folder, "site");
  const server = await servePreview(out, request.port, tell.error);
  tell.serving(server.url);
  const renew = oneAtATime(() => renewOnce({ ...request, out, apart: false }, server, tell));
  const watch = await watchFolder(await realpath(request.content), () => void renew());
  await renew();
  return {
    url: server.url,
    close: async () => {
      await watch.close();
      await server.close();
      await rm(folder, { recursive: true });
    },
  };
}

async function renewOnce(request: BuildRequest, server: PreviewServer, tell: PreviewTeller): Promise<void> {
  const began = performance.now();
  const built = await build(request, tell).catch((error: unknown) => (error instanceof Error ? error : new Error(String(error))));
  tell.built(built, performance.now() - began);
  server.show(troubleOf(built));
}

function troubleOf(built: Built | Error): Trouble | undefined {
  if (built instanceof Error) return { problems: [], failure: built.stack ?? built.message };
  return "problems" in built ? { problems: built.problems } : undefined;
}
