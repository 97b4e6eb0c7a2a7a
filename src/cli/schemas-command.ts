import { mkdirSync, writeFileSync } from "node:fs";
import { join } from "node:path";
import { jsonSchemas } from "../record/schema-files.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";

export async function schemasCommand({ out }: { readonly out: string }, surroundings: Surroundings): Promise<number> {
  mkdirSync(out, { recursive: true });
  for (const [name, schema] of jsonSchemas()) {
    const file = join(out, name);
    writeFileSync(file, `${JSON.stringify(schema, undefined, 2)}\n`);
    surroundings.out(`Wrote ${file}.\n`);
  }
  return EXIT.fine;
}
