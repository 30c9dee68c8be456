/** Figures of the trailer as they are said. */
import type { Band } from '#trailer';

const plain = (value: number, places: number): string => {
  const text = Math.abs(value).toFixed(places);
  const shown = text.includes('.') ? text.replace(/\.?0+$/, '') : text;
  return value < 0 && Number(shown) !== 0 ? `−${shown}` : shown;
};

/** `48.2`, `820`: as finely as a ball load is known */
export const kgFigure = (value: number): string => plain(value, Math.abs(value) < 100 ? 1 : 0);
export const kgSaid = (value: number): string => `${kgFigure(value)} kg`;
/** `48.2 kg (46.9 to 49.5)` */
export const bandSaid = ({ low, likely, high }: Band): string =>
  `${kgSaid(likely)} (${kgFigure(low)} to ${kgFigure(high)})`;
export const metresSaid = (value: number): string => `${plain(value, 2)} m`;
/** `0.36 m ahead of the axle`, `1.9 m behind the axle` */
export const placeAlong = (ahead_m: number): string =>
  Math.abs(ahead_m) < 0.005
    ? 'over the axle'
    : `${metresSaid(Math.abs(ahead_m))} ${ahead_m > 0 ? 'ahead of' : 'behind'} the axle`;
/** `1.35 m aft` */
export const movedSaid = (forward_m: number): string =>
  `${metresSaid(Math.abs(forward_m))} ${forward_m > 0 ? 'forward' : 'aft'}`;
export const pctSaid = (value: number): string => `${plain(value, 1)} %`;
export const newtonsSaid = (value: number): string => `${Math.round(value / 10) * 10} N`;
