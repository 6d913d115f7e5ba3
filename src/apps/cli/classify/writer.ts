import type { Result } from '../../../analysis/result/index.js';
import type { Sink } from '../../terminal/sink.js';
import {
  type CsvFlavour,
  cautionLines,
  csvHeader,
  csvRow,
  type EventRates,
  jsonText,
  type LocalizedText,
  type Look,
  terminalText,
  viewCautions,
  type Words,
} from '../../view/index.js';

/** What is written: text for people, JSON, or a table. */
export type OutputFormat = 'text' | 'json' | CsvFlavour;

/** Turns results into what is written, in the order they come. */
export interface Writer {
  begin(): Promise<void>;
  result(result: Result): Promise<void>;
  end(): Promise<void>;
}

export interface TextOptions {
  look: Look;
  several: boolean;
  /** JSON for a person; else one document a line. */
  indented?: boolean;
  explain: boolean;
  words: Words;
  ratesOf?: (result: Result) => EventRates | undefined;
}

/** `several` shortens the text of each run and says the cautions once. */
export function createWriter(format: OutputFormat, sink: Sink, options: TextOptions): Writer {
  const nothing = async (): Promise<void> => {};
  if (format === 'json') {
    const layout = options.indented ? 'indented' : 'line';
    return { begin: nothing, result: (one) => sink.write(jsonText(one, layout)), end: nothing };
  }
  if (format === 'text') return textWriter(sink, options);
  return {
    begin: () => sink.write(csvHeader(format)),
    result: (one) => sink.write(csvRow(one, format)),
    end: nothing,
  };
}

function textWriter(sink: Sink, options: TextOptions): Writer {
  const { look, several, explain, words, ratesOf } = options;
  const cautions = new Map<string, LocalizedText>();
  let first = true;
  return {
    begin: async () => {},
    result: async (one) => {
      if (several) for (const said of viewCautions(one, words)) cautions.set(said.text, said);
      const brief = several && !explain;
      const text = terminalText(one, {
        ...look,
        words,
        explain,
        brief,
        cautions: !several,
        rates: ratesOf?.(one),
      });
      await sink.write(first ? text : `\n${text}`);
      first = false;
    },
    end: async () => {
      const lines = cautionLines([...cautions.values()], words.terminal, look);
      if (lines.length > 0) await sink.write(`\n${lines.join('\n')}\n`);
    },
  };
}
