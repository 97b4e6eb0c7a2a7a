/**
 * The sign in a browser's tab, within the page itself so that no page asks for another file: two pieces of wood and
 * the glue line.
 */
export const ICON =
  "data:image/svg+xml,<svg xmlns='http://www.w3.org/2000/svg' viewBox='0 0 20 20'><path fill='%2384243a' d='M1 3h18v6H1zM1 11h18v6H1z'/></svg>";
