import { type Look, wrap } from '../../view/index.js';

/**
 * A Markdown text for a terminal: headings, paragraphs, lists, quotes, tables and blocks of code, wrapped to
 * the width. Only what the help topics use; comments and links' addresses are left out.
 */
export function printMarkdown(text: string, { width, paint }: Look): string {
  const out: string[] = [];
  for (const block of blocksOf(text)) {
    if (out.length > 0) out.push('');
    const [first = ''] = block;
    if (first.startsWith('```')) out.push(...block.slice(1, -1).map((line) => `    ${line}`));
    else if (first.startsWith('#')) out.push(paint.bold(plain(first.replace(/^#+\s*/, ''))));
    else if (first.startsWith('|')) out.push(...table(block, width, paint.bold));
    else if (first.startsWith('- '))
      out.push(...block.flatMap((line) => wrap(plain(line), width, 0, 2)));
    else if (first.startsWith('> '))
      out.push(...wrap(plain(block.join(' ').replaceAll('> ', '')), width, 2));
    else out.push(...wrap(plain(block.join(' ')), width));
  }
  return `${out.join('\n')}\n`;
}

/** Lines that belong together: a block of code whole, the rest parted by empty lines. */
function blocksOf(text: string): string[][] {
  const blocks: string[][] = [];
  let block: string[] = [];
  let code = false;
  const end = (): void => {
    if (block.length > 0) blocks.push(block);
    block = [];
  };
  for (const line of text.replace(/<!--[\s\S]*?-->/g, '').split('\n')) {
    if (line.startsWith('```')) {
      if (!code) end();
      block.push(line);
      if (code) end();
      code = !code;
    } else if (code) block.push(line);
    else if (line.trim() === '') end();
    else if (line.startsWith('#')) {
      end();
      block.push(line);
      end();
    } else block.push(line);
  }
  end();
  return blocks;
}

/** Side by side where the table fits the width, else an entry a paragraph with the heads as names. */
function table(lines: readonly string[], width: number, bold: (text: string) => string): string[] {
  const [head = [], , ...rows] = lines.map(cellsOf);
  const widths = head.map((_, k) => Math.max(...[head, ...rows].map((row) => row[k]?.length ?? 0)));
  const total = widths.reduce((sum, one) => sum + one + 2, 0);
  if (total <= width) {
    const line = (row: readonly string[]): string =>
      row
        .map((cell, k) => cell.padEnd(widths[k]! + 2))
        .join('')
        .trimEnd();
    return [bold(line(head)), ...rows.map(line)];
  }
  return rows.flatMap((row) => [
    bold(row[0] ?? ''),
    ...row
      .slice(1)
      .flatMap((cell, k) => (cell === '' ? [] : wrap(`${head[k + 1]}: ${cell}`, width, 4, 2))),
  ]);
}

function cellsOf(line: string): string[] {
  return line
    .slice(1, line.lastIndexOf('|'))
    .split(/(?<!\\)\|/)
    .map((cell) => plain(cell.trim().replaceAll('\\|', '|')));
}

/** Without marks of emphasis and code; of links the words. */
function plain(text: string): string {
  return text
    .replace(/\[([^\]]+)\]\([^)]*\)/g, '$1')
    .replaceAll('**', '')
    .replaceAll('`', '')
    .replace(/(^|\s)\*([^*]+)\*/g, '$1$2');
}
