import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'before the tide, all in one breath',
    page: `right quick round before the tide cover's off it's folded badly not my problem bow shackle wired that was me yesterday the bow light's gone dim it's the contacts they're black so scrape them and a smear of grease ten minutes before the night trip the pulpit's solid the jib hanks two of them don't close by themselves they're sprung so new pistons or new hanks two off sew them on half an hour at home in front of the telly main's on reef lines are led cringle's been stitched by the sailmaker lovely job cost a fortune the topping lift shackle lost its pin and I've got a bit of whipping twine through there with about nine turns so that's a new shackle from the box one minute if someone goes up on the cabin roof what else the cockpit floor drains are running clear the tiller yes the locker lock is rusted solid so I cut it off with the hacksaw and now it's open to all comers get a new padlock and that's that cabin floor's dry the galley box lid is warped I quite like it warped the battery's at twelve five two the pump I ran and it pumped the smell's gone hurray the radio check got answered by some bloke on a ferry the board up and down twice good the handle's loose on its shaft though you need to drift a new roll pin into that five minutes or it'll come off in your hand when the board's half up rudder down pin in outboard down pin well the split pin on the prop nut is one I bent out of a bit of welding rod it's held since August fine but I'd sooner have the right one in there put that in when we're ashore five minutes trailer's up the top the clamp thing is stiff it's always stiff to buy a padlock two piston hanks and the split pin right let go forward`,
    marks: [
      { kind: 'job', at: 'so scrape them and a smear of grease', parts: { zone: 'bow', minutes: 10 } },
      { kind: 'job', at: 'so new pistons or new hanks', parts: { minutes: 30 } },
      { kind: 'jury rig', at: "I've got a bit of whipping twine through there", parts: {} },
      { kind: 'job', at: "so that's a new shackle from the box", parts: { minutes: 1 } },
      { kind: 'job', at: "get a new padlock and that's that", parts: {} },
      { kind: 'reading', at: "battery's at twelve five two", parts: {} },
      { kind: 'job', at: 'you need to drift a new roll pin into that', parts: { minutes: 5 } },
      { kind: 'jury rig', at: 'one I bent out of a bit of welding rod', parts: {} },
      { kind: 'job', at: "put that in when we're ashore", parts: { minutes: 5 } },
      { kind: 'store', at: 'to buy a padlock', parts: {} },
      { kind: 'store', at: 'two piston hanks', parts: {} },
      { kind: 'store', at: 'and the split pin right', parts: {} },
    ],
  },
  {
    name: 'two of them talking',
    page: `Are you recording? Yes. Right, we'll take it in turns then. You do the outside.

Outside. Topsides good, bit of tar on the starboard quarter that'll come off with white spirit, five minutes, I'll do that on Saturday. Rubbing strake good. Name good.

I thought the strake was loose? No, that was before Christmas. I put four screws in. Oh yes, so you did.

Bow. Stem fitting: there's a crack in the weld on the left cheek. Is that bad? That's bad. The forestay goes to that. We shouldn't sail on it till it's been welded up. So unbolt it and take it to the welder, an hour to get it off. At the moment there's a lashing round the whole lot and back to the cleat.

Inside. Everything's dry. Well, nearly. The cooker's got a burner that won't stay lit. Prick it out with the wire, it's only soot. Ten minutes. I could do that now. No, you said that last time, put it on the list.

Battery? Twelve and a half. Twelve point five five, if we're being fussy.

Do we want to do anything about the carpet? I'd burn it. I wouldn't. Then leave it.

Cockpit. The scupper grille has gone missing so the drain eats pegs. A new grille, three little screws. Five minutes. The tiller: very smart. I thank you.

Rig. Both of us looked. Two broken wires in the starboard lower, at the bottom, by the terminal. That's a new shroud, we'd agreed. The rigger needs the old one as a pattern, so off it comes when the mast's down, quarter of an hour, and into the car.

Other people just sail, you know. Other people sink.

Trailer. Front roller bracket's bent from when you winched it too far. I did not. Straighten it with the big bar and add a gusset, forty minutes. Well, all right. Tyres 34, 34.

Shopping? A grille. White spirit. And biscuits. Shall we go round the island this year? Ask me in June.`,
    marks: [
      { kind: 'job', at: "that'll come off with white spirit", parts: { zone: 'topsides', minutes: 5 } },
      { kind: 'job', at: 'So unbolt it and take it to the welder', parts: { zone: 'bow', minutes: 60 } },
      { kind: 'jury rig', at: "there's a lashing round the whole lot", parts: { zone: 'bow' } },
      { kind: 'job', at: 'Prick it out with the wire', parts: { minutes: 10 } },
      { kind: 'reading', at: 'Twelve point five five', parts: {} },
      { kind: 'job', at: 'A new grille, three little screws', parts: { zone: 'cockpit', minutes: 5 } },
      { kind: 'job', at: "That's a new shroud, we'd agreed", parts: { zone: 'rig', setUps: { mast: 'down' } } },
      { kind: 'job', at: 'Straighten it with the big bar', parts: { zone: 'trailer', minutes: 40 } },
      { kind: 'reading', at: 'Tyres 34, 34', parts: {} },
      { kind: 'store', at: 'A grille. White', parts: {} },
      { kind: 'store', at: 'White spirit. And', parts: {} },
    ],
  },
  {
    name: 'rainy week, dry garage',
    page: `Plan for the wet week. Everything that comes off the boat can be done in the garage, everything that can't must wait, and I've been round and sorted them.

Garage, Monday evening: the washboards. Sand the bottom one where it's black, bleach it, two coats of oil. One hour, and a day between the coats. The top one I did in the autumn.

Tuesday: the tackle for the board. The becket is worn half through and I've put a soft shackle across it, which is stronger than the becket, if we're honest, but chafes. New becket block, ten minutes.

Wednesday I'm at choir.

Thursday: the stove. Take it apart and boil the burner in vinegar. Half an hour, open window.

Friday: nothing, because on Friday I should like to sit down.

On the boat, and that needs it dry: the forward cleat. It isn't leaking yet. I only want to see it done before it does, so, bolts out one at a time, sealant, back in, 40 minutes. If the forecast holds that's Saturday the 17th.

Also needs it dry: the scratch along the starboard side. Not the long one, I've accepted the long one. The deep one by the shroud. Gelcoat filler, tape over it, rub down, polish: 45 minutes and it cures in two hours at fifteen degrees.

Needs no weather at all: the battery, which read 12.42 today. Fine.

There's a school of thought that you should take the mast down every winter. I left ours up. It's still there.

Trailer, whenever the lad's here, it needs two: the hitch has to come off the drawbar to get at the pin, which has worn, and the new pin's in a jam jar on the shelf. An hour.

Bought already: pin, filler, vinegar. Still to get: the becket block and teak oil, small tin.

I did ask the yard about a lift-out. They're full, and they're dear, and we don't need one.`,
    marks: [
      { kind: 'job', at: "Sand the bottom one where it's black", parts: { minutes: 60 } },
      { kind: 'jury rig', at: "I've put a soft shackle across it", parts: { zone: 'case' } },
      { kind: 'job', at: 'New becket block, ten minutes', parts: { zone: 'case', minutes: 10 } },
      { kind: 'job', at: 'Take it apart and boil the burner', parts: { minutes: 30 } },
      { kind: 'job', at: 'bolts out one at a time, sealant', parts: { minutes: 40 } },
      { kind: 'job', at: 'Gelcoat filler, tape over it', parts: { zone: 'topsides', minutes: 45 } },
      { kind: 'reading', at: 'which read 12.42', parts: {} },
      { kind: 'job', at: 'the hitch has to come off the drawbar', parts: { zone: 'trailer', minutes: 60, hands: 2 } },
      { kind: 'store', at: 'get: the becket block', parts: {} },
      { kind: 'store', at: 'teak oil, small tin', parts: {} },
    ],
  },
  {
    name: 'the last page of the book',
    page: `last page in this book so I'll be short ha you know me well let's see I bought her from a dentist eleven years back and everything that was wrong with her then has been put right except the horn and the horn I don't want this spring then she came out of the barn with a mouse nest in the spinnaker bag and no harm to the spinnaker it got a wash the port window I'd bet money on but I hosed it and it's tight what isn't tight is the ventilator in front of the mast so that'll have to be lifted and bedded on new goo forty minutes I stuck a yoghurt pot over it for the time being it looks like a lighthouse then the pintles the top one's good the bottom one's moved on its bolts I can shift it with my hand so through bolt it with a plate inside an hour and it's a two man job one in the locker the batteries there's only the one twelve point five eight the mast is up it went up Saturday like a flag the whole street came out the spreader lights never worked I don't know why she has spreader lights jib sheets I swapped end for end so they're new aren't they the centreboard comes up with a squeal but I've heard of one that sang hymns a drop of washing up liquid they say the trailer now the left spring's got a broken leaf the second one down I only saw it because I dropped my glasses so a new spring and both u bolts two hours and she stays where she is till that's done the brakes and lights have been tested I've a paper to prove it oh and the cleat for the cover line ripped out the other day so screw that back a bit higher up where the wood's good five minutes get a trailer spring a tube of goo and a new book to write in and here's the end of the page`,
    marks: [
      { kind: 'job', at: "so that'll have to be lifted and bedded on new goo", parts: { minutes: 40 } },
      { kind: 'jury rig', at: 'I stuck a yoghurt pot over it', parts: {} },
      { kind: 'job', at: 'so through bolt it with a plate inside', parts: { zone: 'transom', minutes: 60, hands: 2 } },
      { kind: 'reading', at: "there's only the one twelve point five eight", parts: {} },
      { kind: 'job', at: 'so a new spring and both u bolts', parts: { zone: 'trailer', minutes: 120 } },
      { kind: 'job', at: 'so screw that back a bit higher up', parts: { minutes: 5 } },
      { kind: 'store', at: 'get a trailer spring', parts: {} },
      { kind: 'store', at: 'a tube of goo', parts: {} },
      { kind: 'store', at: 'a new book to write in', parts: {} },
    ],
  },
];
