/** Molar gas constant. [J/(mol·K)], CODATA 2018, exact since 2019 (from memory) */
const R_J_molK = 8.314462618;
const absolute_K = (t_C: number) => t_C + 273.15;

/**
 * Time a reaction takes at a temperature, from its time at another, where its rate doubles every so many degrees.
 *
 * @param time         at the reference; the result is in the same unit. > 0
 * @param reference_C  [°C]
 * @param at_C         [°C]
 * @param doublesPer_C [°C], > 0; 10 is the usual rule
 */
export function timeAtTemperature(time: number, reference_C: number, at_C: number, doublesPer_C: number): number {
  if (!(doublesPer_C > 0)) throw new RangeError(`the rate must double within more than 0 °C, got ${doublesPer_C}`);
  return time * 2 ** ((reference_C - at_C) / doublesPer_C);
}

/**
 * How many times faster a reaction runs at one temperature than at another, by Arrhenius.
 *
 * @param energy_kJ_mol activation energy. [kJ/mol]
 * @param from_C        [°C], above −273.15
 * @param to_C          [°C], above −273.15
 */
export function rateRatio(energy_kJ_mol: number, from_C: number, to_C: number): number {
  return Math.exp(((energy_kJ_mol * 1000) / R_J_molK) * (1 / absolute_K(from_C) - 1 / absolute_K(to_C)));
}

/** Activation energy that makes a reaction run `ratio` times faster at `to_C` than at `from_C`. [kJ/mol] */
export function activationEnergy_kJ_mol(ratio: number, from_C: number, to_C: number): number {
  if (!(ratio > 0) || from_C === to_C)
    throw new RangeError(`two temperatures and a ratio over 0 are needed, got ${ratio} from ${from_C} to ${to_C} °C`);
  return (Math.log(ratio) * R_J_molK) / (1 / absolute_K(from_C) - 1 / absolute_K(to_C)) / 1000;
}
