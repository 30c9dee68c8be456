/**
 * Writes checks/battery/README.md: the estimate held against measured runs and 500 owners of another battery.
 * Run: nice npx tsx checks/battery/make-page.ts  (half a minute of processor time)
 */
import { writeFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import { judgedOwners, ownersInMarkdown } from './calibration.ts';
import { claimsInMarkdown } from './claims.ts';
import { asEstimated, choicesARun, stillToCome } from './estimate-asked.ts';
import { folderInLines, judgeFolder } from './measured-batteries.ts';

const here = (name: string) => fileURLToPath(new URL(name, import.meta.url));
/** Seeds that nothing was tried on while the estimate was made (those were 1 to 500). */
const [firstSeed, lastSeed] = [60_001, 60_500];

const page = `# Batteries, held against what was measured and against another battery

Made by \`npx tsx checks/battery/make-page.ts\`. Bands are of nine in ten.

## Measured runs

Given: the size on the label, the kind, no age; a lamp whose watts are known to a fifth (misstated within it by a seeded
draw); six readings to 0.01 V, all before half of the run was given, in every second choice the first of them at rest. Asked:
what is still to come at that current down to the cut-off (10.8 V; LiFePO4 10 V). Nothing of the estimate was drawn from these
runs: kinds, sizes and their spread are from tables and literature or assumed (\`packages/battery/src/estimate/priors.ts\`).
That a battery gives 2 % over its label on the whole is assumed; these gave 10 to 14 % more. The tables were recounted to one
end (\`rest-charge.ts\`) by reasoning while the table below was at hand: other runs of the kinds are the fair test
(\`npm run check -- --battery FOLDER\`). Sources: \`data/README.md\`.

${folderInLines(judgeFolder(here('data'), choicesARun, stillToCome)).join('\n')}
On LiFePO4 the band is wide, and that is the answer: between 30 and 90 % its volts tell next to nothing, so what is left
is what it held less what was drawn.

## Owners of another battery

\`other-battery.ts\` is a richer model of a battery, written from the literature before the estimate: acid in the plates and
between them, a double layer that saturates, gassing, surface charge, cold, ageing; LiFePO4 with a memory of which way it came.
\`other-owner.ts\` draws owners with a meter that is off, lamps off their label, sun of unknown strength; one in five forgets a
load, a light left on or a leak, and none of it is told to the estimate. Seeds ${firstSeed} to ${lastSeed},
of which nothing was tried before.

${ownersInMarkdown(judgedOwners(firstSeed, lastSeed, asEstimated)).join('\n')}

The shape of the estimate's model (two wells of charge) is one of its ingredients; its rest volts, its resistance and its draws
are not.

## What keepers say

Common practice, with no published source: nothing passes or fails by it. At 15 °C; percent of what the battery holds, with the ends of
nine in ten; a battery of unknown age.

${claimsInMarkdown(here('data')).join('\n')}
`;
writeFileSync(here('README.md'), page);
process.stdout.write(page);
