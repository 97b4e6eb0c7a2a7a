/** Schemas of JSON Feed; the package has no types of its own. */
declare module "jsonfeed-schema/v1.1.js" {
  const schema: object;
  export default schema;
}
