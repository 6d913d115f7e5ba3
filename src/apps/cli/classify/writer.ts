import type { Result } from '../../../analysis/result/index.js';
import { heatWith, inWords, type Said } from '../../terminal/flags/language-flags.js';
import type { Sink } from '../../terminal/sink.js';
import {
  type CsvFlavour,
  cautionLines,
  cautionsOf,
  csvHeader,
  csvRow,
  type EventRates,
  jsonText,
  type Look,
  terminalText,
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
  /** Words and units of the text; English and metric where not given. */
  said?: Said;
  several: boolean;
  explain: boolean;
  ratesOf?: (result: Result) => EventRates | undefined;
}

/** `several` shortens the text of each run, says the cautions once, and puts one JSON document on a line. */
export function createWriter(format: OutputFormat, sink: Sink, options: TextOptions): Writer {
  const nothing = async (): Promise<void> => {};
  if (format === 'json') {
    const layout = options.several ? 'line' : 'indented';
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
  const { look, several, explain, ratesOf, said } = options;
  const cautions = new Set<string>();
  let first = true;
  return {
    begin: async () => {},
    result: async (one) => {
      if (several) for (const text of cautionsOf(one)) cautions.add(text);
      const brief = several && !explain;
      const text = terminalText(inWords(one, said), {
        ...look,
        ...(said === undefined ? {} : { language: said.language, heatWith: heatWith(said) }),
        explain,
        brief,
        cautions: !several,
        rates: ratesOf?.(one),
      });
      await sink.write(first ? text : `\n${text}`);
      first = false;
    },
    end: async () => {
      const lines = cautionLines([...cautions], look);
      if (lines.length > 0) await sink.write(`\n${lines.join('\n')}\n`);
    },
  };
}
