/** The parts of css-tree that are used here, each by itself: its usual entry brings tables of all properties, which nothing here asks. */
declare module "css-tree/parser" {
  import { parse } from "css-tree";
  export default parse;
}

declare module "css-tree/walker" {
  import { walk } from "css-tree";
  export default walk;
}

declare module "css-tree/generator" {
  import { generate } from "css-tree";
  export default generate;
}
