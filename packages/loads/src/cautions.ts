/** What can hurt when something pulls, by the work. */
export const cautions = {
  under: 'Nobody stands, kneels or reaches under a load that hangs on this, nor in line with it.',
  recoil: 'Stretched rope and wire throw back when something lets go: stand out of the line, and out of the bight.',
  winch:
    'Hands and sleeves away from drum, sheave and lead; keep a thumb on the same side of the handle as the fingers.',
  slip: 'Hold the load on a pawl, a cleat or a pin, not by hand and not by friction. A crank let go spins: face and hands out of its circle.',
  persons: 'Never lift a person on this. A bosun’s chair wants gear made and marked for people, and a second line.',
  guidance:
    'Guidance only: what is marked on the gear and the maker’s sheet win, and a rigger who has it in his hands decides. Figures marked recalled were not read again.',
} as const;
