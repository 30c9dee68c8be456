/** An outing in a line: when, for how long, where, who goes, and in what wind. */
import type { Outing } from '#boat-book';
import { countInWords, dayInWords, daysAway } from '../../parts/in-words.ts';

/** 'Saturday 5 December 09:00, in 9 days · 2 nights · the bar · alone · 8 to 14 knots expected, gusts 20' */
export const outingInWords = (outing: Outing, today: string): string => inParts(outing, today, true);

/** The same on paper, which is read on another day than it was printed. */
export const outingOnPaper = (outing: Outing, today: string): string => inParts(outing, today, false);

function inParts(outing: Outing, today: string, away: boolean): string {
  return [
    `${dayInWords(outing.date, today)} ${outing.from}${away ? `, ${daysAway(outing.date, today)}` : ''}`,
    outing.way === 'road' ? 'on the road only' : '',
    outing.nights > 0 ? countInWords(outing.nights, 'night') : '',
    outing.place,
    crewInWords(outing),
    windInWords(outing),
  ]
    .filter((words) => words !== '')
    .join(' · ');
}

/** 'alone', '3 aboard'; empty where nobody said. */
const crewInWords = ({ crew = null, way }: Outing): string =>
  crew === null ? '' : crew === 1 ? 'alone' : `${crew} ${way === 'road' ? 'go' : 'aboard'}`;

/** '8 to 14 knots expected, gusts 20'; what was not written down is said so. */
function windInWords({ windLeast_kn = null, wind_kn, gust_kn = null }: Outing): string {
  const steady =
    wind_kn === null
      ? ''
      : `${windLeast_kn === null || windLeast_kn === wind_kn ? wind_kn : `${windLeast_kn} to ${wind_kn}`} knots expected`;
  const gusts = gust_kn === null ? '' : `gusts ${gust_kn}${wind_kn === null ? ' knots' : ''}`;
  return steady === '' && gusts === '' ? 'no wind written down' : [steady, gusts].filter(Boolean).join(', ');
}
