import type { MarkedPage } from '../../marked.ts';

export const pages: readonly MarkedPage[] = [
  {
    name: 'whit no said',
    page: `Aye weel, it's yersel wi the phone again. Richt. She's a bonny sicht the day, wi the sun on her, and I'll no hear a word agin her.

The mast I had down in Mairch and gone ower wi a rag. There's no a thing wrong wi it. The shrouds the same. But the topping lift's that chafed ye could floss yer teeth wi it, so I'm puttin in a new yin, eight metres o the thin stuff, nae bother, half an hour.

Yon winch tae starboard chatters. It aye chattered. Ye get tae ken the tune.

Noo ma wife — she's a guid soul — she's telt me the cabin's cauld and I should line it wi cork. I'm no lining it wi cork. We had that talk.

The washbasin's no drainin. Ye pour it in and it just looks back at ye. There'll be a plug o soap doon in the bend, so the trap wants takin aff and clearin oot, quarter of an hour and a strong stomach.

The rubber flap ower the exhaust, that's no oor boat, that's Wullie's. Forget that.

Trailer. The light board's hingin aff at the one end and I've a length o baler twine roond it. Twine's a fine thing. But it's no goin on the main road like that, there's a bracket needs bent back and a new bolt through it.

Whit's that? Naw, the brakes are fine, I did the cables masel at the New Year wi a sair heid.

There's a seal been at the slip aw week, big as a settee. The weans have called him Kevin.

And the burgee's faded tae a kind o pink. It can bide pink.

The bung's in. The cover's on. Twelve point five on the battery. Awa hame.`,
    marks: [
      { kind: 'job', at: "so I'm puttin in a new yin", parts: { minutes: 30 } },
      { kind: 'job', at: 'so the trap wants takin aff and clearin oot', parts: { zone: 'cabin', minutes: 15 } },
      { kind: 'jury rig', at: "I've a length o baler twine roond it", parts: { zone: 'trailer' } },
      { kind: 'job', at: "there's a bracket needs bent back and a new bolt through it", parts: { zone: 'trailer' } },
      { kind: 'reading', at: 'Twelve point five on the battery', parts: {} },
    ],
  },
  {
    name: 'lunch hour',
    page: `so I've come down in my lunch hour in my office shoes which is stupid because it's all mud and I've got a two o'clock with finance and I'm just going to say what I see first thing the wasps nest is gone the man came for it last week sixty quid and it took him four minutes I'm in the wrong job second thing the forestay turnbuckle is on its last thread there's nothing left to wind so either the stay has stretched or the mast's moved I don't like it so get the rigger to come and look at that before we put any load on third thing the paint on the deck is chalky but it's grippy and I'd sooner have grippy than pretty so that's staying fourth the coach roof handrail fine the hatch runners fine I waxed them in autumn with a candle end fifth and I nearly forgot the traveller car has lost half its balls I had them in a jam jar and the jar's in the garage so it's reload the balls and put the end stop back on that's fiddly say forty five minutes with tweezers at the moment it's a bit of rope tied in the middle that does instead of a traveller and you know what she sails about the same I saw a boat at the show with a traveller like a tramway and nobody on board knew what it was for sixth is there a sixth the lifebelt's there the light on the lifebelt's there and lights oh the boarding ladder the bottom rung has come adrift on one side and my daughter went through it last summer and skinned her shin so that rung has to be screwed back properly or the whole ladder goes in the skip okay fifteen minutes to get the mud off`,
    marks: [
      { kind: 'job', at: 'so get the rigger to come and look at that', parts: {} },
      { kind: 'job', at: "so it's reload the balls and put the end stop back on", parts: { minutes: 45 } },
      { kind: 'jury rig', at: "it's a bit of rope tied in the middle", parts: {} },
      { kind: 'job', at: 'so that rung has to be screwed back properly', parts: {} },
    ],
  },
  {
    name: 'minutes of a syndicate',
    page: `Owners' meeting, held aboard, three present, one dog. Rain on the roof throughout.

The accounts were read and nobody laughed, so they were read again. Forty-one pounds in hand.

Mr P. reported that the new mainsheet, agreed in November, had been bought and rove and was much admired.

Miss L. raised the matter of the cabin light, which goes out when one closes the door. It was agreed that there is a bad joint behind the switch and that Mr P. will take the panel off and solder it. Twenty minutes, he says. We shall see.

It was asked whether the boat should be painted red. It was not agreed.

Mr P. then drew attention to the fender that is standing in for the missing rubber stop on the winch post, hung there by Miss L. with a shoelace. It was thought ingenious. A proper bow stop has been priced at nineteen pounds and is to be fitted to the post before she is next towed.

A letter from a former owner was read. He believes she is faster without the skeg. She has no skeg. The secretary will thank him.

Miss L. said that two of the three bunk boards had been replaced over the winter and that the third was sound, and she had checked it by sitting on it with her cousin.

The tiller pin: lost, again. The secretary has a nail in it. The secretary was asked to buy two pins, to fit one with a lanyard, and to keep the other in the drawer.

Crabs: there are many this year.

Any other business. The flares expire in May. New ones to be got before the estuary night.

The dog moved that the meeting be closed.`,
    marks: [
      { kind: 'job', at: 'Mr P. will take the panel off and solder it', parts: { minutes: 20 } },
      {
        kind: 'jury rig',
        at: 'the fender that is standing in for the missing rubber stop',
        parts: { zone: 'trailer' },
      },
      { kind: 'job', at: 'is to be fitted to the post before she is next towed', parts: { zone: 'trailer' } },
      { kind: 'jury rig', at: 'The secretary has a nail in it', parts: {} },
      { kind: 'job', at: 'The secretary was asked to buy two pins, to fit one', parts: {} },
      { kind: 'job', at: 'New ones to be got before the estuary night', parts: { outing: 'estuary' } },
    ],
  },
  {
    name: 'answering a buyer',
    page: `Hello again, and thanks for your questions. I'm in no hurry to sell, I'll say that first, and if you don't buy her I'll simply sail her, so you're getting the truth.

Does she leak? Not through the bottom. She never has. Through the top, a bit: the mast gaiter has split at the back and rain trickles down the post onto the heads door. I've wound a bicycle inner tube round it, which is working better than the gaiter ever did. If she's still mine in May I'll put a new gaiter on, which means stepping the mast again, so call it a morning for two people.

Is the engine reliable? Yes. I've had it since new and it has let me down once, and that was because I'd forgotten the petrol.

The sails: main is four years old, jib seven. Neither is racing cut. The batten pocket at the head of the main has come unstitched, and that's going in to the loft with my neighbour's spinnaker next week.

Has she been raced? By my nephew. Badly.

You asked about blisters. I looked on my back with a torch and found none. A surveyor friend looked too, and fell asleep under there.

Rot: there was some in the cockpit sole, cut out and renewed in 2024, photos enclosed.

The hub on the port side of the trailer ran hot last trip. I could not keep my hand on it. I'd not let you tow her away like that; the bearings want renewing and I've the kit on the bench, an hour and a half.

Would she suit a family of five? If they love one another.

Do come on a fine day. The path is steep and the goat is friendly.`,
    marks: [
      { kind: 'jury rig', at: "I've wound a bicycle inner tube round it", parts: {} },
      { kind: 'job', at: "I'll put a new gaiter on", parts: { hands: 2 } },
      { kind: 'job', at: "that's going in to the loft", parts: {} },
      { kind: 'job', at: 'the bearings want renewing', parts: { fitting: 'hub', minutes: 90 } },
    ],
  },
];
