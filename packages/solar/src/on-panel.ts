import { assumedGroundShare, cellTemperature_C, lightOnPlane } from '#sky';
import type { ClearMoment } from './clear-day.ts';
import { assumedOfPanels, type SolarPanel } from './solar-panel.ts';

type Slope = Pick<SolarPanel, 'tilt_deg' | 'heading_deg'>;
/** Water round the boat. */
const groundShare = assumedGroundShare.water;

/** Light on a panel under a clear sky, the bright part round the sun counted with the sun. [W/m²] */
export const clearOnPanel_W_m2 = ({ tilt_deg, heading_deg }: Slope, moment: ClearMoment): number =>
  lightOnPlane(moment, { ...moment, slope: tilt_deg, facing: heading_deg, groundShare }, 'Hay and Davies').total_W_m2;

/** Light on a panel when all the clear sky's light comes from everywhere alike. [W/m²] */
export const evenOnPanel_W_m2 = ({ tilt_deg, heading_deg }: Slope, moment: ClearMoment): number =>
  lightOnPlane(
    { global_W_m2: moment.global_W_m2, beam_W_m2: 0, diffuse_W_m2: moment.global_W_m2 },
    { ...moment, slope: tilt_deg, facing: heading_deg, groundShare },
    'even',
  ).total_W_m2;

/** Cells of a panel that lies on a deck. [°C] */
export const cellHeat_C = (air_C: number, onPanel_W_m2: number): number =>
  cellTemperature_C(Math.min(2000, onPanel_W_m2), air_C, assumedOfPanels.operatingCell_C);
