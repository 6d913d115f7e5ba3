// Puts the topics of the built-in help into dist/help, each under its name, with their list.
import { copyFileSync, mkdirSync, readFileSync, rmSync } from 'node:fs';

const LIST = 'src/apps/cli/help/topics.json';

rmSync('dist/help', { recursive: true, force: true });
mkdirSync('dist/help', { recursive: true });
copyFileSync(LIST, 'dist/help/topics.json');
for (const { name, file } of JSON.parse(readFileSync(LIST, 'utf8')))
  copyFileSync(file, `dist/help/${name}.md`);
