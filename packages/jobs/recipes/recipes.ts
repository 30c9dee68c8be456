/** Every recipe of the house, by id. */
import { boardAndRudder } from './board-and-rudder.ts';
import { cabinAndSeasons } from './cabin-and-seasons.ts';
import { electrics } from './electrics.ts';
import { groundTackle } from './ground-tackle.ts';
import { hullAndDeck } from './hull-and-deck.ts';
import { outboard } from './outboard.ts';
import { paintAndVarnish } from './paint-and-varnish.ts';
import { runningRigging } from './running-rigging.ts';
import { safetyGear } from './safety-gear.ts';
import { sailsAndCovers } from './sails-and-covers.ts';
import { standingRigging } from './standing-rigging.ts';
import { throughHulls } from './through-hulls.ts';
import { trailer } from './trailer.ts';
import { recipesOf } from './writing.ts';

export const recipes = recipesOf({
  ...groundTackle,
  ...standingRigging,
  ...runningRigging,
  ...sailsAndCovers,
  ...boardAndRudder,
  ...hullAndDeck,
  ...throughHulls,
  ...paintAndVarnish,
  ...electrics,
  ...trailer,
  ...outboard,
  ...safetyGear,
  ...cabinAndSeasons,
});
