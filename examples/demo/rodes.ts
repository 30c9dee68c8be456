/** The invented boat's rode, and the bay it was last looked at for. */
import type { Book } from '#boat-book';

export const demoRodes: Book['rodes'] = {
  bower: {
    name: 'Bower anchor’s rode',
    zone: 'bow',
    chain: { size_mm: 6, length_m: 10 },
    rope: { fibre: 'nylon', size_mm: 10, length_m: 30 },
    bow_m: 0.75,
    windage_m2: 3,
    below_m2: 0.06,
    limit_deg: 8,
    anchorage: { depth_m: 3.5, rise_m: 1.4, fall_m: 0.6, wind_kn: 20, current_kn: 0.5 },
    path: 'rode',
    note: 'Whipped in red every 5 m.',
  },
};
