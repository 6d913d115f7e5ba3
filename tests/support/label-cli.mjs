// The label command as a process of its own, with the invented engine. Takes inputs and options as JSON.
// With LABEL_INLINE set the work is done without threads, which start much more slowly than it lasts.
import './end-with-parent.mjs';
import { labelCommand } from '../../dist/apps/label/command.js';
import { labelOne } from '../../dist/apps/label/label-one.js';
import { sayError } from '../../dist/apps/terminal/failure.js';
import { guardPipes } from '../../dist/apps/terminal/output.js';
import { ENGINE } from './label-engine.mjs';

guardPipes();
const { inputs, options } = JSON.parse(process.argv[2]);
const inline = async (plan) => ({
  parallel: 4,
  run: (task) => labelOne(task, plan, ENGINE),
  close: async () => {},
});
try {
  await labelCommand(inputs, options, {
    engineUrl: new URL('./label-engine.mjs', import.meta.url).href,
    ...(process.env.LABEL_INLINE ? { makeRunner: inline } : {}),
  });
} catch (error) {
  sayError(error);
  process.exitCode = 2;
}
