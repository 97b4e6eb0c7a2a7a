/** Where the sign in a browser's tab lies in a site. */
export const ICON_FILE = "assets/icon.svg";

/** The sign itself: two pieces of wood and the glue line. */
export const ICON = `<svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 20 20"><path fill="#84243a" d="M1 3h18v6H1zM1 11h18v6H1z"/></svg>\n`;
