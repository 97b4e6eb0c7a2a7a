/** Lines of a file and of a function, and files of a folder, of the product; DEVELOPERS.md says the same. */
export const MOST = { file: 250, function: 50, folder: 20 } as const;
