import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'under the cover with a torch',
    page: `its ten at night Im under the cover with a torch in my teeth so if I sound odd thats why took it out now okay, I only came to see if the heater was off and it is off, but I started looking, and the cabin side window the left one theres a crack right across the corner, not new, I mean I think it was there when we had the picnic, its got nail varnish run along it that Sylvie did and it hasnt let in a drop, so as for a new pane I asked and its ninety pounds cut to shape and Sylvie said ninety pounds and laughed, were not having it, the nail varnish lives. The bulkhead is good the step is good. Then on the mast post theres the fuse holder dangling by its wires and that does need screwing back to the wood, two screws, there isnt a thing wrong with it otherwise, three minutes in daylight. I can hear an owl. When we had the other boat an owl sat on it all of one winter and you never saw such a mess. The water tank strap has broken and somebody, Marcus, has wedged a life jacket in beside the tank so it cant slide, and its clever, but its also our life jacket. I want a new strap on there before the estuary. half an hour because you have to get the bunk out. The tank was flushed a fortnight ago it tastes of nothing. Good. Oh and twelve point one on the little screen, thats low that should go on charge. Right Im cold the heaters off as I say. The zips jammed. No its not. Night`,
    marks: [
      { kind: 'jury rig', at: 'its got nail varnish run along it', parts: { zone: 'cabin' } },
      { kind: 'job', at: 'that does need screwing back to the wood', parts: { zone: 'cabin', minutes: 3 } },
      { kind: 'jury rig', at: 'wedged a life jacket in beside the tank', parts: {} },
      { kind: 'job', at: 'I want a new strap on there', parts: { minutes: 30, outing: 'estuary' } },
      { kind: 'reading', at: 'twelve point one', parts: {} },
      { kind: 'job', at: 'that should go on charge', parts: {} },
    ],
  },
  {
    name: 'crew chat, slightly cross',
    page: `Moira: who had her last
Dunc: me. sunday. why
Moira: the jib's been stowed wet. it's got spots
Dunc: sorry. rained the whole way back
Moira: it's hung in my hall now so leave it
Moira: anything else you'd care to tell us
Dunc: the cockpit light. you have to hit it
Moira: you've always had to hit it
Dunc: ok then um the outboard clamp. one of the screws has lost its T handle so you can't tighten it. I've got a chain round it to the pushpit so it can't jump off
Moira: good that's sensible
Moira: drill it and put a bolt through for a handle, ten mins, it doesn't need a shop
Dunc: on it. weds
Perce: I had one jump off once. straight down. still running!
Dunc: liar
Perce: bubbles for a full minute
Moira: ok what about the leak by the mast
Dunc: what leak
Moira: exactly. it's stopped. I did the collar at new year
Dunc: oh nice
Perce: is the trailer still pulling left
Moira: no it's you that pulls left
Dunc: 1 more. topping lift, it's hanging by a few hairs at the boom end, I had a halyard on it instead to hold the boom up. you can use it like that but you can't reef
Moira: tie in a new one then!! we've got 20 m of 5 mil sitting there
Dunc: mast up or down
Moira: down. obviously. while it's down. 15 mins
Dunc: yes boss
Perce: shall I bring the saw
Moira: what for
Perce: I just like to be asked
Moira: no saw. bring 2 litres of thinners and some cheap brushes, we're out
Perce: can do
Dunc: do you still want the sprayhood varnished
Moira: you don't varnish a sprayhood Duncan`,
    marks: [
      { kind: 'jury rig', at: "I've got a chain round it to the pushpit", parts: { zone: 'transom' } },
      { kind: 'job', at: 'drill it and put a bolt through for a handle', parts: { zone: 'transom', minutes: 10 } },
      { kind: 'jury rig', at: 'I had a halyard on it instead to hold the boom up', parts: { zone: 'rig' } },
      { kind: 'job', at: 'tie in a new one then', parts: { zone: 'rig', minutes: 15, setUps: { mast: 'down' } } },
      { kind: 'store', at: '2 litres of thinners', parts: {} },
      { kind: 'store', at: 'some cheap brushes', parts: {} },
    ],
  },
  {
    name: 'the painter speaks',
    page: `You may think paint is colour. Paint is waiting. I was apprenticed at fifteen in a carriage shop, and for the first year I wasn't let near a brush; I was let near a clock.

So here is how it stands with the boat. The topsides had their two coats of enamel the summer before last and they don't need another. There's one run, under the port quarter, that I see every time I go by. Nobody else has ever seen it. I'm leaving it as a lesson.

The transom is bare at one corner, where the outboard swings and catches it. I've hung an old slipper over the bottom of the engine leg with a bit of cord, to soften the blow. Rub back to the primer, two undercoats, two top, not less than sixteen hours between any of them, and never after four in the afternoon with dew about. All told it's perhaps two hours with the brush in your hand, and five days.

The stop that ought to limit the swing is worn away. I should put on a rubber one, first thing, or the corner will simply be bare again. Quarter of an hour.

The boot top is crooked. It was crooked when I came.

The foredeck I did grey, after some argument, and it is the best deck I ever did.

In the cabin the white has yellowed over the stove. A wash with sugar soap brought it back in ten minutes, and I stood there quite astonished.

The trailer's rusting on the crossbeam. I know it wants painting; it doesn't, what it wants first is wire brushing down to the metal, and then zinc. I'd rather do that in May when she's off it, in the water. Two hours.

My knees aren't what they were. The boy can do the low parts.`,
    marks: [
      {
        kind: 'jury rig',
        at: "I've hung an old slipper over the bottom of the engine leg",
        parts: { zone: 'transom' },
      },
      { kind: 'job', at: 'Rub back to the primer, two undercoats', parts: { zone: 'transom', minutes: 120 } },
      { kind: 'job', at: 'I should put on a rubber one, first thing', parts: { minutes: 15 } },
      {
        kind: 'job',
        at: 'what it wants first is wire brushing down to the metal',
        parts: { zone: 'trailer', minutes: 120, setUps: { boat: 'afloat' } },
      },
    ],
  },
  {
    name: 'the widow and the winch',
    page: `He always did the winches, so I'd never seen inside one. I had it all out on a tea towel this morning with the radio going, and there's nothing to it! It's like a pepper pot that somebody took too seriously.

That one's the left, and it's clean now and greased, and it clicks. The right I'll do tomorrow the same way, since it's stiff in the mornings and he'd have had something to say about it. Forty minutes, now I know how.

I went round with his notebook afterwards. Half of what's in it is done, I could tell from the ticks. "Rehang door", ticked. "Stop leak", ticked twice. Then there's a page about the rudder, with a drawing, where the blade's pivot bolt is wearing the hole into an egg. No tick. I went and wiggled it and he's right, it slops about. He's written: bore out, fit bronze bush. Well, I can't bore, but the lad at the garage can, he always liked Ralph, and I'll take it up to him on Monday. It won't weigh more than the dog.

In the drawing there's a tiny thing labelled "temp". I had to put my glasses on. It's a slice of milk bottle wrapped round the bolt to take up the gap. It's there to this day! That man.

What he'd have done about the mast I couldn't say, but the rigger has had a look at it and given it three more years, in writing.

I'm not painting anything. I've told the children I'm not painting anything.

The only other item is the lamp bracket in the cabin, swinging by one screw. A longer screw, that's all, there's a jarful of them. I might even do it before I put the kettle on.

We're to go out on her on the twenty-fourth, the whole tribe of us. He'd have liked that.`,
    marks: [
      { kind: 'job', at: "The right I'll do tomorrow the same way", parts: { zone: 'cockpit', minutes: 40 } },
      { kind: 'job', at: "I'll take it up to him on Monday", parts: {} },
      { kind: 'jury rig', at: "It's a slice of milk bottle wrapped round the bolt", parts: {} },
      { kind: 'job', at: "A longer screw, that's all", parts: { zone: 'cabin' } },
    ],
  },
];
