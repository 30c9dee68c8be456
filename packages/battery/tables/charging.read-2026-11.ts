/**
 * Charging voltages of 12 V batteries and how they change with the heat, by source. Source: charging.read-2026-11.source.md.
 * `at_C` is the temperature a voltage holds for.
 */
export const floatVolts = {
  note: { gel: { volts: 13.4, at_C: 20 }, agm: { volts: 13.5, at_C: 20 } },
  encyclopedia: {
    gel: { volts: 13.05, at_C: 25 },
    agm: { volts: 13.6, at_C: 25 },
    flooded: { volts: 13.4, at_C: 25 },
  },
  /** volts of one cell at 20 °C, falling by 3 mV for each °C */
  vendors: { gel: { cell: 2.265, at_C: 20 }, agm: { cell: 2.285, at_C: 20 } },
} as const;

/** Change of charging volts for each °C of the battery. [mV/°C of one cell] */
export const compensation_mV = { vendors: -3, note: -22 / 6, encyclopedia: -5 } as const;

/** Where flooded cells begin to gas, and what an equalising charge takes, 12 V battery. [V] */
export const gassing_V = 14.4;
export const equalise_V = 15;

/** LiFePO4: ends of one cell, its nominal volts, and charging volts of four. [V] */
export const lithiumLimits = { lowest_cell: 2.5, nominal_cell: 3.2, highest_cell: 3.65, charge: [14.2, 14.6] } as const;
