import { cellTemperature_C, groundLight_W_m2, lightOnPlane, type Sunlight, shareOfSky } from '#sky';
import { assumedOfPanels, type SolarPanel } from './solar-panel.ts';

/** Assumed: light that the water round a boat throws back; more when the sun is low. [0–1] */
const assumedThrownBack = 0.06;

/** The sun over a panel at a moment. */
export interface SunOver {
  readonly zenith: number;
  readonly azimuth: number;
  readonly outside_W_m2: number;
}

/** Light on a panel under a clear sky, the bright part round the sun counted with the sun (Hay and Davies). [W/m²] */
export function clearOnPanel_W_m2(
  { tilt_deg, heading_deg }: Pick<SolarPanel, 'tilt_deg' | 'heading_deg'>,
  light: Sunlight,
  { zenith, azimuth, outside_W_m2 }: SunOver,
): number {
  return lightOnPlane(
    light,
    { zenith, azimuth, slope: tilt_deg, facing: heading_deg, groundShare: assumedThrownBack, outside_W_m2 },
    'Hay and Davies',
  ).total_W_m2;
}

/** Light on a panel from a sky that is alike all over. [W/m²] @param global_W_m2 on the level */
export const evenOnPanel_W_m2 = ({ tilt_deg }: Pick<SolarPanel, 'tilt_deg'>, global_W_m2: number): number =>
  global_W_m2 * shareOfSky(tilt_deg) + groundLight_W_m2(global_W_m2, tilt_deg, assumedThrownBack);

/** Cells of a panel that lies on a deck. [°C] */
export const cellHeat_C = (air_C: number, onPanel_W_m2: number): number =>
  cellTemperature_C(Math.min(2000, onPanel_W_m2), air_C, assumedOfPanels.operatingCell_C);
