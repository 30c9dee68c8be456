import { inBase, inUnit } from '#units';
import { area, assuming, choice, length, number, question, speed } from '#working';
import { cautions } from '../cautions.ts';
import { newtonsIn } from '../path/printed.ts';
import {
  air_kg_m3,
  assumedBlock,
  bowLoad,
  formInCurrent,
  usualDragCoefficient,
  usualSurge,
  windPressure_Pa,
} from './bow-load.ts';
import { groundCautions, sources } from './ground-fields.ts';

/** Pascals in a pound to the square foot. */
const pascalsInPsf = newtonsIn.lbf / 0.3048 ** 2;

export function bowLoadQuestion() {
  return question({
    id: 'loads.bow-load',
    title: 'What pulls at the bow at anchor?',
    fields: {
      wind: speed('kn', 1, 80, 'steady wind'),
      length: length('m', 2, 12.2, 'boat over all'),
      beam: length('m', 0.8, 4.3, 'boat, at her broadest'),
      kind: assuming(
        choice(
          [
            { id: 'sail', title: 'a sailing boat' },
            { id: 'motor', title: 'a motor boat' },
          ],
          'what she is',
        ),
        'sail' as 'sail' | 'motor',
        'a sailing boat',
        'its beams in the table are less, so its loads are more',
      ),
      windage: area('m²', 0.1, 60, 'of boat and rig that the wind sees from ahead'),
      coefficient: assuming(
        number('', 0.2, 2, 'of the wind’s drag on it'),
        usualDragCoefficient,
        String(usualDragCoefficient),
        'between 1.2 for flat and 0.7 for rounded',
      ),
      current: assuming(speed('kn', 0, 8, 'current from ahead'), inBase('speed', 0, 'kn'), '0 kn', 'none was given'),
      draught: assuming(
        length('m', 0.05, 2, 'of the hull, board up'),
        inBase('length', 0.3, 'm'),
        '0.3 m',
        'a boat for a trailer',
      ),
      below: assuming(
        area('m²', 0, 2, 'board, rudder and outboard leg, seen from ahead'),
        inBase('area', 0.06, 'm²'),
        '0.06 m²',
        'a leg and a rudder left down',
      ),
      surge: assuming(
        number('', 1, 5, 'times the steady drag, for sheering about and seas'),
        usualSurge,
        String(usualSurge),
        'the upper end of what was measured',
      ),
    },
    answer: (given) => {
      const wind_kn = inUnit('speed', given.wind, 'kn');
      const { table, wind_N, current, current_N, drag_N, taken_N } = bowLoad(
        {
          length_m: given.length,
          beam_m: given.beam,
          kind: given.kind,
          windage_m2: given.windage,
          coefficient: given.coefficient,
          draught_m: given.draught,
          below_m2: given.below,
          surge: given.surge,
        },
        wind_kn,
        given.current,
      );
      const working = [
        {
          symbol: 'q',
          meaning: 'pressure of the wind',
          value: windPressure_Pa(given.wind),
          unit: 'Pa',
          formula: '½ρV²',
        },
        {
          symbol: 'q foot',
          meaning: 'the same on a square foot',
          value: windPressure_Pa(given.wind) / pascalsInPsf,
          unit: 'lbf/ft²',
          formula: 'q',
        },
        { symbol: 'ρ', meaning: 'air', value: air_kg_m3, unit: 'kg/m³', formula: '15 °C, recalled' },
        { symbol: 'F wind', meaning: 'steady drag of the wind', value: wind_N, unit: 'N', formula: 'q·C·A' },
        {
          symbol: 'F form',
          meaning: 'current on the hull’s form',
          value: current.form_N,
          unit: 'N',
          formula: `½ρV²·B·T·${formInCurrent}`,
        },
        {
          symbol: 'S',
          meaning: 'wetted skin',
          value: current.wetted_m2,
          unit: 'm²',
          formula: `1.7·T·L + ${assumedBlock}·L·B`,
        },
        {
          symbol: 'F skin',
          meaning: 'current on the skin',
          value: current.friction_N,
          unit: 'N',
          formula: '½ρV²·S·0.075/(log Rn − 2)²',
        },
        {
          symbol: 'F below',
          meaning: 'current on board, rudder and leg',
          value: current.below_N,
          unit: 'N',
          formula: '½ρV²·A·1',
        },
        { symbol: 'F current', meaning: 'the current in all', value: current_N, unit: 'N', formula: 'their sum' },
        { symbol: 'F drag', meaning: 'by drag', value: drag_N, unit: 'N', formula: 'surge·(F wind + F current)' },
      ];
      const shown = {
        limits: [
          'The table means boats of usual build with room to sheer and some shelter from seas; a cabin or a rig of more windage than usual asks for up to half as much again.',
          'A boat that snatches in open seas pulls several times as hard: no figure here covers it. Go where there is shelter.',
        ],
        cautions: [groundCautions.watch, cautions.recoil, cautions.guidance],
      };
      if (table.kind === 'off the table')
        return {
          kind: 'truth',
          statement: 'By the drag alone: she is larger than the table',
          because: `the table ends at ${table.longest_ft} ft long and ${table.broadest_ft} ft broad`,
          results: [{ symbol: 'F', meaning: 'level pull at the bow', value: taken_N, unit: 'N' }],
          working,
          ...shown,
          sources: [sources.drag, sources.shapes, sources.sheer, sources.current],
        };
      const [lunch, atWork, storm] = table.row.load_lbf;
      return {
        kind: 'found',
        results: [
          { symbol: 'F', meaning: 'level pull at the bow, the greater of the two', value: taken_N, unit: 'N' },
          { symbol: 'F table', meaning: 'by the table, at this wind', value: table.load_N, unit: 'N' },
          { symbol: 'F drag', meaning: 'by drag, with surge', value: drag_N, unit: 'N' },
        ],
        working: [
          ...working,
          {
            symbol: 'row',
            meaning: `of the table, by her ${table.by}`,
            value: table.row.length_ft,
            unit: 'ft',
            formula: 'the first that is as long and as broad',
          },
          { symbol: 'lunch', meaning: 'at 15 kn', value: lunch, unit: 'lbf', formula: 'printed' },
          { symbol: 'working', meaning: 'at 30 kn', value: atWork, unit: 'lbf', formula: 'printed' },
          { symbol: 'storm', meaning: 'at 42 kn', value: storm, unit: 'lbf', formula: 'printed' },
          {
            symbol: 'working over lunch',
            meaning: 'the wind twice as strong',
            value: atWork / lunch,
            unit: '',
            formula: 'printed',
          },
        ],
        sources: [{ ...sources.table, seen: table.seen }, sources.drag, sources.shapes, sources.sheer, sources.current],
        ...shown,
      };
    },
  });
}
