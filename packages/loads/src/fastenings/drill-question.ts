import { length, question, type WorkingLine } from '#working';
import { inMillimetres } from '../path/loads-fields.ts';
import { boltField, fasteningCautions } from './fastening-fields.ts';
import { requiredCell, sizeCell, type ThreadColumn } from './size-cell.ts';
import { gaugeAcross_mm, woodScrewHoles_mm } from './wood-screw.ts';

const columns: readonly ThreadColumn[] = [
  'pitch',
  'clearance fine',
  'clearance medium',
  'clearance coarse',
  'tapping',
  'tapping for stainless',
];

export function drillQuestion() {
  return question({
    id: 'loads.drill',
    title: 'Which drill for this bolt?',
    fields: { size: boltField() },
    answer: ({ size }) => {
      const cells = columns.map((column) => ({ column, cell: sizeCell(column, size) }));
      const lines = cells.flatMap(({ column, cell }): WorkingLine[] =>
        cell
          ? [
              {
                symbol: column,
                meaning: cell.seen === 'recalled' ? 'as recalled, not read again' : 'as printed',
                value: cell.value,
                unit: 'mm',
                formula: cell.source,
              },
            ]
          : [],
      );
      return {
        kind: 'found',
        results: [
          {
            symbol: 'clearance',
            meaning: 'hole a bolt goes through freely, medium',
            value: requiredCell('clearance medium', size).value,
            unit: 'mm',
          },
          {
            symbol: 'tap',
            meaning: 'hole to cut its thread in, coarse thread',
            value: requiredCell('tapping', size).value,
            unit: 'mm',
          },
          ...(sizeCell('tapping for stainless', size)
            ? []
            : [
                {
                  symbol: 'tap stainless',
                  meaning: 'hole to cut a thread in stainless',
                  value: 'not printed for this size: a tenth of a millimetre over the tapping drill',
                  unit: '',
                },
              ]),
        ],
        working: lines,
        sources: cells.flatMap(({ cell }) => (cell ? [{ title: cell.source, seen: cell.seen }] : [])),
        limits: [
          'A hole bedded against leaks is countersunk a little, so that a ring of sealant stays in it.',
          'In core, drill over size, fill, and drill again: loads.filled-hole.',
        ],
        cautions: [fasteningCautions.drilling, fasteningCautions.dust, fasteningCautions.galling],
      };
    },
  });
}

export function pilotHoleQuestion() {
  return question({
    id: 'loads.pilot-hole',
    title: 'Which holes for this wood screw?',
    fields: { size: length('mm', 2, 12.7, 'diameter over the shank') },
    answer: ({ size }) => {
      const holes = woodScrewHoles_mm(inMillimetres(size));
      return {
        kind: 'found',
        results: [
          { symbol: 'softwood', meaning: 'for the thread, in softwood and ply', value: holes.softwood, unit: 'mm' },
          { symbol: 'hardwood', meaning: 'for the thread, in hardwood', value: holes.hardwood, unit: 'mm' },
          { symbol: 'shank', meaning: 'for the shank, in what is fastened', value: holes.shank, unit: 'mm' },
        ],
        working: [
          {
            symbol: 'root',
            meaning: 'under the thread, about',
            value: holes.softwood / 0.7,
            unit: 'mm',
            formula: '2/3 of the shank (common practice)',
          },
          {
            symbol: 'No. 8',
            meaning: 'an inch gauge, for comparison',
            value: gaugeAcross_mm(8),
            unit: 'mm',
            formula: '0.060 in + 0.013 in a number (ASME B18.6.1, recalled)',
          },
        ],
        sources: [
          {
            title: 'USDA Wood Handbook chapter 8: lead holes 70 % of the root in softwood, 90 % in hardwood',
            seen: 'recalled',
          },
        ],
        limits: ['Brass and bronze screws break in hard wood: drive a steel one of the same size first.'],
        cautions: [fasteningCautions.drilling],
      };
    },
  });
}
