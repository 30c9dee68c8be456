/** The words people use about a small boat's upkeep: things, what goes wrong with them, what is done about it. */

const words = (text: string): readonly string[] => text.trim().split(/\s*[\n;]\s*/);

/** Things on, in or about a boat that something can be wrong with. Patterns, singular; a plural s is taken too. */
const things = words(`
  anchor; chain; warp; rode; shackle; thimble; roller; roller pin; pulpit; pushpit; stanchion; stanchion base; lifeline; guard ?rail; guard ?wire; jack ?stay
  toe ?rail; cleat; fairlead; windlass; samson post; bollard; fender; painter; mooring line; dock line; bow line; stern line; spring line
  hatch; fore ?hatch; hatch cover; hatch catch; lid; locker; anchor well; catch; hinge; hasp; handle; latch; lock; washboard; window; port ?light; port ?hole; ventilator; vent
  mast; mast step; mast foot; mast head; sheave; halyard; shroud; shroud plate; chain ?plate; stay; forestay; backstay; spreader; spreader end; boom; boom end; gooseneck; vang; kicker; kicking strap; topping lift; lazy jack; burgee; burgee halyard
  swage; terminal; turnbuckle; bottle ?screw; rigging screw; split pin; clevis pin; ring; tang; track; slide; luff slide; groove; furler; furling line; reefing line; reefing hook; reef line; reef pennant; outhaul; cunningham; downhaul; clutch; jammer; cam ?cleat; traveller; traveller car; mainsheet; sheet; jib sheet; block; mainsheet block; turning block; winch; winch handle; pawl; pawl spring
  sail; mainsail; main; jib; genoa; spinnaker; batten; batten pocket; leech line; leech; luff; seam; stitching; sail ?cover; cover; boom cover; spray ?hood; cringle; eyelet
  board; centre ?board; dagger ?board; board wire; lifting wire; pendant; board winch; case; board case; case gasket; gasket; keel; keel bolt; skeg; slot rubber
  rudder; rudder blade; blade; tiller; tiller bolt; tiller extension; pintle; gudgeon; rudder stock; rudder head; uphaul
  hull; deck; foredeck; side deck; coaming; topside; bottom; gel ?coat; transom; rubbing strake; core; bulkhead; frame; floor; sole; cockpit sole; thwart; seat; cockpit seat; non[- ]?slip; paint; paintwork; varnish; antifouling; woodwork; wood; teak; trim; plywood
  drain; self[- ]?bailer; bung; drain plug; drain hole; skin fitting; through[- ]?hull; sea ?cock; hose; hose clip; bilge; bilge pump; pump; float switch; strainer; impeller; tank; water tank; tap; sink; toilet; heads; galley; stove; cooker; gas locker; gas hose; gas bottle; regulator; heater
  berth; bunk; bunk board; cushion; cushion cover; curtain; headlining; lining; cabin light; light; lamp; lens; bulb; stern light; bow light; nav(?:igation)? light; masthead light; anchor light; steaming light; compass; compass light; depth sounder; sounder; log; radio; vhf; aerial; antenna; plotter; speaker
  battery; battery lead; battery box; battery strap; terminal; fuse; fuse holder; switch; switch panel; panel; solar panel; panel lead; panel gland; gland; regulator; charger; wire; wiring; cable; plug; socket; connector; earth; isolator; alternator
  outboard; engine; motor; outboard bracket; bracket; prop; propeller; shear pin; kill ?cord; spark plug; carburettor; fuel line; fuel filter; fuel tank; fuel bulb; fuel; filler cap; water pump; tell[- ]?tale; starter cord; pull cord; throttle; gear cable; gear ?box oil; oil; anode; cowl
  trailer; tyre; wheel; spare wheel; hub; wheel hub; hub seal; bearing; wheel bearing; axle; spring; leaf spring; u[- ]?bolt; mudguard; jockey wheel; jockey wheel clamp; clamp; coupling; hitch; hand ?brake; brake; brake cable; brake shoe; trailer board; light board; number plate; tail lamp; tail light; indicator; winch post; winch strap; strap; snubber; bow snubber; keel roller; bunker; lashing; safety chain
  flare; life ?jacket; life ?raft; fire extinguisher; extinguisher; fire blanket; first aid kit; horn; fog ?horn; throwing line; harness; tether; ladder; boarding ladder; ladder foot; step; registration; sticker; certificate; insurance; licence
  bolt; screw; nut; rivet; pin; washer; backing plate; backing pad; plate; pad; bush; bushing; seal; o[- ]?ring; cap; sleeve; rope; line; cord; string; knot; splice; whipping; lashing; fitting; joint; bedding; sealant; hole; screw hole; fastening; bearing; cheek; hook; pulley; tackle; end cap; hose tail; pipe; door; drawer; shelf; table; ply; tape; loop; net; bag
  gate; port gate; bow; stern; port bow; zip; bilge hose; exhaust; silencer; bulb holder; clip; buckle
`);

/** What goes wrong. Patterns of whole phrases. */
const defects = words(`
  leak(?:s|ing|ed|y)?; weep(?:s|ing|y)?; drip(?:s|ping)?; dribbl(?:e|es|ing); lets? (?:the )?(?:water|rain|damp) in; letting (?:the )?(?:water|rain) in; water (?:lying|standing|coming|gets?|getting|in|under|round); wet patch
  crack(?:s|ed|ing)?; split(?:s|ting)?; hairline; torn; tear(?:s|ing)?; rip(?:s|ped|ping)?; frayed?; fray(?:s|ing); chafed?; chaf(?:es|ing); broken; broke; snapped; parted; pulled (?:out|off|away|through); come (?:off|away|adrift|undone|loose|apart|unstuck|out|unscrewed); coming (?:off|away|adrift|undone|loose|apart|unstuck); came (?:off|away|adrift|undone|loose|apart|out)
  worn(?: (?:out|through|oval|thin))?; wearing (?:out|through|thin); wear(?=(?: in| on|$)); perished; perishing; rotten; rot(?:s|ting|ted)?; soft(?: spot)?; spongy; delaminat(?:ed|ing); blister(?:s|ed|ing)?; osmosis
  bent; buckled; twisted; dented; dent; ding; gouge[ds]?; scratch(?:es|ed)?; scrape[ds]?; nick(?:s|ed)?; chip(?:s|ped)?; crazing; crazed; peel(?:s|ing|ed); flak(?:y|ing|es|ed); faded; fading; chalky; dull; bare; bald; scuffed; cloudy
  loose; wobbl(?:y|es|ing); rattl(?:es|ing|y); rock(?:s|ing); play(?= in| at|$| there|,); slop(?: in)?; slack; saggy; sagging; spins?; spinning; stripped; hanging (?:by|on|off|down|loose); adrift; undone; lost; missing; gone(?! (?:round|back|home|out|down|off to|to (?:bed|the)|up|north|south|east|west|sailing))
  seized(?: up)?; stiff; stuck; stick(?:s|ing|y); jam(?:s|med|ming)?; frozen; rust(?:y|ed|s|ing)?; rusted solid; corroded; corrosion; corroding; green; pitted; furred(?: up)?; blocked(?: up)?; clogged; bunged up; slow; silted; fouled; foul; filthy; dirty; grubby; mould(?:y)?; mildew(?:ed)?; smell(?:s|y)?; stink(?:s|ing)?; damp; soaked; soggy; waterlogged
  dead; died; flat(?= (?:on|and|as|spot|again)|$|,); flicker(?:s|ing|ed)?; intermittent; blown; burnt(?: out)?; shorted; noisy; squeak(?:s|ing|y)?; squeal(?:s|ing); grind(?:s|ing)(?= when| noise| on|$); rumbl(?:es|ing|y); hum(?:s|ming); slip(?:s|ping|ped); jump(?:s|ing) off; kick(?:s|ed|ing); creep(?:s|ing); hot; warm(?= when| after| to the| again)
  (?:had it|had its day|past it|past its best|knackered|shot|finished|tired|done for|on its last legs|seen better days|given up|packed up|conked out|giving up|failing|failed|useless|unreadable|illegible|ruined)
  out of date; expired; overdue; past (?:its|their) date; dated (?:19|20)\\d\\d; (?:too|very) (?:short|long|thin|weak|small|tight|old); weak; ragged; open(?:ed)? up; swollen; swelling; warped; sprung; lifting; lifted; bulging; showing; down to the (?:cords|canvas|wires?|metal|wood)
  hanging on; one strand; strands?(?: \\w+)? (?:gone|broken|parted); broken strands?; meat ?hooks?; flat spot; burr; hole in; holed; puncture[d]?; (?:un|not )moused; (?:isn't|is not|not|no longer|never) (?:moused|fused|pinned|locked|sealed|bedded|tight|straight|true|level|secure|fastened|charging|working|lit|legal)
  (?:won't|will not|wouldn't|doesn't|does not|don't|do not|can't|cannot|couldn't|could not|didn't|never|not|hardly|barely|only just) (?:\\w+ )?(?:start(?:ing)?|prime|pump(?:ing)?|work(?:ing)?|close|shut|open|hold(?:ing)?|grip(?:ping)?|turn(?:ing)?|lock|latch|fit|light|charge|charging|run|drain(?:ing)?|seal(?:ing)?|stay|catch|seat|move|budge|read|pull (?:it|her)(?: up)?|lift|lower|lie|come (?:up|down)|go (?:up|down)|engage|fasten|spin|swing|retract|bite|trust)
  (?:runs?|running|ran|was|is|gets?|got|feels?|felt) (?:very |really |a bit |too |quite )?(?:hot|warm); needs? two hands; no (?:fuse|earth|life ?jacket|light|lights|mousing|power|spark|pin|split pin|backing plate|pressure|grip|charge|washer|safety chain|kill ?cord|vent|date)(?! (?:needed|wanted|required)); lost its \\w+; working loose; worked loose; (?:has|have|'s) (?:dropped|sunk|shifted|moved|shrunk|curled|lifted)(?! a)(?!n't); nicked; mangled; misshapen; egg[- ]shaped; ovalled?; oval
  trouble; suspect; dodgy; sorry for itself; poor(?:ly)?; bad(?:ly)?; a mess; in a state; going (?:rotten|rusty|soft|green|mouldy|off|home)(?<!going home)
`);

/** What is done about it, as one says it to oneself: the bare verb. */
const actions = words(`
  rebed; re-bed; bed; replace; renew; change; swap; fit; refit; mend; repair; fix; patch; glue; reglue; re-glue; bond; sew; restitch; stitch; darn; grease; regrease; oil; lubricate; lube; varnish; revarnish; paint; repaint; touch up; prime; undercoat; sand; rub down; rub; fill; fair; plug; epoxy; glass; laminate; splice; resplice; whip; re-?whip; seize; mouse; lash; tie; tighten; nip up; torque; adjust; re-?tension; tension; tune; set up; align; straighten; file; plane; drill; tap; countersink; bolt; through-bolt; screw; rivet; pin; split; saw; cut(?: back)?; trim; shorten; lengthen; splay; turn; end for end; reverse
  clean; wash(?: down)?; scrub; polish; wax; rinse; flush; clear; unblock; rod; hose; empty; bail; mop; sponge; dry out; air; strip(?: down)?; dismantle; take (?:it|them|her|the \\w+|off|out|down|apart) ?\\w*; pull (?:it|them|the \\w+) (?:out|off|up); remove; unship; hang; rehang; refit; put (?:it|them|the|a|an|some|in|on|back|new)[^,.]{0,20}; service; overhaul; rebuild; recondition; free(?: off| up)?; ease; soak; derust; wire brush; galvanise
  check; test; load test; measure; inspect; examine; look (?:at|over|into|for|again|behind|under|properly); have a (?:proper |good |closer )?look; trace; find; track down; sort(?: out)?; deal with; see to; work out; find out; drill out; dig (?:out|back); chip; scrape; tape; seal; reseal; sleeve; wire(?: up| in)?; rewire; solder; crimp; remake; connect; disconnect; fuse; charge; top up; pump up; inflate; bleed; balance; pack; repack; shim; bush; rebush; sheath; serve; bend (?:it |them )?(?:back|straight|true); make (?:up|a|an|one|new|good|it|them)[^,.]{0,12}; knock out; drive out; rig; reeve; re-?reeve; run a new; hoist; step; unstep; launch; order; register; renumber; label; mark; antifoul; go over; go through; redo; finish; complete; cover; protect; secure; fasten; refasten; stow; rearrange; throw out; give (?:it|them|her|the)[^,.]{0,20}; tidy; degrease; decoke; winterise; drain; refill; fill up; retap; recut; refill; reinforce; stiffen; pad; line; lead; reroute; re-?route; replumb; re-?lay; lay; fabricate; weld; braze; get (?:it|them|her|that|the|this) [^,.]{0,30}(?:ed|done|cut|out|off|up|back)\\b
`);

/** Said of a thing nothing need be done about. */
const fine =
  "(?:ok|okay|o k|fine|sound|solid|perfect|lovely|great|grand|all right|alright|healthy|(?:as )?good(?: as new)?|(?:still |nice and |good and )?tight|clean|cleaned up|dry|happy|in order|shipshape|a joy|a treat|bone dry|spotless|strong|secure|firm|smooth(?:ly)?|sweet(?:ly)?|no complaints?|no (?:problems?|trouble|issues?|faults?|worries)|no (?:sign of )?(?:play|leaks?|cracks?|rust|water|damp|wear|chafe|corrosion|movement|rot)|nothing (?:wrong|there|to do|amiss|loose|new|to report|needed|doing|worth)|not a (?:drop|mark|scratch|spot)|hasn't (?:moved|changed|got any)|have(?:n't| not) moved|goes? (?:up and down )?(?:like|well)|runs? (?:like|well|sweetly)|like (?:new|a dream|butter|silk|clockwork)|works?(?: fine| well| perfectly)?|working|holding(?: well| up)?|holds|started (?:first|second)|leave (?:it|that|them|this|well)(?: alone| be| for now)?|live with|can wait|will wait|no work|no need|n ?a|not needed|don't bother|not worth|good for another|will do another|fit for another|up to scratch|passed|reads? right|as it should|as they should|where it should|clean enough|well enough|sound enough|good enough)";

const alternatives = (list: readonly string[]) =>
  [...list]
    .sort((a, b) => b.length - a.length)
    .join('|')
    .replace(/ (?![?*+])/g, ' +');

const edge = (pattern: string) => new RegExp(`(?<![\\p{L}\\p{N}'-])(?:${pattern})(?![\\p{L}\\p{N}]|'(?!s))`, 'giu');

export const thingPattern = edge(`(?:${alternatives(things)})(?:e?s)?`);
export const defectPattern = edge(alternatives(defects));
export const actionPattern = edge(alternatives(actions));
export const finePattern = edge(fine);
