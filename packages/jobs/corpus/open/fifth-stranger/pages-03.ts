import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'talking while sanding',
    page: `right you can hear the sandpaper that's me on the washboards I'm nearly through with them one more coat tonight and they're finished so you don't need to write washboards down, write down the slide they go in because the left hand slide has got a split right down it and the bottom board jams so that I have to make up new out of the mahogany that's leaning behind the boiler three hours with the router and it should be bedded in something flexible not stiff glue because of the sun I've seen it happen they go off like a pistol, my father in law had one go off like a pistol in the middle of a christening, what was I saying oh yes at the moment there's a lolly stick jammed in the split to stop it closing up and that's how the board goes in at all the lolly stick was strawberry. the coaming's nice I'm pleased with the coaming. the cleats on it are nice. the winch on the right wants nothing, the winch on the left I thought wanted nothing but it spins both ways now which a winch shouldn't so the pawl springs have gone, new springs in, twenty minutes if I don't drop one overboard and I will drop one overboard so I'd better buy four. I've heard you can do it with a bit of pen spring or a bit of guitar string, don't believe it, somebody told me that who walks with a stick now. what's the time. she wants to eat at six on the dot since she started that class. the bilge pump handle has been tied to the bulkhead with a bootlace since the clip snapped last june and I quite like it there to be honest it's handier, that can stay a bootlace for good as far as I care`,
    marks: [
      { kind: 'job', at: 'I have to make up new out of the mahogany', parts: { minutes: 180 } },
      { kind: 'jury rig', at: "there's a lolly stick jammed in the split", parts: {} },
      { kind: 'job', at: 'new springs in, twenty minutes', parts: { zone: 'cockpit', minutes: 20 } },
      { kind: 'store', at: "I'd better buy four", parts: {} },
    ],
  },
  {
    name: 'phoning from the slip',
    page: `hello it's me I've pulled her out and she's dripping and I've got a quarter of an hour before they want the ramp so quickly, the bottom has come up better than I thought only a bit of weed round the case and that's scrubbed off already, and the keel band hasn't moved, but there's one thing there's a gouge on the port side right by the waterline where we sat on that stone in the night and it's through to the mat I could see the glass hairs sticking out, I've slapped a patch of that silver tape over it to keep the wet from getting further in while she stands, so it must dry and then be ground back and filled and coated, the whole lot, I'd put two hours and two evenings, and it's not to be put off because the frost gets in, you weren't here the year the frost got in to the blue dinghy, it was like puff pastry. and the slot rubbers are coming away at the back, one's trailing behind like a bootlace, glue that back with contact glue forty minutes when she's up on props because you can't reach lying on your face, well you can but you only do that once. the outboard was a darling. went first time and ran all the way home and the telltale squirted. I rinsed it through in the tank. rudder came off all right, sails are dry and bagged, somebody at the top asked if she was for sale and I said only if you take my wife as well, sorry. what else. battery says eleven nine but that's with the pump having run all night I'd not fret about that plug it in and have a look tomorrow. I don't think there's a thing wrong with the battery it's two years old. okay they're hooting I'll ring from the road`,
    marks: [
      { kind: 'jury rig', at: "I've slapped a patch of that silver tape over it", parts: {} },
      { kind: 'job', at: 'it must dry and then be ground back and filled and coated', parts: { minutes: 120 } },
      {
        kind: 'job',
        at: 'glue that back with contact glue',
        parts: { minutes: 40, setUps: { boat: 'propped' } },
      },
      { kind: 'reading', at: 'battery says eleven nine', parts: {} },
      { kind: 'job', at: 'plug it in and have a look tomorrow', parts: {} },
    ],
  },
  {
    name: 'what sealant is for',
    page: `Let me say something about sealant. It isn't glue, it isn't filler, and it isn't a substitute for thinking. If a fitting leaks, you take the fitting off, you clean both faces until you could eat from them, and you put it back with a ring of something soft round each bolt. What you don't do is what the last owner did, which was go round the outside of everything with a tube of bathroom white, like icing.

I've spent five years taking that off. The stanchion bases are done. So are the forehatch, the compass and the pulpit feet. Each was dry afterwards, and two of them had never seen any bedding at all.

The last is the starboard shroud plate. It's dry on the face of it, but I had the lining down, and the wood round the bolts is grey. So that plate has to come up as well, and the holes be reamed and plugged with resin before it's bedded. Half a day, and the mast must be off her. Whoever helps me had better like tea.

There's a leak over my own bunk too, and I know what you'll say. It's a screw hole from some old fan. I've pressed a lump of candle wax into it, and it hasn't dripped on my nose since Monday. Wax softens in June, though. A dowel and a dab of paint: ten minutes, and I keep meaning to.

You could argue for doing the windows while one is at it. I was told last year by a very confident young man that I must. But they don't leak. If a window doesn't leak, leave it in peace, that's the second half of the sermon.

We go to my sister's for the weekend, so none of it before Tuesday.`,
    marks: [
      {
        kind: 'job',
        at: 'So that plate has to come up as well',
        parts: { fitting: 'plate-stbd', setUps: { mast: 'down' } },
      },
      { kind: 'jury rig', at: "I've pressed a lump of candle wax into it", parts: { zone: 'cabin' } },
      { kind: 'job', at: 'A dowel and a dab of paint', parts: { minutes: 10 } },
    ],
  },
  {
    name: 'lights and wires',
    page: `I do the electrics because nobody else will. I've had four boats, and I've rewired all four, and each time I swore it was the last.

This one I rewired in the winter of the long strike, tinned cable throughout, every wire with a number on it. I'm rather vain about it. So when the stern light went out last week I could go straight to number eleven and follow it aft, and there, under the locker, it had been nipped by the lid. Three strands left out of thirty. I've twisted it together and wound it up with tape so there'd be a light for the trip back. That's a thing I'd shout at anyone else for. It needs a new length with soldered joints, from the panel to the lamp, and some conduit where it passes the hinge. One hour.

The bow light I checked at the same time and it's good.

Panel: the fuse for the pump is the wrong size, twenty where it should be five. I expect my nephew did that. A five goes in. I haven't any, so: two five-amp fuses on the list. The pump ran happily for a minute when I tried it.

Volts at breakfast, with the charger off since Sunday, 12.7. The charger itself buzzes. It buzzed in the shop.

Trailer board, then. The right indicator blinks at double speed, which always means a dead bulb, and it's the bulb. Fit another before she goes on the road; two minutes. We did a whole holiday once with my brother sticking his arm out of the window.

There are people who'd have me change to all sorts of clever screens. I like a switch. You can see what a switch thinks.`,
    marks: [
      { kind: 'jury rig', at: "I've twisted it together and wound it up with tape", parts: {} },
      { kind: 'job', at: 'It needs a new length with soldered joints', parts: { minutes: 60 } },
      { kind: 'job', at: 'A five goes in', parts: {} },
      { kind: 'store', at: 'two five-amp fuses', parts: {} },
      { kind: 'reading', at: '12.7', parts: {} },
      { kind: 'job', at: 'Fit another before she goes on the road', parts: { zone: 'trailer', minutes: 2 } },
    ],
  },
];
