import { createServer } from "node:net";
import type { AddressInfo } from "node:net";
import lighthouse, { desktopConfig } from "lighthouse";
import { openBrowser } from "./browsers.ts";

export type Form = "mobile" | "desktop";

/** What Lighthouse found of one page. `scores` run from 0 to 100; `failed` names what was asked of the page and is not so. */
interface Findings {
  readonly scores: ReadonlyMap<string, number>;
  readonly shift: number;
  /** When the largest thing in view was painted, ms; where speed is asked for. */
  readonly largestPaint?: number;
  readonly requests: readonly { readonly url: string; readonly type: string; readonly bytes: number }[];
  readonly failed: readonly string[];
  readonly warnings: readonly string[];
}

export interface Lighthouse {
  readonly look: (url: string, form: Form, categories: readonly string[]) => Promise<Findings>;
  readonly close: () => Promise<void>;
}

/** A browser with Lighthouse at hand. Throttling is simulated, Lighthouse's own default: how fast this machine is has little part in a score. */
export async function openLighthouse(): Promise<Lighthouse> {
  const port = await freePort();
  const browser = await openBrowser([`--remote-debugging-port=${port}`]);
  return { look: (url, form, categories) => look(url, form, categories, port), close: () => browser.close() };
}

/** Lighthouse fetches robots.txt from within the page, which the page's policy forbids it as it does everyone. */
const FORBIDDEN = ["robots-txt"];
/** Layout shift and requests are among what every category needs, but only these two name them. */
const ALWAYS = ["cumulative-layout-shift", "network-requests"];

async function look(url: string, form: Form, categories: readonly string[], port: number): Promise<Findings> {
  const result = await lighthouse(
    url,
    { port, logLevel: "error", output: "json" },
    {
      ...(form === "desktop" ? desktopConfig : { extends: "lighthouse:default" }),
      settings: {
        ...(form === "desktop" ? desktopConfig.settings : {}),
        onlyCategories: [...categories],
        onlyAudits: ALWAYS,
        skipAudits: FORBIDDEN,
        disableFullPageScreenshot: true,
      },
    },
  );
  if (result === undefined) throw new Error(`Lighthouse said nothing of ${url}`);
  const { audits, categories: judged, runWarnings, runtimeError } = result.lhr;
  if (runtimeError !== undefined) throw new Error(`Lighthouse could not look at ${url}: ${runtimeError.message}`);
  const details = audits["network-requests"]?.details;
  const items = details?.type === "table" ? details.items : [];
  return {
    scores: new Map(categories.map((id) => [id, Math.round((judged[id]?.score ?? 0) * 100)])),
    shift: audits["cumulative-layout-shift"]?.numericValue ?? Number.NaN,
    ...(categories.includes("performance") && {
      largestPaint: audits["largest-contentful-paint"]?.numericValue ?? Number.NaN,
    }),
    requests: items.map((item) => ({
      url: String(item["url"]),
      type: String(item["resourceType"]),
      bytes: Number(item["transferSize"]),
    })),
    failed: Object.values(audits)
      .filter(({ score, scoreDisplayMode }) => scoreDisplayMode === "binary" && score !== null && score < 1)
      .map(({ title }) => title),
    warnings: runWarnings,
  };
}

function freePort(): Promise<number> {
  return new Promise((found) => {
    const server = createServer().listen(0, "127.0.0.1", () => {
      const { port } = server.address() as AddressInfo;
      server.close(() => found(port));
    });
  });
}
