export { type Chemistry, chemistries } from './chemistry.ts';
export { type Band, type RestCharge, type RestCurve, restCharge, restCurve, restVolts } from './rest-charge.ts';
