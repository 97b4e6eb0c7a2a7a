/** The plugin as it is imported: `import scarfline from "scarfline/eleventy"`. */
import { fileURLToPath } from "node:url";
import { addChronicle } from "./chronicle.ts";
import type { ScarflinePlugin } from "./options.ts";

const scarfline: ScarflinePlugin = (config, options) =>
  addChronicle(config, options, fileURLToPath(new URL("..", import.meta.url)));

export default scarfline;
