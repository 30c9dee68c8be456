import type { NotLooked } from '#fit-to-go';
import { daysBetween, localAt } from '#units';
import { dayInWords } from '../when-in-words.ts';
import type { Beside } from './beside.ts';
import type { OutingMatter } from './job-remedy.ts';
import { outingWeather } from './outing-weather.ts';

/** What the book says of the weather of its days, how old that is, and whether it blows more than was written down. */
export function weatherFindings({ book, outing, time }: OutingMatter): Beside {
  const morning: NotLooked = {
    subject: 'weather',
    words: 'fog, thunder, sea and tide',
    because: 'the book holds wind, rain and air only: look at the forecast before you go, and again in the morning',
  };
  const weather = outingWeather(book, outing);
  if (weather === null)
    return {
      findings: [],
      notLooked: [
        { subject: 'weather', words: 'the weather of its days', because: 'none is in the book yet' },
        morning,
      ],
    };
  const { hours, unknown, place, oldest } = weather;
  const wet = hours.filter(({ entry }) => entry.rain).length;
  const winds = hours.map(({ entry }) => entry.wind_kn);
  const [least, most] = [Math.min(...winds), Math.max(...winds)];
  const written = outing.gust_kn ?? outing.wind_kn;
  const more = written !== null && most > written && !time.byRoad;
  const entered = localAt(Date.parse(oldest), time.zone).day;
  const days = daysBetween(entered, time.today);
  const age = days <= 0 ? 'put in today' : `${days} ${days === 1 ? 'day' : 'days'} old`;
  const blows = least === most ? `${most} knots` : `${least} to ${most} knots`;
  return {
    findings: [
      {
        id: 'weather.book',
        subject: 'weather',
        bearing: more ? 'condition' : 'sound',
        words: more
          ? `It may blow ${most} knots, and ${written} are written down for it`
          : `${blows}, rain in ${wet} of ${hours.length} hours, ${age}`,
        because: [
          {
            words: `${blows} and rain in ${wet} of the ${hours.length} hours that are known, for ${book.places[place]!.name}; the oldest of it is ${age}.`,
            from: entered,
          },
          ...(unknown === 0
            ? []
            : [
                {
                  words: `Of ${unknown} of its hours from ${dayInWords(outing.date)} ${outing.from} on nothing is known.`,
                  from: null,
                },
              ]),
          ...(more ? [{ words: 'Her gear was looked at under the stronger of the two.', from: null }] : []),
        ],
        remedies: more
          ? [
              {
                words: 'Look at a newer forecast, and write down what you mean to sail in.',
                minutes: null,
                waits: '',
                inHand: true,
                inTime: null,
                leaves: 'nothing',
                of: null,
              },
            ]
          : [],
        cautions: [],
        of: { collection: 'weather', id: place },
      },
    ],
    notLooked: [
      ...(unknown === 0
        ? []
        : [
            {
              subject: 'weather' as const,
              words: `the weather of ${unknown} of its hours`,
              because: 'none is in the book yet',
            },
          ]),
      morning,
    ],
  };
}
