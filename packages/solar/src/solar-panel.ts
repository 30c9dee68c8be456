/** A panel as the keeper knows it, and what it gives in a light. */

export interface SolarPanel {
  readonly peak_W: number;
  /** from level. 0–90 */
  readonly tilt_deg: number;
  /** the way it faces, true, from north. 0–360 */
  readonly heading_deg: number;
  readonly regulator: 'none' | 'simple' | 'tracking';
  /** change of its power for each °C, from its label. −2–0; null: not known */
  readonly coefficient_pct_C: number | null;
  readonly leads: { readonly lengthThereAndBack_m: number; readonly area_mm2: number } | null;
}

/** Assumed of a panel, where nobody has said; each is shown with what follows from it. */
export const assumedOfPanels = {
  /** crystalline silicon: data sheets give −0.29 to −0.5, from memory. [%/°C] */
  coefficient_pct_C: -0.4,
  /** a plate of 36 cells, as sold for 12 V, gives its peak at about so many volts; from memory. [V for 12 V] */
  peak_V: 18,
  /** with nothing drawn, and shorted, over their values at peak power; data sheets, from memory */
  openOverPeak: 1.21,
  shortOverPeak: 1.07,
  /** at 800 W/m², 20 °C and a light wind; data sheets give 43 to 49, laid on a deck it is hotter. [°C] */
  operatingCell_C: 49,
  /** dirt, salt, age, a label that promises more, light that falls flat: what is left */
  left: { low: 0.8, likely: 0.9, high: 0.98 },
  /** a regulator that tracks turns so much of the panel's power into charge */
  tracking: 0.94,
  /** volts lost over a plain regulator or a blocking diode. [V] */
  plainDrop_V: 0.4,
  /** volts of a 12 V battery while it is charged. [V] */
  charging_V: 13.4,
  /** copper at 20 °C. [Ω·mm²/m] IEC 60028, from memory */
  copper_ohm_mm2_m: 0.01724,
} as const;

/** Light on a panel's own face and the air round it. */
export interface PanelLight {
  /** [W/m²], ≥ 0 */
  readonly onPanel_W_m2: number;
  readonly cell_C: number;
}

/** What a panel gives, and where the rest stayed. */
export interface PanelGives {
  /** into the battery */
  readonly amps: number;
  /** its power at its best in this light and heat. [W] */
  readonly best_W: number;
  /** power that reaches the battery. [W] */
  readonly reaches_W: number;
  /** volts at the panel */
  readonly panel_V: number;
  /** lost in the leads. [W] */
  readonly leads_W: number;
}

/**
 * What a panel brings a battery in a light, before rig, dirt and the battery's own wishes.
 *
 * A plain regulator, or none, holds the panel at the battery's volts and what the leads and the regulator take on top: its amps
 * are nearly those of a shorted panel, until a hot panel's own volts come down to that. One that tracks holds the panel at
 * its best and turns its watts into amps.
 *
 * @param nominal_V  of the battery
 * @returns          [A], ≥ 0; a lead so thin that it takes all gives none
 * @throws RangeError for a panel of no watts, light below 0
 *
 * Not covered: a panel partly in the shade of a rope, which loses more than the shaded part.
 * Source: power falls in proportion to light, and with heat by the label's coefficient (common practice). The curve between
 * shorted and open is the explicit one of two constants (I = Isc·(1 − C1·(exp(V/(C2·Voc)) − 1))), from memory.
 */
export function panelGives(
  panel: SolarPanel,
  nominal_V: 6 | 12 | 24,
  { onPanel_W_m2, cell_C }: PanelLight,
): PanelGives {
  if (!(panel.peak_W > 0)) throw new RangeError(`a panel has watts, got ${panel.peak_W} W`);
  if (!(onPanel_W_m2 >= 0)) throw new RangeError(`light on the panel must be 0 or more, got ${onPanel_W_m2} W/m²`);
  const size = nominal_V / 12;
  const heat = cell_C - 25;
  const coefficient = (panel.coefficient_pct_C ?? assumedOfPanels.coefficient_pct_C) / 100;
  const light = onPanel_W_m2 / 1000;
  const best_W = Math.max(0, panel.peak_W * light * (1 + coefficient * heat));
  // nearly all that heat takes, it takes from the volts; the amps grow by a twentieth of a percent a degree
  const amps_per_C = 0.0005;
  const peak_V = Math.max(1, assumedOfPanels.peak_V * size * (1 + (coefficient - amps_per_C) * heat));
  const peak_A = (panel.peak_W / (assumedOfPanels.peak_V * size)) * light * (1 + amps_per_C * heat);
  const ohms = leadOhms(panel);
  const battery_V = assumedOfPanels.charging_V * size;
  if (peak_A <= 0) return { amps: 0, best_W, reaches_W: 0, panel_V: 0, leads_W: 0 };
  if (panel.regulator === 'tracking') {
    const leads_W = Math.min(best_W, peak_A ** 2 * ohms);
    const reaches_W = (best_W - leads_W) * assumedOfPanels.tracking;
    return { amps: reaches_W / battery_V, best_W, reaches_W, panel_V: peak_V, leads_W };
  }
  const short_A = peak_A * assumedOfPanels.shortOverPeak;
  const open_V = peak_V * assumedOfPanels.openOverPeak;
  const c2 = (1 / assumedOfPanels.openOverPeak - 1) / Math.log(1 - 1 / assumedOfPanels.shortOverPeak);
  const c1 = (1 - 1 / assumedOfPanels.shortOverPeak) * Math.exp(-1 / (assumedOfPanels.openOverPeak * c2));
  const needed_V = (amps: number) => battery_V + assumedOfPanels.plainDrop_V * size + amps * ohms;
  // the more amps, the more volts they cost in the leads: Newton's way, from above, on a curve that only bends down
  let amps = short_A;
  for (let i = 0; i < 20; i++) {
    const bent = c1 * Math.exp(needed_V(amps) / (c2 * open_V));
    const over = amps - short_A * (1 - bent + c1);
    const step = over / (1 + (short_A * bent * ohms) / (c2 * open_V));
    amps -= step;
    if (Math.abs(step) < 1e-9 * short_A) break;
  }
  amps = Math.max(0, amps);
  return { amps, best_W, reaches_W: amps * battery_V, panel_V: needed_V(amps), leads_W: amps ** 2 * ohms };
}

/** Resistance of a panel's leads, there and back. [Ω]; 0 where nobody has said */
export function leadOhms({ leads }: SolarPanel): number {
  return leads === null ? 0 : (assumedOfPanels.copper_ohm_mm2_m * leads.lengthThereAndBack_m) / leads.area_mm2;
}
