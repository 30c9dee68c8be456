import { existsSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import { questions } from '../apps/cli/src/questions.ts';
import { otherFastenings } from './loads/other-fastenings.ts';
import { otherGround } from './loads/other-ground.ts';
import { otherHoist } from './loads/other-hoist.ts';
import { otherRig } from './loads/other-rig.ts';
import { otherDew } from './materials/other-dew.ts';
import { otherIntegration } from './materials/other-integration.ts';
import type { OtherCheck } from './other-check.ts';
import { otherAcid } from './power/other-acid.ts';
import { otherNights } from './power/other-nights.ts';
import { tableInMarkdown } from './report.ts';
import { keptRows, outsideRows } from './row.ts';
import { type OutsideRun, type RowResult, runOutsideRows, runRow } from './run-rows.ts';
import { otherEphemeris } from './sky/other-ephemeris.ts';
import { otherLight } from './sky/other-light.ts';
import { otherSun } from './solar/other-sun.ts';
import { mappings, subjects, unasked } from './subjects.ts';
import { otherBalance } from './trailer/other-balance.ts';
import { otherWire } from './wiring/other-wire.ts';

const here = fileURLToPath(new URL('.', import.meta.url));
/** Where the handbook of check values lies beside the project, when it does. */
export const handbookFolder = join(here, '..', '..', 'shared', 'handbook');
export const handbookHere = existsSync(handbookFolder);

export const keptFile = (subject: string) => join(here, subject, 'rows.json');

/** The rows every subject keeps, asked and compared. */
export function runKeptRows(): RowResult[] {
  const all = questions();
  return subjects.flatMap((subject) =>
    keptRows(keptFile(subject)).map((row) => ({ row, comparison: runRow(row, all) })),
  );
}

/** Rows of the handbook's form in a folder, asked and compared. */
export function runFolder(folder: string): OutsideRun {
  return runOutsideRows(
    outsideRows(folder).map(({ row }) => row),
    questions(),
    { mappings, unasked },
  );
}

/** The comparisons with what is no table of rows, the same every time. */
export function runOthers(): OtherCheck[] {
  return [
    ...otherEphemeris(2026, 365),
    ...otherLight(2026),
    ...otherIntegration(2026, 1000),
    ...otherDew(2026, 1000),
    ...otherAcid(),
    ...otherNights(2026, 110),
    ...otherSun(2026, 120),
    ...otherWire(),
    ...otherBalance(),
    ...otherHoist(),
    ...otherFastenings(),
    ...otherRig(),
    ...otherGround(),
  ];
}

/** What checks/README.md says: this text is made, the file is what was made last. */
export function readme(results: readonly RowResult[], others: readonly OtherCheck[]): string {
  return [
    '# Checks against the outside',
    '',
    'Made by `npm run check -- --readme`; a test fails when it is out of date.',
    '',
    'A row is put as a question (`fettle ask`), the figure it picks is compared with an answer from outside this',
    'project. Each row keeps its source and its provenance: _found_ was seen in stored material, _recalled_ is from',
    'memory and shown as such, _common practice_ has no published source; _published_ is printed in the source, _computed_ was',
    'worked out from its formula apart from this project. Rows carry ten figures: nothing finer is asked of them.',
    '',
    `Rows kept in this project: ${results.length}.`,
    '',
    ...tableInMarkdown(results, others),
    '## Nothing asks yet',
    '',
    ...unasked.map(({ family, because }) => `- ${family}: ${because}`),
    '',
  ].join('\n');
}
