/**
 * Writes checks/solar/README.md: the clear sky and the bands of cloud held against measured days. The page is of the files kept
 * in `data` and, where it lies beside the project, of the folder they are from.
 * Run: npx tsx checks/solar/make-page.ts
 */
import { existsSync, writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { skyWords } from '#solar';
import { asked, errorOfSeenCloud_oktas, judgeFolder } from './judge-suns.ts';
import { clearWhen } from './sky-of-day.ts';
import { folderInLines } from './suns-in-lines.ts';

const here = (name: string) => fileURLToPath(new URL(name, import.meta.url));
const beside = here('../../../shared/data/solar');
const folder = existsSync(beside) ? beside : here('data');
const percent = (share: number) => `${Math.round(100 * share)} %`;

const page = `# Sun, held against what was measured

Made by \`npx tsx checks/solar/make-page.ts\`; \`npm run check -- --solar FOLDER\` does the same for any folder of the forms in
\`data/README.md\`. Energies are of a level square metre. Bands are of nine in ten.

## What is asked

A clear day's energy within ${asked.clear_pct} % of what was measured. A cloudy day's energy in its band, and the band no wider than half of the
month's spread. Both judge the sun over the rows that were measured, at the same moments.

## What was given

- Where the station stood, its height and the date. No haze, pressure, water or ground: the air is the usual one by latitude,
  season and height (\`usualAir\` in \`packages/solar\`, our assumption), so nothing is fitted on a day.
- Of a clear day, that it was clear. A day is found clear from its measurements alone: its clearness free of the air crossed (Perez
  and others 1990, from memory) is ${clearWhen.clearness} or more in the middle; ${percent(clearWhen.share)} of its light falls within ${percent(clearWhen.steady)} of the clear sky's curve,
  scaled to the day's own height, so that no day is clear for being as bright as the model says; and the beam, where it was
  measured, is cut off for less than ${percent(clearWhen.beamOut)} of the time. Only the sun over ${clearWhen.altitude_deg}° is looked at.
- Of a cloudy day, what a keeper would have been told: the cloud of each hour in eighths where an observer wrote it down, as
  if off by ${errorOfSeenCloud_oktas} oktas; else one word for the whole day, by the share of the time that the sun was out (beam over 120 W/m²; where
  no beam was measured, light over 65 % of a clear sky's): ${Object.entries(skyWords)
    .map(([word, { low, high }]) => `${word} ${Math.round(100 * low)} to ${percent(high)}`)
    .join(', ')}.
- The month's spread is the width of the season's days at that latitude with nothing told (\`solar.season\`).

## What came out

${folderInLines(judgeFolder(folder)).join('\n')}
## What this shows, and what not

The word for a day is taken from the same instrument as its energy, but not from the energy: how much gets through the cloud, and
how bright the sun is that is out, are the model's. Beam and sky by themselves are less sure than their sum: haze that dims the one
feeds the other, and only a panel that is tilted much minds which.

The typical year is put together from months of several years, and its sun is mostly modelled from the cloud that was seen. It was
at hand when the width of the bands was set (what full cloud lets through, what an eighth covers, how thin cloud dims a clear
sky): its nine in ten in the bands is a fit, and other places are the fair test. The formula for a clear sky was chosen among those of
\`sky\` while these files were at hand, for what the others do at 1800 m and with a low sun; the one that fitted the clear day here
best was left for it. Haze and water are from memory, and no day moved them.
`;
writeFileSync(here('README.md'), page);
process.stdout.write(page);
