/** Where measured sun was measured: as a README beside the files says it, else from memory of the lists of stations. */

export interface StationPlace {
  readonly latitude_deg: number;
  /** east positive */
  readonly longitude_deg: number;
  readonly elevation_m: number;
  /** what the README says of the sky, where it is one day; null: nothing */
  readonly skyTold: string | null;
}

/**
 * The places in the tables of a README: rows of a file's name, the place's name, `37.70 N, 105.92 W, 2317 m`, the day, the sky.
 */
export function stationsToldIn(text: string): Map<string, StationPlace> {
  const found = new Map<string, StationPlace>();
  for (const line of text.split(/\r?\n/)) {
    const where = /([\d.]+)\s*°?\s*([NS])\s*,\s*([\d.]+)\s*°?\s*([EW])\s*,\s*(-?[\d.]+)\s*m\b/.exec(line);
    if (!where || !line.trim().startsWith('|')) continue;
    const cells = line.split('|').map((cell) => cell.replaceAll('`', '').trim());
    const [latitude, ns, longitude, ew, elevation] = where.slice(1) as [string, string, string, string, string];
    for (const file of cells[1]!.split(/\s*,\s*|\s+and\s+/))
      found.set(file, {
        latitude_deg: Number(latitude) * (ns === 'S' ? -1 : 1),
        longitude_deg: Number(longitude) * (ew === 'W' ? -1 : 1),
        elevation_m: Number(elevation),
        skyTold: cells[5] || null,
      });
  }
  return found;
}

/** From memory of the lists of stations; a README beside the files goes before. */
const remembered: readonly (readonly [RegExp, Omit<StationPlace, 'skyTold'>])[] = [
  [/EUPO|\b94255\b/, { latitude_deg: 44.05, longitude_deg: -123.07, elevation_m: 150 }],
  [/rmis|bms/i, { latitude_deg: 39.742, longitude_deg: -105.18, elevation_m: 1829 }],
  [/Global PSP.*@ 80m/, { latitude_deg: 39.91, longitude_deg: -105.235, elevation_m: 1855 }],
];

export function stationsFromMemory(named: string): StationPlace | null {
  const found = remembered.find(([pattern]) => pattern.test(named));
  return found ? { ...found[1], skyTold: null } : null;
}
