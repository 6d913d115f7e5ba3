// The work command as a process of its own, with the invented engine. Takes its options as JSON.
import './end-with-parent.mjs';
import { workCommand } from '../../dist/apps/label/queue/work.js';
import { sayError } from '../../dist/apps/terminal/failure.js';

try {
  const engineUrl = new URL('./label-engine.mjs', import.meta.url).href;
  await workCommand(JSON.parse(process.argv[2]), engineUrl);
} catch (error) {
  sayError(error);
  process.exitCode = 2;
}
