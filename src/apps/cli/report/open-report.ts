import type { Engine } from '../../terminal/judge/engine.js';
import type { Sink } from '../../terminal/sink.js';
import type { Words } from '../../view/index.js';
import type { Writer } from '../classify/writer.js';
import { loadPageScript } from './page-script.js';
import { createPageWriter, together } from './page-writer.js';
import { type EvidenceEngine, withEvidence } from './with-evidence.js';

/** A report that is written beside another output. */
export interface OpenReport {
  engine: EvidenceEngine;
  sink: Sink;
  /** The other output's writer with the report's behind it. */
  tee(writer: Writer): Writer;
}

/** Begins a report; what runs through `engine` and then `tee(writer)` ends up in it. */
export async function openReport(
  engine: Engine,
  options: { out: string; several: boolean; overwrite: boolean; words: Words },
): Promise<OpenReport> {
  const collecting = withEvidence(engine);
  const script = await loadPageScript();
  const page = await createPageWriter(collecting, { ...options, script });
  return {
    engine: collecting,
    sink: page.sink,
    tee: (writer) => together(writer, page.writer),
  };
}
