/** Writes a good record with so many entries; the same number gives the same record. */
export function writeRecord(folder: string, entryCount: number, has?: { readonly thermometers?: boolean }): string[];
