/** The page at the bench as a whole document: all that it runs, shows and knows stands within it, so that one file is enough. */
import { hashOf } from "../shell/policy.ts";

interface BenchParts {
  readonly script: string;
  readonly style: string;
  /** JSON, and what it is named by in what the page keeps. */
  readonly data: string;
  readonly digest: string;
}

export function benchPage({ script, style, data, digest }: BenchParts): string {
  const rules = [
    "default-src 'none'",
    `script-src ${hashOf(script)}`,
    `style-src ${hashOf(style)}`,
    "img-src 'self' data: blob:",
    "manifest-src 'self'",
    "worker-src 'self'",
    "connect-src 'self'",
    "base-uri 'none'",
    "form-action 'none'",
  ];
  return `<!doctype html>
<html lang="en">
<head>
<meta charset="utf-8"/>
<meta http-equiv="Content-Security-Policy" content="${rules.join("; ")}"/>
<meta name="viewport" content="width=device-width, initial-scale=1"/>
<meta name="robots" content="noindex, nofollow"/>
<meta name="referrer" content="no-referrer"/>
<meta name="color-scheme" content="light dark"/>
<title>Bench</title>
<link rel="icon" href="icon.svg"/>
<style>${style}</style>
</head>
<body>
<div id="bench"><p>This page needs its script: it keeps what is tapped on this phone.</p></div>
<script type="application/json" id="record" data-digest="${digest}">${data.replaceAll("<", "\\u003c")}</script>
<script>${script}</script>
</body>
</html>
`;
}

/** For a phone that puts the page among its programs. */
export const BENCH_MANIFEST = `${JSON.stringify(
  {
    name: "Bench",
    short_name: "Bench",
    start_url: "./",
    scope: "./",
    display: "standalone",
    background_color: "#fbf8f0",
    theme_color: "#1f4d3a",
    icons: [{ src: "icon.svg", sizes: "any", type: "image/svg+xml" }],
  },
  undefined,
  1,
)}\n`;
