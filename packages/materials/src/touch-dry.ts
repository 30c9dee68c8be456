/** When a coat is dry to the touch, so that dew no longer marks it: a part of the time it takes to the next coat. */
import type { CureLaw } from './cure-law.ts';
import { cureLawOf, type FigureSource } from './cure-laws.ts';

export interface TouchDryFigure {
  /** id in `cureLaws` */
  readonly product: string;
  /** at 20 °C, as its law there. [h] */
  readonly hours: number;
  readonly figure: FigureSource;
}

const touchDry = (
  product: string,
  hours: number,
  low: number,
  high: number,
  source: string,
  seen: FigureSource['seen'],
): TouchDryFigure => ({
  product,
  hours,
  figure: { figure: `${hours} h at 20 °C`, band: [low, high], unit: 'h', source, seen },
});

const beforeDew = 'a coat is on 2 to 3 h before the dew: trade practice (handbook row materials.sun)';
const sheets = 'data sheets of several makers';

/** The tin wins: of a tin that gives its next coat another time, the same share of that is taken. */
export const touchDryFigures: readonly TouchDryFigure[] = [
  touchDry('varnish-one-pot', 3, 2, 3, beforeDew, 'common practice'),
  touchDry('varnish-two-pot', 3, 2, 4, sheets, 'recalled'),
  touchDry('paint-one-pot', 4, 2, 6, sheets, 'recalled'),
  touchDry('paint-two-pot', 4, 2, 6, sheets, 'recalled'),
  touchDry('epoxy-primer', 3, 2, 4, sheets, 'recalled'),
  touchDry('antifouling', 1, 0.5, 2, sheets, 'recalled'),
];

/** A coat of which nobody knows what it is: the longer end of the practice. [min] */
const unknownCoat: TouchDryFigure = touchDry('', 3, 2, 3, beforeDew, 'common practice');

/** The figure that a coat of a family goes by. @param family id in `cureLaws`; null: not known */
export function touchDryFigure(family: string | null): TouchDryFigure {
  return touchDryFigures.find(({ product }) => product === family) ?? unknownCoat;
}

/**
 * The law by which a coat is dry to the touch, out of the law of its wait: the same heat, damp and least temperature,
 * and of its time the share that our figure has of our family's. Of an unknown family our figure, but no longer than
 * the wait. Null for what is no coat: a bead that cures from the air, or what never cures.
 *
 * @param law     of the wait, the tin's where the tin speaks
 * @param family  id in `cureLaws`; null: not known
 */
export function touchDryLaw(law: CureLaw, family: string | null): CureLaw | null {
  const { product, hours } = touchDryFigure(family);
  switch (law.kind) {
    case 'set time':
      return law.minutes <= hours * 60 ? law : { ...law, minutes: hours * 60, from: 'common practice' };
    case 'reacts':
    case 'dries': {
      const ours = product === '' ? null : cureLawOf(product).law;
      const share =
        ours !== null && 'atReference_min' in ours
          ? (hours * 60) / ours.atReference_min
          : Math.min(1, (hours * 60) / law.atReference_min);
      return { ...law, atReference_min: law.atReference_min * share, from: 'common practice' };
    }
    case 'moisture':
    case 'never cures':
      return null;
  }
}
