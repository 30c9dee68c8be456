import { assumedKept, assumedOfPanels, assumedSeason, type SolarBand } from '#solar';
import { showNumber as number } from '#units';
import type { BatteryOfBook } from './power-history.ts';
import type { NightAheadOf } from './power-night.ts';
import type { FigureWorking } from './told-line.ts';

const pct = (share: number) => `${Math.round(100 * share)} %`;
const share = ({ low, high }: SolarBand) => `${Math.round(100 * low)} to ${pct(high)}`;

/** How what the panels may bring is worked out; null: there is no panel. */
export function sunWorking(panels: BatteryOfBook['panels'], { kept, place }: NightAheadOf): FigureWorking | null {
  if (panels.length === 0) return null;
  return {
    of: 'sun',
    title: 'What the panel may bring',
    rows: [
      ...panels.map((panel) => ({ kind: 'goes in', words: panelInWords(panel) }) as const),
      {
        kind: 'how',
        words: `A clear sky at ${number(Math.abs(place.latitude_deg), 1)}° ${place.latitude_deg < 0 ? 'south' : 'north'} with usual haze (Ineichen 2008, from memory; haze and water in the air assumed by latitude and season), on the panel’s own slope, step by step; held against measured days in checks/solar.`,
      },
      {
        kind: 'from',
        words: `A dull, a usual and a fair day of the season are those of the places of this latitude (spread after Bendt and others 1981, from memory; the means are our assumption); a day keeps ${number(assumedSeason.spell, 2)} of the luck of the day before. A day with rain in half of its hours entered or more is taken as overcast, with rain in fewer as mostly cloud.`,
      },
      ...(kept === null
        ? []
        : [
            {
              kind: 'from',
              words: `By ${kept.pairs} ${kept.pairs === 1 ? 'stretch' : 'stretches'} between rested readings the panel keeps ${share(kept.learnt)} of the sun, where ${share(kept.guessed)} was guessed; what the readings say is taken.`,
            } as const,
          ]),
      {
        kind: 'margin',
        words:
          'No forecast of cloud goes in. The dull day and the fair one are the ends that nine in ten days lie within.',
      },
      {
        kind: 'take care',
        words: 'Regulator to the battery first, panel last; a fuse at the battery’s end of the lead.',
      },
    ],
  };
}

/** What is known of a panel, and what is assumed of it. */
function panelInWords(panel: BatteryOfBook['panels'][number]): string {
  const lies =
    panel.tilt_deg === 0
      ? 'lies level'
      : `stands at ${number(panel.tilt_deg, 0)}°, facing ${number(panel.heading_deg, 0)}°`;
  const regulator = {
    none: 'no regulator, so the panel’s own amps',
    simple: 'a simple regulator, so the panel’s own amps',
    tracking: `a regulator that tracks (${pct(assumedOfPanels.tracking)} of its best power passed on)`,
  }[panel.regulator];
  const leads =
    panel.leads === null
      ? 'leads not stated'
      : `leads of ${number(panel.leads.lengthThereAndBack_m, 1)} m there and back, ${number(panel.leads.area_mm2, 1)} mm²`;
  const heat =
    panel.coefficient_pct_C === null
      ? `${number(assumedOfPanels.coefficient_pct_C, 2)} % a °C, assumed`
      : `${number(panel.coefficient_pct_C, 2)} % a °C, its label`;
  const rig =
    panel.kept_pct === null
      ? `${assumedKept.low_pct} to ${assumedKept.high_pct} % of the sun past mast and ropes, assumed`
      : `${number(panel.kept_pct, 0)} % of the sun past mast and ropes, the keeper’s guess within ${assumedKept.guessOff_pct} %`;
  return `${panel.name}: ${number(panel.peak_W, 1)} W, ${lies}; ${regulator}; ${leads}; heat takes ${heat}; ${rig}; dirt, age and the label’s promise leave ${share(assumedOfPanels.left)}, assumed.`;
}
