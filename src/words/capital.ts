/** With a capital letter, as a sentence or a line begins. */
export const capital = (words: string): string => words.slice(0, 1).toUpperCase() + words.slice(1);
