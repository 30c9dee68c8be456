import type { Lexicon } from './read-line-parts.ts';
import { readWalkRound } from './read-walk-round.ts';

/** Talk of our own, with a word of every sort that the reader looks for. */
const talk = [
  'Right, started at the bow this morning, about half past nine, light wind and dry for once.',
  'The anchor shackle is worn, I shall replace it with an 8 mm one, ten minutes.',
  'Forward hatch leaks at the port corner; I put tape over it for now, until I get new sealant.',
  'It wants taking off, cleaning up and rebedding, an hour and a half, dry, above 10 degrees.',
  'Need 2 tubes of sealant, a packet of split pins and 3 m of 6 mm rope.',
  'The mast is still down, so the masthead light can be rewired and the sheave greased at the same time.',
  'Starboard shroud plate weeps when it rains; the deck round it may be soft.',
  'Last year I painted the topsides and they are fine, nothing to do there.',
  'Battery read 12.4 volts at seven before the sun was on the panel, 12.62 V after an hour at rest.',
  'Check the gas hose, it is out of date on the label, that is dangerous and against the law.',
  'Somebody should look at the rudder: the pintle has a crack and the tiller is loose.',
  'I lashed the gate with cord, a jury rig good for a couple of sails in under 15 knots, not on the road.',
  'Next week, if it stays dry, sand the coamings and give them two coats of varnish, overnight between coats.',
  'Before the trip on Saturday the trailer bearings must be greased and the tyre pressure looked at.',
  'The outboard will not start, a new plug and fresh fuel, twenty minutes, and flush it afterwards.',
  'Keel bolts sound, bilge dry, seacock turns, hoses and clips good.',
  'Somewhere there is a wire chafed through behind the panel, the fuse blew twice, I will trace it with my brother.',
  'The washboard split; glue it with epoxy, clamp it till tomorrow, then two more screws.',
  'It cost 45 in the shop, I ordered one already and it comes on the 14th of May.',
  'Some day I would like cushions in the cabin, but that is no hurry, maybe in winter.',
  'Halyard frayed at the splice: end for end it or buy a new one, 12 m long, polyester.',
  'Still to do: sail to the sailmaker, stitching along the leech, three small holes to patch.',
  'No more gelcoat chips than before, I filled the big one, rub it down and polish it when it has cured.',
  'The winch is stiff, strip it, clean it in paraffin, oil the pawls, thirty to forty minutes, bench at home.',
  'The window seal has perished; cut it out, fit a new gasket, mask, prime and press it home.',
  'Navigation light at the stern is dead, bulb or corroded contacts, must work before dark.',
  'Bolts of the cleat are loose, nuts and washers under the deck, tighten them with thread locker.',
  'Hull: scrub off the weed, scrape the flakes, one coat of antifouling, launch within two days.',
  'Flares run out in June, fire extinguisher needs a new gauge reading, life jackets are due a service.',
  'I do not think the board wire will last; broken strands at the ferrule, renew it before we go again.',
  'Shopping: split pins, a tin of varnish and some hose clips; run out of tape as well, pick up two rivets.',
  'okay so cockpit now the tiller joint is loose but it still works that is only the surface so leave it be and then the bilge pump hums and nothing comes out so take that off and see what it wants half an hour new impeller probably for the time being we use the bucket',
  'One. Forestay. The man at the club says renew it, he would; it gets done before June and goes to the rigger, I want it looked at.',
  'Rubber band round it, still tied with a bootlace, a rag stuffed in the hole to stop it rattling; put a strap on to hold it shut.',
] as const;

/**
 * Reads a page of talk a sentence at a time, to nothing: what the reader makes at its first use is then made. A page of 2,000
 * words, read first, takes three times as long as one read after this. Each step takes some hundredths of a second, the first a tenth.
 */
export function* primeReader(lexicon: Lexicon): Generator<void, void, void> {
  for (const sentence of talk) {
    readWalkRound(sentence, lexicon);
    yield;
  }
  readWalkRound(talk.join(' '), lexicon);
}
