export { type FoundStep, findSteps, type SweepBlock, sweepBlocks } from './find-steps.js';
export {
  MACHINE_VERSION,
  type Machine,
  machineSchema,
  parseMachine,
  type SweepStep,
} from './machine-document.js';
export {
  mostRegular,
  NEAR,
  nearestStep,
  regularityOf,
  type SweepPoint,
} from './measured-map.js';
