import { assumedOfBatteries } from '#battery';
import { assumedMisstated, assumedSeenFor_min, assumedTaper_h } from '#power';
import { assumedKept, assumedOfPanels, assumedSeason, type SolarBand } from '#solar';
import { showNumber } from '#units';
import { assumedChargingFrom_h } from './power-charging.ts';
import type { BatteryOfBook } from './power-history.ts';
import type { BatteryNow, NightAheadOf } from './power-night.ts';

const pct = (share: number) => `${Math.round(100 * share)} %`;
const number = (value: number, places: number) => showNumber(value, places);

/** How the figures of a battery are worked out: what went in, how, from where, and what was assumed. Whole sentences. */
export function powerWorking({ record, panels }: BatteryOfBook, known: BatteryNow, ahead: NightAheadOf) {
  const { estimate } = known;
  const taper = assumedTaper_h[record.chemistry];
  return [
    {
      title: 'How full, and what it holds',
      lines: [
        `In: ${known.counted} readings, the label (${number(record.nominal_Ah, 1)} Ah), its kind, ${record.made === null ? 'its age not known' : `made ${record.made}`}, what the circuits drew while someone was aboard, and what the panel may have brought.`,
        `How: some ${estimate.draws.count} batteries that may be this one are run through all that; those that would have read what was read are kept (ensemble smoother, Emerick and Reynolds 2013, then a Markov chain, ter Braak 2006; both from memory). 'In 9 of 10' is where nine in ten of them lie.`,
        `Percent is of what this battery itself gives at its 20-hour current down to ${number(estimate.cutOff_V, 1)} V, not of its label.`,
        `Rested volts against charge: the published tables, counted to one end, with the spread between them (battery.rest-charge). That it gives ${pct(assumedOfBatteries.overLabel)} over its label when new and ${number(100 * assumedOfBatteries.lossPerYear[record.chemistry === 'lifepo4' ? 'lifepo4' : 'lead'], 1)} % less each year, and that a meter is mostly within ${number(assumedOfBatteries.meter_V, 3)} V, are our assumptions.`,
        `A log is never whole. That something draws from the start in ${pct(assumedOfBatteries.unloggedDrain.already)} of histories and is left on once in ${assumedOfBatteries.unloggedDrain.apart_days} days, mostly about ${number(record.nominal_Ah * assumedOfBatteries.unloggedDrain.ofLabel_1_h, 2)} A; that the panel or charger brings less than it should once in ${assumedOfBatteries.lostCharge.apart_days} days; and that it was charged unwritten once in ${assumedOfBatteries.unloggedCharge.apart_days} days, are our assumptions, and unknowns of the estimate: so the band widens from the last reading on, and a sound reading narrows it again.`,
        `What it shows under load: ${number(estimate.resistance_mohm.likely, 0)} mΩ (${number(estimate.resistance_mohm.low, 0)} to ${number(estimate.resistance_mohm.high, 0)}).`,
        'Held against measured batteries and owners of another model of a battery: checks/battery.',
      ],
    },
    {
      title: 'What draws',
      lines: [
        `Ah a day = watts ÷ ${number(ahead.endurance.usual_V, 2)} V (rested at 70 %, 15 °C) × duty × hours. Sunset and sunrise are worked out for the place.`,
        `What is drawn lies within ${pct(assumedMisstated.label)} of its label in 9 of 10, what is told by hours a day within ${pct(assumedMisstated.hours)}: our assumption.`,
        `What was on at a reading is taken to have been on for ${assumedSeenFor_min.on} min before it; a rested reading means nothing was on, and the panel dark, for ${assumedSeenFor_min.rested} min: our assumption.`,
      ],
    },
    {
      title: 'The nights ahead',
      lines: [
        `${ahead.endurance.runs} runs: each takes one of those batteries, lamps that draw more or less than they say, and its own weather. A night is lasted when the charge never fell under the floor of ${number(record.floor_pct, 0)} % up to its sunrise (floors of 50 % for lead and 20 % for LiFePO4 are trade practice).`,
        `Near full it takes at most what it lacks in ${number(taper.likely, 1)} h (${number(taper.low, 1)} to ${number(taper.high, 1)}): our assumption. A charger counts for the hours a day aboard that are said of it, from ${String(assumedChargingFrom_h).padStart(2, '0')}:00 (our assumption).`,
        ...(panels.length === 0 ? [] : [...sunLines(panels, ahead)]),
      ],
    },
    {
      title: 'What it does not know',
      lines: [
        'A dead cell; a battery warmer than the air; more than one thing left on at once. Where the figures decide something, read the volts before sunrise with the panel dark; the maker’s data goes before ours.',
      ],
    },
  ];
}

const share = ({ low, high }: SolarBand) => `${Math.round(100 * low)} to ${pct(high)}`;

/** What the panels may bring is worked out from. */
function sunLines(panels: BatteryOfBook['panels'], { kept, place }: NightAheadOf): string[] {
  return [
    ...panels.map((panel) => {
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
    }),
    `The sun: a clear sky at ${number(Math.abs(place.latitude_deg), 1)}° ${place.latitude_deg < 0 ? 'south' : 'north'} with usual haze (Ineichen and Perez 2002, from memory; haze assumed by latitude and season), on the panel’s own slope, step by step; held against measured days in checks/solar.`,
    `The weather: no forecast of cloud goes in. A dull, a usual and a fair day of the season are those of the places of this latitude (spread after Bendt and others 1981, from memory; the means are our assumption); a day keeps ${number(assumedSeason.spell, 2)} of the luck of the day before. A day with rain in half of its hours entered or more is taken as overcast, with rain in fewer as mostly cloud.`,
    ...(kept === null
      ? []
      : [
          `By ${kept.pairs} ${kept.pairs === 1 ? 'stretch' : 'stretches'} between rested readings the panel keeps ${share(kept.learnt)} of the sun, where ${share(kept.guessed)} was guessed; what the readings say is taken.`,
        ]),
  ];
}
