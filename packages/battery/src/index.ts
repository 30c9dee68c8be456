export { acidQuestions } from './acid-questions.ts';
export { chargingQuestions } from './charging-questions.ts';
export { type Chemistry, chemistries } from './chemistry.ts';
export { dischargeQuestions } from './discharge-questions.ts';
export { keepingQuestions } from './keeping-questions.ts';
export { lampQuestions } from './lamp-questions.ts';
export { type Band, type RestCharge, type RestCurve, restCharge, restCurve, restVolts } from './rest-charge.ts';
export { restQuestions } from './rest-questions.ts';
