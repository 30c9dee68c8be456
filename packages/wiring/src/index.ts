export {
  type CheckedCircuit,
  type CircuitFault,
  type CircuitGap,
  circuitCheck,
  type FaultKind,
  type WiredBattery,
  type WiredCircuit,
  wireFor,
} from './circuit-check.ts';
export {
  type CircuitWorking,
  circuitWorking,
  gaugeWithin,
  voltsAtDevice,
  type WorkingPart,
} from './circuit-working.ts';
export { type Conductor, type ConductorSize, copperArea_mm2, sizeInWords, sizeOfArea, sizesOf } from './conductor.ts';
export { conductorQuestions } from './conductor-questions.ts';
export { dropQuestions } from './drop-questions.ts';
export {
  bladeColours,
  type FuseKind,
  faultCurrent_A,
  fuseKinds,
  fuseRatings_A,
  fuseReach_m,
  fuseThatBreaks,
} from './fuse.ts';
export { fuseQuestions } from './fuse-questions.ts';
export { dropLimit_pct, voltDrop_V } from './volt-drop.ts';
export { cautions as wiringCautions } from './wiring-fields.ts';
