export { acidQuestions } from './acid-questions.ts';
export { assumedLoadedResistance_mohm, type BatteryCard, batteryCard, cardCondition } from './battery-card.ts';
export type { BatteryHistory, BatteryKnown, Flow, VoltReading } from './battery-history.ts';
export { cardQuestions } from './card-question.ts';
export { storedShare } from './charging.ts';
export { chargingQuestions } from './charging-questions.ts';
export { type Chemistry, chemistries } from './chemistry.ts';
export { dischargeQuestions } from './discharge-questions.ts';

export { capacityInHours_Ah } from './discharge-rate.ts';
export { Dice } from './estimate/dice.ts';
export {
  type BatteryDraws,
  type BatteryEstimate,
  bandOf,
  type EstimateAsked,
  type EstimateSeries,
  estimateBattery,
  type OddReading,
} from './estimate/estimate-battery.ts';
export { type NextReading, type NextReadingKind, nextReadings } from './estimate/next-reading.ts';
export { assumedOfBatteries } from './estimate/priors.ts';
export { floor_pct, selfDischarge_pct_month } from './keeping.ts';
export { keepingQuestions } from './keeping-questions.ts';
export { lampQuestions } from './lamp-questions.ts';
export {
  type Band,
  type RestCharge,
  type RestCurve,
  restCharge,
  restCurve,
  restSources,
  restVolts,
} from './rest-charge.ts';
export { restQuestions } from './rest-questions.ts';
