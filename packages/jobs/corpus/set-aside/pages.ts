import type { MarkedPage } from '../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'storyteller',
    page: `Well, we had a grand day on Sunday, wind in the south and the kids steering most of the way home, but she is starting to show her age and I promised myself I'd write it all down before I forget.

First thing, when we hoisted the main the top three slides stuck, and it took both of us hanging on the halyard to shift it. I think the track is full of salt and there's a burr about head height. Mast down, file the burr off and rinse the whole track, say an hour. If we'd had to get that sail down in a hurry somebody could have been hurt, so it goes near the top of the list.

Then the jib. The leech line has pulled out and the bottom seam has started to go, maybe a hand's width. A stitch in time and so on: an hour on the kitchen table with the machine.

My brother-in-law reckons we should get a new outboard. I don't agree, there is nothing wrong with ours that a clean carburettor won't cure. I'll do that, two hours, and while I'm at it the fuel line, which has gone sticky and is cracking by the bulb. You don't mess about with petrol, that's a fire waiting to happen, so the fuel line comes first, twenty minutes.

Coming alongside, the bow line parted. No harm done, I've knotted it and it will serve for the time being, but I should make up a new one, half an hour for the splice. I have got ten metres of twelve millimetre rope in the loft left over from the moorings.

In the cabin all was dry as dust, which pleased me no end after last year's work on the windows. The stove was a joy. One of the bunk boards has split and I slept in a hollow; glue and a batten, thirty minutes, nobody will drown of it.

The battery I don't quite trust. It said 12.1 on the meter at breakfast with nothing switched on, and it was fully charged on Saturday. I'd like to give it a load test next week and see what it's really worth.

Recovering her, the winch handle kicked. The pawl spring is weak, and I'm not having anyone wind that till it has a new spring. Half an hour. The trailer board is hanging by one screw as well. If I see a decent second-hand trailer I might change the whole thing, but that's a dream for another year.

So that's it. The keel I'll look at when she's propped up in June, and the varnish can wait until the weather's warmer, though the tiller really ought to have a coat before the muster.`,
    marks: [
      { kind: 'job', at: 'the top three slides stuck', parts: { zone: 'rig', minutes: 60, consequence: 'danger' } },
      { kind: 'job', at: 'The leech line has pulled out', parts: { minutes: 60 } },
      { kind: 'job', at: 'a clean carburettor', parts: { zone: 'transom', minutes: 120 } },
      { kind: 'job', at: 'the fuel line, which has gone sticky', parts: { minutes: 20, consequence: 'danger' } },
      { kind: 'jury rig', at: "I've knotted it and it will serve for the time being", parts: {} },
      { kind: 'job', at: 'I should make up a new one', parts: { minutes: 30 } },
      { kind: 'store', at: 'ten metres of twelve millimetre rope', parts: {} },
      {
        kind: 'job',
        at: 'One of the bunk boards has split',
        parts: { zone: 'cabin', minutes: 30, consequence: 'comfort' },
      },
      { kind: 'reading', at: 'It said 12.1 on the meter', parts: {} },
      { kind: 'job', at: 'give it a load test next week', parts: {} },
      { kind: 'job', at: 'The pawl spring is weak', parts: { zone: 'trailer', minutes: 30 } },
      { kind: 'job', at: 'The trailer board is hanging by one screw', parts: { zone: 'trailer' } },
      { kind: 'job', at: "The keel I'll look at", parts: { zone: 'bottom' } },
      { kind: 'job', at: 'the tiller really ought to have a coat', parts: { fitting: 'tiller', outing: 'muster' } },
    ],
  },
  {
    name: 'two of us',
    page: `Walk round with Pip holding the list, Saturday morning, cold but bright.

Pip says the lifelines are slack and she's right, retension both sides, fifteen minutes. The stanchion base by the port gate rocks. Two of its four screws just spin. Needs bolts right through and a backing plate, and a hand inside the cabin to hold the nuts, an hour, it's a man overboard waiting to happen.

Bow roller, no complaints. Anchor well lid has lost its catch, so we've tied it shut with cord for the time being, fine up to fifteen knots or so but not for towing. New catch ten minutes once it comes. It is ordered.

On the foredeck there's crazing round the mooring cleat but it hasn't moved since I drew a pencil line round it in the autumn, so leave that.

Forestay fitting: hairline at the top of the tang? Hmm. Not sure. Clean it up and have a look with the glass and some dye, twenty minutes, before anybody sails her. If it is a crack she can't go out.

The mast. Spreader end tape gone on both sides, ten minutes. Burgee halyard missing altogether, whatever. VHF aerial joint wants remaking with the mast down, forty minutes.

Windows, the aft one to port drips. Take it out and rebed it with butyl. Two hours, dry, over ten degrees. We'd better do that before the night on the estuary or my bunk gets it again. There's half a roll of butyl in the locker under the stove.

Electrics: volts twelve point seven first thing, nothing on, panel still in the dark. Panel lead is chafing where it comes through the deck. Sleeve it and seal the gland, half an hour, it'll only get worse. No fuse on the battery lead that I can find!! That's a fire risk, fit one at the battery, forty minutes, this weekend if I can get one. So: buy one fuse holder and a thirty amp fuse.

Toilet's fine. Don't mention the curtains.

Cockpit seats were painted last month, they still want a second coat, an hour, when it's above twelve. Mainsheet cam cleat won't grip, change the springs, fifteen minutes.

Rudder blade has a soft spot near the tip, so dry it out for a week in the garage and then fill it, forty minutes hands on. Pintle bolts tight.

Outboard: water pump tell-tale is just a dribble. New impeller, an hour. Oil is due too, change it, half an hour.

Trailer. Nearside mudguard cracked, bodged with cable ties to get home. New one needed. Bearings done in March. Bow snubber perished, new rubber, ten minutes.`,
    marks: [
      { kind: 'job', at: 'the lifelines are slack', parts: { minutes: 15 } },
      { kind: 'job', at: 'The stanchion base by the port gate rocks', parts: { minutes: 60, consequence: 'danger' } },
      { kind: 'jury rig', at: "we've tied it shut with cord for the time being", parts: { zone: 'bow' } },
      { kind: 'job', at: 'New catch ten minutes', parts: { minutes: 10 } },
      { kind: 'job', at: 'Forestay fitting: hairline', parts: { zone: 'bow', fitting: 'forestay', minutes: 20 } },
      { kind: 'job', at: 'Spreader end tape gone', parts: { zone: 'rig', minutes: 10 } },
      { kind: 'job', at: 'VHF aerial joint wants remaking', parts: { zone: 'rig', minutes: 40 } },
      { kind: 'job', at: 'the aft one to port drips', parts: { zone: 'cabin', minutes: 120, outing: 'estuary' } },
      { kind: 'store', at: 'half a roll of butyl', parts: {} },
      { kind: 'reading', at: 'volts twelve point seven', parts: {} },
      { kind: 'job', at: 'Panel lead is chafing', parts: { zone: 'decks', minutes: 30, consequence: 'worsens' } },
      {
        kind: 'job',
        at: 'No fuse on the battery lead',
        parts: { zone: 'cabin', minutes: 40, consequence: 'danger', due: '2027-04-11' },
      },
      { kind: 'store', at: 'buy one fuse holder', parts: {} },
      { kind: 'job', at: 'they still want a second coat', parts: { zone: 'cockpit', minutes: 60 } },
      { kind: 'job', at: "Mainsheet cam cleat won't grip", parts: { minutes: 15 } },
      { kind: 'job', at: 'Rudder blade has a soft spot', parts: { zone: 'transom', minutes: 40 } },
      { kind: 'job', at: 'water pump tell-tale is just a dribble', parts: { zone: 'transom', minutes: 60 } },
      { kind: 'job', at: 'Oil is due too', parts: { zone: 'transom', minutes: 30 } },
      { kind: 'jury rig', at: 'bodged with cable ties to get home', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'New one needed', parts: { zone: 'trailer' } },
      { kind: 'job', at: 'Bow snubber perished', parts: { zone: 'trailer', minutes: 10 } },
    ],
  },
  {
    name: 'slow hand',
    page: `now let me think um its a bit damp today so I am only looking not doing anything

the cover has split along the ridge about so long sew it up before the wind gets in it that's uh two hours at the bench and it wants doing this week I'd say

under the cover on the foredeck there is water lying round the mast step and I don't like it so pull the step and rebed it mast down obviously an hour and a half it'll rot the core otherwise

the port shroud plate I did in March and it is still tight so thats good

what about the ropes well the main halyard is stiff as a poker but sound enough wash it the jib sheets they are finished new sheets ten metres each so put ten and ten that's twenty metres of ten millimetre on the list to buy

er the reefing hook on the gooseneck has opened up bend it back or better get a new one twenty minutes because you cannot reef her like that and she's not safe without a reef

in the cabin theres mould on the headlining wash it down with something half an hour just to be comfortable and leave the hatch open I opened it already the bilge was dry I sponged it

the battery well I put the meter on it and it said eleven nine hm no sorry it said twelve nine that was with the charger still on

oh and the switch for the navigation lights is held in with a matchstick that's temporary I must get a new switch it takes me about an hour to get my hands behind that panel and you have to have lights by law

board next I winched it up and down it goes like butter since the new sheave so nothing there except that the pendant has a flat spot where it turns so renew the pendant forty minutes propped up or lying on the trailer I don't know

then the rudder the gudgeon screws are loose at the bottom take them out plug the holes with epoxy thirty minutes leave it to go off overnight then screw it back twenty minutes dont go out till that is done

what else the outboard needs a service before may two hours I have got the plugs already they are in the tool box and the oil

trailer winch is greased lights are okay the handbrake I couldn't pull it up so adjust it half an hour before the next tow its the law

and that will do me for this year I think`,
    marks: [
      { kind: 'job', at: 'the cover has split along the ridge', parts: { minutes: 120, due: '2027-04-11' } },
      { kind: 'job', at: 'water lying round the mast step', parts: { minutes: 90, consequence: 'worsens' } },
      { kind: 'job', at: 'the main halyard is stiff as a poker', parts: { zone: 'rig' } },
      { kind: 'job', at: 'the jib sheets they are finished', parts: {} },
      { kind: 'store', at: 'twenty metres of ten millimetre', parts: {} },
      {
        kind: 'job',
        at: 'the reefing hook on the gooseneck has opened up',
        parts: { zone: 'rig', minutes: 20, consequence: 'danger' },
      },
      { kind: 'job', at: 'mould on the headlining', parts: { zone: 'cabin', minutes: 30, consequence: 'comfort' } },
      { kind: 'reading', at: 'it said twelve nine', parts: {} },
      { kind: 'jury rig', at: 'the switch for the navigation lights is held in with a matchstick', parts: {} },
      { kind: 'job', at: 'I must get a new switch', parts: { minutes: 60, consequence: 'unlawful' } },
      { kind: 'job', at: 'the pendant has a flat spot', parts: { zone: 'case', minutes: 40 } },
      {
        kind: 'job',
        at: 'the gudgeon screws are loose',
        parts: { zone: 'transom', minutes: 30, consequence: 'stops-sailing' },
      },
      { kind: 'job', at: 'the outboard needs a service', parts: { zone: 'transom', minutes: 120, due: '2027-04-30' } },
      { kind: 'store', at: 'I have got the plugs already', parts: {} },
      {
        kind: 'job',
        at: "the handbrake I couldn't pull it up",
        parts: { zone: 'trailer', minutes: 30, consequence: 'unlawful' },
      },
    ],
  },
];
