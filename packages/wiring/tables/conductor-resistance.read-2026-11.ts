/**
 * Greatest DC resistance of a copper conductor at 20 °C in Ω/km by nominal area in mm² (IEC 60228:2004 tables 2 and 3), and
 * the circular-mil areas of boat cable by gauge. Source: conductor-resistance.read-2026-11.source.md.
 */
export interface PrintedRow {
  readonly size: number | string;
  /** column and figure read in stored pages */
  readonly found: Readonly<Record<string | number, number>>;
  /** column and figure recalled, not seen: the standard decides */
  readonly recalled: Readonly<Record<string | number, number>>;
}

// biome-ignore format: one printed line, one line here
export const iecResistance: readonly PrintedRow[] = [
  { size: 0.5, found: { 'class2 plain': 36, 'class2 tinned': 36.7, 'class5 plain': 39, 'class5 tinned': 40.1 }, recalled: {} },
  { size: 0.75, found: { 'class2 plain': 24.5, 'class5 tinned': 26.7 }, recalled: { 'class2 tinned': 24.8, 'class5 plain': 26 } },
  { size: 1, found: { 'class2 plain': 18.1, 'class2 tinned': 18.2, 'class5 tinned': 20 }, recalled: { 'class5 plain': 19.5 } },
  { size: 1.5, found: { 'class2 plain': 12.1, 'class5 plain': 13.3, 'class5 tinned': 13.7 }, recalled: { 'class2 tinned': 12.2 } },
  { size: 2.5, found: { 'class2 plain': 7.41, 'class2 tinned': 7.56, 'class5 plain': 7.98, 'class5 tinned': 8.21 }, recalled: {} },
  { size: 4, found: { 'class2 tinned': 4.7, 'class5 plain': 4.95 }, recalled: { 'class2 plain': 4.61, 'class5 tinned': 5.09 } },
  { size: 6, found: { 'class2 plain': 3.08, 'class2 tinned': 3.11, 'class5 plain': 3.3, 'class5 tinned': 3.39 }, recalled: {} },
  { size: 10, found: { 'class2 plain': 1.83, 'class5 tinned': 1.95 }, recalled: { 'class2 tinned': 1.84, 'class5 plain': 1.91 } },
  { size: 16, found: { 'class2 plain': 1.15, 'class5 plain': 1.21, 'class5 tinned': 1.24 }, recalled: { 'class2 tinned': 1.16 } },
  { size: 25, found: { 'class2 plain': 0.727, 'class5 plain': 0.78, 'class5 tinned': 0.795 }, recalled: { 'class2 tinned': 0.734 } },
  { size: 35, found: {}, recalled: { 'class2 plain': 0.524, 'class2 tinned': 0.529, 'class5 plain': 0.554, 'class5 tinned': 0.565 } },
  { size: 50, found: {}, recalled: { 'class2 plain': 0.387, 'class2 tinned': 0.391, 'class5 plain': 0.386, 'class5 tinned': 0.393 } },
  { size: 70, found: {}, recalled: { 'class2 plain': 0.268, 'class2 tinned': 0.27, 'class5 plain': 0.272, 'class5 tinned': 0.277 } },
  { size: 95, found: {}, recalled: { 'class2 plain': 0.193, 'class2 tinned': 0.195, 'class5 plain': 0.206, 'class5 tinned': 0.21 } },
  { size: 120, found: {}, recalled: { 'class2 plain': 0.153, 'class2 tinned': 0.154, 'class5 plain': 0.161, 'class5 tinned': 0.164 } },
  { size: 150, found: {}, recalled: { 'class2 plain': 0.124, 'class2 tinned': 0.126, 'class5 plain': 0.129, 'class5 tinned': 0.132 } },
];

// biome-ignore format: one printed line, one line here
export const boatCable_cmil: readonly PrintedRow[] = [
  { size: '18', found: { area: 1600 }, recalled: {} },
  { size: '16', found: { area: 2600 }, recalled: {} },
  { size: '14', found: { area: 4100 }, recalled: {} },
  { size: '12', found: { area: 6500 }, recalled: {} },
  { size: '10', found: { area: 10500 }, recalled: {} },
  { size: '8', found: {}, recalled: { area: 16800 } },
  { size: '6', found: {}, recalled: { area: 26600 } },
  { size: '4', found: { area: 42000 }, recalled: {} },
  { size: '2', found: {}, recalled: { area: 66500 } },
  { size: '1', found: {}, recalled: { area: 83690 } },
  { size: '1/0', found: {}, recalled: { area: 105600 } },
  { size: '2/0', found: {}, recalled: { area: 133100 } },
  { size: '3/0', found: {}, recalled: { area: 167800 } },
  { size: '4/0', found: {}, recalled: { area: 211600 } },
];
