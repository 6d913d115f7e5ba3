/** `03-weld`: the number keeps equal names apart, and only plain characters of the name stay. */
export function numberedName(number: number, digits: number, name: string): string {
  const plain = name
    .replaceAll(/[^A-Za-z0-9._-]+/g, '-')
    .replace(/^[.-]+/, '')
    .slice(0, 60);
  return `${String(number).padStart(digits, '0')}-${plain || 'run'}`;
}
