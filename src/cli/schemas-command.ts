import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { madeFolder } from "../publish/output/made.ts";
import { jsonSchemas } from "../record/schema-files.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";

/** Throws OutputRefused where the folder cannot be made. */
export async function schemasCommand({ out }: { readonly out: string }, surroundings: Surroundings): Promise<number> {
  madeFolder(out);
  for (const [name, schema] of jsonSchemas()) {
    const file = join(out, name);
    writeFileSync(file, `${JSON.stringify(schema, undefined, 2)}\n`);
    surroundings.out(`Wrote ${file}.\n`);
  }
  return EXIT.fine;
}
