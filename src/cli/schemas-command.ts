import { writeFileSync } from "node:fs";
import { join } from "node:path";
import { madeFolder } from "../publish/output/made.ts";
import { jsonSchemas } from "../record/schema-files.ts";
import { recordFolder } from "./record-folder.ts";
import { EXIT, type Surroundings } from "./surroundings.ts";

/** Throws OutputRefused where the folder cannot be made. */
export async function schemasCommand(
  { out: typed }: { readonly out?: string },
  surroundings: Surroundings,
): Promise<number> {
  const out = typed ?? join(recordFolder({}, surroundings), "schemas");
  madeFolder(out);
  for (const [name, schema] of jsonSchemas()) {
    const file = join(out, name);
    writeFileSync(file, `${JSON.stringify(schema, undefined, 2)}\n`);
    surroundings.out(`Wrote ${file}.\n`);
  }
  return EXIT.fine;
}
