/** The beginning of a name that is at most `bytes` long in UTF-8, cut between two characters. */
export function shortName(name: string, bytes: number): string {
  let length = 0;
  let short = '';
  for (const letter of name) {
    length += Buffer.byteLength(letter);
    if (length > bytes) return short;
    short += letter;
  }
  return name;
}
