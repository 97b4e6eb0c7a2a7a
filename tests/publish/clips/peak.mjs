/** Copies one clip to another and tells the most memory that took, in megabytes. */
import { copyBare } from "../../../src/publish/clips/copy.ts";

await copyBare(process.argv[2], process.argv[3], "mp4");
process.stdout.write(String(process.resourceUsage().maxRSS / 1024));
