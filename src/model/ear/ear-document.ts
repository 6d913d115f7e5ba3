import { ArcError, MODES, type Mode } from '../../core/index.js';
import { type Network, type NetworkHeader, readNetwork } from '../network/index.js';
import type { Novelty } from '../novelty.js';

/** From logits to probabilities: `softmax` or `sigmoid` of `slope·logit + offset`. */
export interface SlopeAndOffsets {
  slope: number;
  /** One a class of the softmax; one of a yes-or-no question. */
  offset: number[];
}

/** A network that listens, with all that its answers need: plain data, never run as code. */
export interface EarModel {
  kind: 'arc-transfer-ear';
  schemaVersion: '1';
  id: string;
  version: string;
  /** The measured signs that stand beside the network's answer. */
  featureSet: { id: string; version: number; features: string[] };
  network: NetworkHeader;
  /** Weights in base64, half-precision floats in the order of the layers. */
  weights: string;
  /** What the outputs of the last layer are, in their order; `other` is passed over. */
  outputs: EarOutput[];
  calibration: {
    /** Modes of a whole run, in the order of `outputs`; with a fifth class where there is `free-flight`. */
    modes: SlopeAndOffsets;
    /** The same where at most `toS` seconds were heard, shortest first. */
    modesByS: (SlopeAndOffsets & { toS: number })[];
    /** An arc in the interval, and in a row of the network. */
    arc: SlopeAndOffsets;
    rows: SlopeAndOffsets;
    /** The size of free drops is audible. */
    dropsHeard: SlopeAndOffsets;
  };
  answer: {
    /** Probability of an arc from which a mode may be named, and below which it was no arc. */
    nameArc: number;
    rejectArc: number;
    /** Probability that the size of drops is audible from which globular or spray may be named. */
    nameDrops: number;
  };
  /** Over the hidden figures of a run; null where nothing is known of what is unlike all that was heard. */
  novelty: Novelty | null;
  /** How it was made and what was measured; for people and the model card. */
  training: Record<string, unknown>;
}

/** `free-flight`: drops fly free, of a size that cannot be told. */
export type EarOutput = Mode | 'free-flight' | 'arc' | 'drops-heard' | 'other';

/** A model that listens, ready for use. */
export interface Ear {
  network: Network;
  /** Seconds of a block. */
  blockS: number;
  /** Places of the outputs: of the classes of the softmax and their names, and of the yes-or-no questions. */
  classes: { at: number; name: Mode | 'free-flight' }[];
  arcAt: number;
  dropsHeardAt: number | null;
}

const ready = new WeakMap<EarModel, Ear>();

/**
 * The network of a model, made ready once. A model must not be changed afterwards.
 * @throws ArcError `bad-network`, `bad-model`
 */
export function earOf(model: EarModel): Ear {
  const known = ready.get(model);
  if (known) return known;
  const network = readNetwork(model.network, bytesOf(model.weights));
  const { layers, header } = network;
  const strides = layers.reduce((all, { spec }) => all * (spec.stride ?? 1), 1);
  const { hop, rateHz } = header.frontEnd;
  const classes = model.outputs.flatMap((name, at) =>
    name === 'arc' || name === 'drops-heard' || name === 'other' ? [] : [{ at, name }],
  );
  const dropsHeardAt = model.outputs.indexOf('drops-heard');
  const ear = {
    network,
    blockS: (strides * hop * header.pool) / rateHz,
    classes,
    arcAt: model.outputs.indexOf('arc'),
    dropsHeardAt: dropsHeardAt < 0 ? null : dropsHeardAt,
  };
  check(model, ear);
  ready.set(model, ear);
  return ear;
}

function check(model: EarModel, { network, classes, arcAt }: Ear): void {
  const { calibration, outputs, novelty } = model;
  const out = network.layers.find(({ spec }) => spec.kind === 'out')!.spec.outputs;
  const hidden = network.layers.find(({ spec }) => spec.kind === 'hidden')!.spec.outputs ?? 0;
  const wide = [calibration.modes, ...calibration.modesByS];
  const ok =
    outputs.length === out &&
    MODES.every((mode) => outputs.filter((one) => one === mode).length === 1) &&
    classes.length <= MODES.length + 1 &&
    arcAt >= 0 &&
    wide.every(({ offset }) => offset.length === classes.length) &&
    [calibration.arc, calibration.rows, calibration.dropsHeard].every(
      ({ offset }) => offset.length === 1,
    ) &&
    (novelty === null ||
      (novelty.mean.length === hidden &&
        novelty.deviation.length === hidden &&
        novelty.centres.every((centre) => centre.length === hidden) &&
        novelty.factor.length === (hidden * (hidden + 1)) / 2));
  if (ok) return;
  throw new ArcError({
    code: 'bad-model',
    what: `The model "${model.id}" holds lists that do not fit the outputs of its network.`,
    expected: 'a name for each output, each mode and "arc" once, and an offset for each class',
    todo: 'Use the shipped model (leave --model out).',
  });
}

function bytesOf(base64: string): Uint8Array {
  const binary = atob(base64);
  const bytes = new Uint8Array(binary.length);
  for (let k = 0; k < binary.length; k++) bytes[k] = binary.charCodeAt(k);
  return bytes;
}
