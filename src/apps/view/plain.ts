/** Text from outside made safe for a terminal: control characters (escape codes, line ends) shown as `\x1b`. */
export function plain(text: string): string {
  return text.replace(/[\p{Cc}\p{Bidi_Control}]/gu, (character) => {
    const code = character.charCodeAt(0);
    return code < 256 ? `\\x${code.toString(16).padStart(2, '0')}` : `\\u${code.toString(16)}`;
  });
}
