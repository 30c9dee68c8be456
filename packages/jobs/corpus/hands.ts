/** All marked pages, by the hand that wrote and marked them. */
import type { MarkedPage } from './marked.ts';
import { pagesByAnother } from './open/by-another-hand.ts';
import { fifthPages } from './open/fifth-pages.ts';
import { fifthStranger } from './open/fifth-stranger/all.ts';
import { fourthPages } from './open/fourth-pages.ts';
import { fourthStranger } from './open/fourth-stranger/all.ts';
import { morePages } from './open/more-pages.ts';
import { pages as firstPages } from './open/pages.ts';
import { secondStranger } from './open/second-stranger/all.ts';
import { sixthPages } from './open/sixth-pages.ts';
import { sixthStranger } from './open/sixth-stranger/all.ts';
import { thirdPages } from './open/third-pages.ts';
import { thirdStranger } from './open/third-stranger/all.ts';
import { pages as firstAside } from './set-aside/pages.ts';
import { pages as secondAside } from './set-aside-2/pages.ts';
import { pages as thirdAside } from './set-aside-3/pages.ts';
import { pages as fourthAside } from './set-aside-4/pages.ts';

export const hands: Readonly<Record<string, readonly MarkedPage[]>> = {
  'the first': [...firstPages, ...morePages, ...thirdPages, ...firstAside],
  another: [...pagesByAnother, ...secondAside],
  'fourth-pages': fourthPages,
  'fifth-pages': fifthPages,
  'set-aside-3': thirdAside,
  'set-aside-4': fourthAside,
  'sixth-pages': sixthPages,
  'second-stranger': secondStranger,
  'third-stranger': thirdStranger,
  'fourth-stranger': fourthStranger,
  'fifth-stranger': fifthStranger,
  'sixth-stranger': sixthStranger,
};
