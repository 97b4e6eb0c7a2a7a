/** Where the public edition stands on the web, as its readers type it. */
import { onlyYouKnow, type Reading, shown } from "./reading.ts";

/** With a stroke at its end, so that paths of the site follow it. */
export function readWebAddress(typed: string): Reading<string> {
  const url = URL.canParse(typed.trim()) ? new URL(typed.trim()) : undefined;
  const isPlain = url && url.search === "" && url.hash === "" && url.username === "" && url.password === "";
  if (isPlain && ["https:", "http:"].includes(url.protocol))
    return { value: url.href.endsWith("/") ? url.href : `${url.href}/` };
  return {
    fault: {
      code: "no-address",
      message: url === undefined ? "this is not an address on the web" : "a site cannot stand at this address",
      expected: "the address of the folder that holds the first page, such as https://example.org/heron/",
      found: shown(typed),
      ...onlyYouKnow("give it whole, with https:// and without a name, a question mark or a # in it"),
    },
  };
}
