import { restVolts } from '#battery';
import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { acidOfDensity_mol_L, cellVolts } from '../battery/other-battery.ts';
import { errorsOf, type OtherCheck } from '../other-check.ts';

/**
 * Rested volts of lead by another way: Bode's fit of a cell's volts in the molality of its acid, with the density of sulphuric
 * acid from a textbook table, against the trade's line over the specific gravity and against the band of the printed tables.
 */
export function otherAcid(): OtherCheck[] {
  const gravity = questions().find(({ id }) => id === 'battery.gravity')!;
  const volts = (reading: number): number => {
    const asked = ask(gravity, { reading });
    const figure = asked.kind === 'answered' ? figureOf(asked.answer, 'U') : undefined;
    return typeof figure?.value === 'number' ? figure.value : Number.NaN;
  };
  const steps = Array.from({ length: 161 }, (_, i) => 1.12 + i / 1000);
  const full = acidOfDensity_mol_L(1.265);
  const empty = acidOfDensity_mol_L(1.12);
  const outside = Array.from({ length: 101 }, (_, pct) => {
    const { low, high } = restVolts('flooded', pct, 25);
    const byAcid = 6 * cellVolts(empty + (pct / 100) * (full - empty));
    return Math.max(0, low - byAcid, byAcid - high);
  });
  return [
    errorsOf(
      {
        subject: 'power',
        what: 'rested volts from the specific gravity',
        kind: 'derived twice',
        against: 'Bode’s fit over the molality of the acid',
        unit: 'V',
        allowed: 0.15,
        why: 'the trade’s line V = SG + 0.84 is straight and low (0.845 is printed too), the fit bends up from it where the acid is thin',
      },
      steps.map((reading) => volts(reading) - 6 * cellVolts(acidOfDensity_mol_L(reading))),
    ),
    errorsOf(
      {
        subject: 'power',
        what: 'rested volts of a flooded battery, out of the tables’ band',
        kind: 'derived twice',
        against: 'Bode’s fit, acid in proportion to the charge from 1.120 to 1.265',
        unit: 'V',
        allowed: 0.02,
        why: 'none should: the tables disagree more than the fit lies off them',
      },
      outside,
    ),
  ];
}
