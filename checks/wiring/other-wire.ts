import { ask, figureOf } from '#working';
import { questions } from '../../apps/cli/src/questions.ts';
import { errorsOf, type OtherCheck, seeded } from '../other-check.ts';

/**
 * Wires by another way: every resistance of the table against bare copper of the nominal area, and the volts of a device of
 * steady watts against its current found step by step.
 */
export function otherWire(): OtherCheck[] {
  const figure = (id: string, given: Readonly<Record<string, unknown>>, symbol: string): number => {
    const asked = ask(questions().find((each) => each.id === id)!, given);
    const found = asked.kind === 'answered' ? figureOf(asked.answer, symbol) : undefined;
    return typeof found?.value === 'number' ? found.value : Number.NaN;
  };
  const areas = [0.5, 0.75, 1, 1.5, 2.5, 4, 6, 10, 16, 25, 35, 50, 70, 95, 120, 150];
  const strands = ['fine-tinned', 'fine-plain', 'stiff-tinned', 'stiff-plain'];
  const overCopper = [20, 50].flatMap((temperature) => {
    // copper gains 0.393 % for each °C over 20 (IEC 60028)
    const copper = 17.241 * (1 + 0.00393 * (temperature - 20));
    return areas.flatMap((area) =>
      strands.map(
        (each) =>
          (figure('wiring.resistance', { size: `${area}mm2`, strands: each, temperature }, 'R') * area) / copper - 1,
      ),
    );
  });
  const random = seeded(11);
  const stepByStep = Array.from({ length: 150 }, () => {
    const watts = 1 + 40 * random();
    const length_m = 1 + 20 * random();
    const given = { watts, 'length-there-and-back': length_m, size: '1.5mm2', joints: 0, temperature: 20 };
    let current = watts / 12;
    for (let i = 0; i < 60; i++) current = watts / (12 - (current * 13.7 * length_m) / 1000);
    return figure('wiring.at-device', given, 'U') - (12 - (current * 13.7 * length_m) / 1000);
  });
  return [
    errorsOf(
      {
        subject: 'wiring',
        what: 'resistance of conductors, over copper of the nominal area',
        kind: 'derived twice',
        against: '17.241 Ω·mm²/km (IEC 60028) over the area',
        unit: '',
        allowed: 0.2,
        why: 'strands lie askew and are tinned, and a nominal area is not the area; IEC 60228’s greatest for fine tinned 1.5 and 2.5 mm² (13.7 and 8.21 Ω/km, seen) are 19 % over',
      },
      overCopper,
    ),
    errorsOf(
      {
        subject: 'wiring',
        what: 'volts at a device of steady watts',
        kind: 'derived twice',
        against: 'its current found step by step',
        unit: 'V',
        allowed: 1e-9,
        why: 'none should remain',
      },
      stepByStep,
    ),
  ];
}
