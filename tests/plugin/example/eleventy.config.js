import scarfline from "scarfline/eleventy";

/** A site of one's own, of which the chronicle of the build is a part. */
export default function site(config) {
  config.addPlugin(scarfline, { record: "record", at: "chronicle", date: "2021-04-01" });
  return { dir: { input: "pages", output: "_site" } };
}
