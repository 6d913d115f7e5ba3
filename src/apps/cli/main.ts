import { Command, CommanderError } from 'commander';
import { isArcError, TOOL_NAME, TOOL_VERSION } from '../../core/index.js';
import { MAIN_EXAMPLES } from '../terminal/examples.js';
import { sayError } from '../terminal/failure.js';
import { guardPipes } from '../terminal/output.js';
import { listCommands } from './overview.js';

type Register = (program: Command) => void;

/**
 * Every command once. Each is loaded only when it is named, so that a heavy one costs the others no start-up time. A new
 * command is one file in `commands/`, one line here and one in `overview.ts`.
 */
const COMMANDS: Record<string, () => Promise<Register>> = {
  classify: async () => (await import('./commands/classify.js')).registerClassify,
  compare: async () => (await import('./commands/compare.js')).registerCompare,
  evaluate: async () => (await import('./commands/evaluate.js')).registerEvaluate,
  expect: async () => (await import('./commands/expect.js')).registerExpect,
  inspect: async () => (await import('./commands/inspect.js')).registerInspect,
  label: async () => (await import('./commands/label.js')).registerLabel,
  fit: async () => (await import('./commands/fit.js')).registerFit,
  page: async () => (await import('./commands/page.js')).registerPage,
  report: async () => (await import('./commands/report.js')).registerReport,
  schema: async () => (await import('./commands/schema.js')).registerSchema,
  serve: async () => (await import('./commands/serve.js')).registerServe,
  simulate: async () => (await import('./commands/simulate.js')).registerSimulate,
  sweep: async () => (await import('./commands/sweep.js')).registerSweep,
  watch: async () => (await import('./commands/watch.js')).registerWatch,
  work: async () => (await import('./commands/work.js')).registerWork,
  help: async () => (await import('./commands/help.js')).registerHelp,
};

/**
 * Runs the command line. `argv` as in `process.argv`. Sets `process.exitCode`:
 * 0 all inputs handled, 1 some inputs failed or `--fail-on` was met, 2 wrong use. Never exits by force.
 */
export async function main(argv: readonly string[]): Promise<void> {
  guardPipes();
  const program = await createProgram(argv[2]);
  try {
    await program.parseAsync([...argv]);
  } catch (error) {
    settle(error);
  }
}

/** `overview` false loads every command even where only their list is wanted. */
export async function createProgram(named: string | undefined, overview = true): Promise<Command> {
  const program = new Command(TOOL_NAME)
    .description(
      'Says how the metal crosses a gas metal arc (short-circuit, globular,\nspray or pulsed spray) from a sound recording or a voltage and current trace.',
    )
    .version(TOOL_VERSION)
    .usage('<command> [options]')
    .exitOverride()
    // `help` is a command of its own that knows topics too.
    .helpCommand(false)
    .configureHelp({ showGlobalOptions: false })
    .showHelpAfterError(`(${TOOL_NAME} <command> --help shows the options)`)
    .addHelpText('before', MAIN_EXAMPLES);
  const single = named === undefined || named === 'help' ? undefined : COMMANDS[named];
  if (!single && named !== 'help' && overview) {
    listCommands(program);
    return program;
  }
  const loaders = single ? [single] : Object.values(COMMANDS);
  for (const register of await Promise.all(loaders.map((load) => load()))) register(program);
  return program;
}

/** An error that leaves an action is wrong use; a failed input is reported by the action itself. */
function settle(error: unknown): void {
  if (error instanceof CommanderError) {
    process.exitCode = error.exitCode === 0 ? 0 : 2;
    return;
  }
  sayError(error);
  process.exitCode = isArcError(error) ? 2 : 1;
}
