import { describe, expect, it } from 'vitest';
import { leadOhms, panelGives, type SolarPanel } from './solar-panel.ts';

const panel: SolarPanel = {
  peak_W: 100,
  tilt_deg: 0,
  heading_deg: 0,
  regulator: 'tracking',
  coefficient_pct_C: -0.4,
  leads: null,
};
const light = (onPanel_W_m2: number, cell_C: number) => ({ onPanel_W_m2, cell_C });

describe('a panel in a light', () => {
  it('gives its label less its heat: the handbook’s sum', () => {
    // sky.derate.100: 100 W at 800 W/m² and cells of 60 °C, −0.4 %/°C: 68.8 W
    expect(panelGives(panel, 12, light(800, 60)).best_W).toBeCloseTo(68.8, 9);
    expect(panelGives(panel, 12, light(1000, 25)).best_W).toBeCloseTo(100, 9);
    expect(panelGives(panel, 12, light(0, 25)).amps).toBe(0);
  });

  it('on a plain regulator gives little over its label’s amps, whatever its volts could do', () => {
    const simple = { ...panel, regulator: 'simple' } as const;
    const { amps, panel_V } = panelGives(simple, 12, light(1000, 25));
    // label: 100 W at 18 V are 5.56 A, shorted 5.94 A; held at 13.8 V it is between
    expect(amps).toBeGreaterThan(100 / 18);
    expect(amps).toBeLessThan((1.07 * 100) / 18);
    expect(panel_V).toBeCloseTo(13.8, 9);
    // cold, with tracking, there is a third more to be had; hot, nearly nothing
    const more = (cell_C: number) =>
      panelGives(panel, 12, light(1000, cell_C)).amps / panelGives(simple, 12, light(1000, cell_C)).amps;
    expect(more(5)).toBeGreaterThan(1.2);
    expect(more(70)).toBeLessThan(1.05);
  });

  it('so hot that its own volts fail gives hardly anything without tracking', () => {
    const hot = panelGives({ ...panel, regulator: 'none', coefficient_pct_C: -0.5 }, 12, light(1000, 110)).amps;
    expect(hot).toBeLessThan(0.8 * panelGives({ ...panel, regulator: 'none' }, 12, light(1000, 60)).amps);
  });

  it('loses in thin leads what Ohm says when its watts are tracked, and only volts when not', () => {
    const leads = { lengthThereAndBack_m: 12, area_mm2: 1.5 };
    // copper of 0.01724 Ω·mm²/m: 0.138 Ω; 5.56 A cost 4.26 W
    expect(leadOhms({ ...panel, leads })).toBeCloseTo(0.1379, 4);
    const far = panelGives({ ...panel, leads }, 12, light(1000, 25));
    expect(far.leads_W).toBeCloseTo(4.257, 2);
    expect(far.amps).toBeCloseTo(((100 - far.leads_W) * 0.94) / 13.4, 9);
    const plain = panelGives({ ...panel, regulator: 'simple', leads }, 12, light(1000, 25));
    expect(plain.amps).toBeGreaterThan(0.985 * panelGives({ ...panel, regulator: 'simple' }, 12, light(1000, 25)).amps);
    expect(plain.panel_V).toBeCloseTo(13.8 + plain.amps * 0.1379, 3);
  });

  it('for 24 V gives half the amps of one for 12 V', () => {
    for (const regulator of ['simple', 'tracking'] as const)
      expect(panelGives({ ...panel, regulator }, 24, light(700, 40)).amps).toBeCloseTo(
        panelGives({ ...panel, regulator }, 12, light(700, 40)).amps / 2,
        6,
      );
  });

  it('refuses a panel of no watts and light below 0', () => {
    expect(() => panelGives({ ...panel, peak_W: 0 }, 12, light(1, 25))).toThrow(/got 0 W/);
    expect(() => panelGives(panel, 12, light(-1, 25))).toThrow(/got -1 W/);
  });
});
