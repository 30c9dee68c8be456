export {
  amount,
  amountOf,
  angle,
  area,
  duration,
  force,
  humidity,
  length,
  mass,
  number,
  pressure,
  series,
  speed,
  temperature,
  temperatureDifference,
  volume,
} from './amount-fields.ts';
export {
  type Answer,
  type Figure,
  type FoundAnswer,
  figureOf,
  type Source,
  type TruthAnswer,
  type WorkingLine,
} from './answer.ts';
export {
  assuming,
  type Control,
  type Field,
  fieldSchema,
  type Generators,
  type Reading,
  type ReferenceRow,
  type ValueOf,
} from './field.ts';
export { choice, count, day, instant, timeZone } from './plain-fields.ts';
export {
  type Asked,
  ask,
  type Fault,
  type Fields,
  type Question,
  question,
  referenceRows,
  type Values,
} from './question.ts';
export { answerInLines, figureInWords } from './show-answer.ts';
