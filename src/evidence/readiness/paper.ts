/** Whether what is given as the paper of an acceptance is one: a word that was passed on has no paper. */

const NOTHING =
  /^(?:none|no|nil|nothing|not any|not yet|n\.?\s*\/?\s*a\.?|unknown|lost|pending|later|to (?:follow|come)|t\.?b\.?[acd]\.?|[\p{P}\p{S}\s]*)$/iu;
const SPOKEN =
  /\b(?:tele)?phon\w*|\bcall(?:ed|s)?\b|\bverbal(?:ly)?\b|\boral(?:ly)?\b|\bword of mouth\b|\bin person\b|\b(?:told|said|says|spoke|spoken|talk(?:ed)?|heard|chat|conversation|handshake|nod(?:ded)?)\b/iu;
const WRITTEN =
  /letter|mail|form\b|paper|note|memo|minute|drawing|sheet|document|report|fax|signed|scan|log\b|logbook|certificate|message/iu;

/** Words of speech beside those of something written are of a paper that tells of both. */
export function isPaper(reference: string | undefined): boolean {
  if (reference === undefined) return false;
  const words = reference.trim().replace(/[\s.!,;:]+$/u, "");
  return !NOTHING.test(words) && (!SPOKEN.test(words) || WRITTEN.test(words));
}
