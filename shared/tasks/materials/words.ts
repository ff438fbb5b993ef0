/** The sentences of the fence materials and of the comparison with fixed fence. */
// Beside the settings
export const LIGHTEST_NOTE = 'Sets how many wires there are, and their heights.';
export const GROUPS_OUT_NOTE =
  'Each leapfrogs with its own set; counts only where the fence moves with the pigs.';
export const STANDS_NOTE = 'Taken off the line to put up; it still loads the energizer.';
export const SHAPE_NOTE =
  'Only where the list holds areas and no sides: judgement. Long thin paddocks take more fence; up to 4 is advised (Irish Farmers Journal, published).';
export const POST_GAP_NOTE =
  'Step-in posts for pigs 20 to 25 ft (6 to 7.5 m), closer on uneven ground: from memory.';
export const ALLOWANCE_NOTE = 'For knots, ends, corners and uneven ground: judgement.';
export const ROLL_NOTE = 'See the label of the roll.';
export const REEL_NOTE = 'See the reel; with one reel a strand of each paddock, moving is quickest.';
export const INSULATORS_SET_NOTE = '0 for step-in posts with lugs, 1 for rods and steel posts.';
export const OPENINGS_NOTE =
  'Trained pigs may refuse to cross where a wire stood: plan openings (common practice, no source).';
export const NET_LENGTH_NOTE =
  'See the net. Nets of 164 ft (50 m) and 100 ft are often sold: common practice, no source.';
export const LIVE_STRINGS_NOTE =
  'Count yours, without a dead one at the bottom (start: judgement). Each loads the energizer like a fence of its own: Univ. of Maine counts every strand (published); that a net leaks as much: judgement.';
export const PUBLIC_NOTE = 'Roads, paths and rights of way.';
export const SIGN_GAP_NOTE =
  'At most 90 m (295 ft) by a UK-style code of practice and an Australian safety sheet (published); the IEC text says "frequent intervals". Local rules decide.';
export const GROWTH_NOTE =
  '1 J of output per mile of fence line (Gerrish, published); 2 to 3 times that for heavy growth is common practice, no source.';
export const OUTPUT_NOTE =
  'Blank: the joules needed. The ground rods follow the energizer that is really there.';
export const ROD_NOTE = 'Galvanised, 6 to 8 ft (NRCS Virginia 382, published).';
export const ROD_GAP_NOTE = '10 ft apart (NRCS Virginia 382, published).';
export const CABLE_NOTE = 'High-voltage insulated cable, never ordinary household cable.';
export const FIRST_ROD_NOTE =
  'Rods stay at least 10 m (33 ft) from utility and telephone earths (IEC installation annex, second hand).';

// Kinds of fence
export const EVEN_POSTS = 'A post at every corner, each side divided evenly.';
export const WHOLE_NETS =
  'Each paddock in whole nets, less the side that it shares with one before: nets are never cut.';
export const NETTING_CAUTION =
  'Pigs can be caught in netting under voltage, small and growing ones most (judgement): only for trained pigs, never piglets; keep it taut and live, look daily.';

// Beside the figures
export const ROUND_ALL = 'Round all paddocks together.';
export const BETWEEN_THEM = 'Between them, shared sides counted once.';
export const fencedAtATime = (paddocks: number, inTurn: boolean): string =>
  `${paddocks} paddocks stand fenced for a group at one time. The longest ${paddocks} that follow one another in the ${inTurn ? 'rotation' : 'list'}, times the groups out at once.`;
export const LESS_WHAT_STANDS = 'All paddocks, less what stands already.';
export const ENERGIZERS_NOTE =
  'One for each group out at once: never two on one fence. Fences of two stay 2.5 m (8 ft) apart (IEC annex, second hand), their ground rods too (judgement); 10 m (33 ft) is better (die grüne, published).';
export const HANGS_TOGETHER =
  'For all fence that is joined; a paddock that stands apart takes a lead to it, or an energizer of its own.';
export const FENCE_LINE_NOTE = 'Fence line of each energizer, not counted strand by strand.';
export const ALL_STRANDS = 'All strands, with the allowance.';
export const MANUAL_DECIDES = 'The energizer’s manual and local code decide.';
export const ROD_LENGTH_NOTE =
  '3 ft of rod a joule (NRCS Virginia 382 and Gerrish, published); never less than 3 m (die grüne, Idele, published).';
export const FIXED_ROUND_EACH = 'Woven wire or panels stand round every paddock.';

// Beside the items
export const NETS_NOTE =
  'Join them by their clips and tie the end posts; a gate is where two meet, opened with the voltage off.';
export const CORNERS_NOTE = 'Where the line turns or another joins it.';
export const GUYS_NOTE =
  'A line and peg at each corner, or the net leans in: judgement. Some come with nets.';
export const WIRE_NOTE = 'Wire of all strands with the allowance.';
export const REELS_NOTE = 'To wind the wire up at each move.';
export const INSULATORS_NOTE = 'One a strand on corner posts; on line posts as set below.';
export const GATES_NOTE = 'One a strand and opening of each set.';
export const SIGNS_NOTE =
  'At least 100 × 200 mm, yellow on both sides, where the public passes (IEC annex, second hand).';
export const ENERGIZER_NOTE =
  'One for each group that is out: their fences stand apart. One fence is never fed by two.';
export const RODS_NOTE = 'Do not use water pipes, building steel or a utility earth.';
export const CLAMPS_NOTE = 'One a rod; do not mix copper with galvanised.';
export const LEAD_NOTE = 'Lead-out and ground lead of each energizer.';
export const TESTER_NOTE = 'Measure the volts; do not guess them.';
export const NOT_COUNTED = 'Not for this kind of fence; what you typed stays.';

// Not counted as on hand
export const tooWeak = (energizer: string, needed: number): string =>
  `“${energizer}” puts out less than the ${Math.ceil(needed * 10 - 1e-9) / 10} J that the fence takes, and is not counted.`;

// Compared with fixed fence
export const PAY_NOTE = 'Your own figure, also for your own hours.';
export const WOVEN_GAP_NOTE = '12 ft (Iowa State, published).';
export const INTEREST_NOTE = 'Worked back from Iowa State’s printed table.';
export const HOURS_NOTE = 'Fixed fence: from the table above. Type 0 as the price of what costs you nothing.';
export const LIFE_NOTE = 'Woven wire 20 (Iowa State, published); the others are judgement.';
export const UPKEEP_NOTE =
  'Woven wire 8, high-tensile electric 5 (Iowa State, published); panels are judgement.';
export const BRACES_NOTE = 'A corner post and two braces each: judgement.';
export const STAPLE_WEIGHT_NOTE = '10 lb for 1,320 ft (Iowa State, second hand).';
export const BUILD_HOURS_NOTE = '42 h for 1,320 ft (Iowa State, second hand).';
export const PANEL_POSTS_NOTE = 'One at each joint and one between: judgement.';
export const STAPLES_NOTE = 'Three a post: common practice, no source.';
export const DRIVE_NOTE = 'Less than 5 minutes a metre (Lavelle and others 2011, published).';

// What the table says of itself
export const CAUTIONS: readonly string[] = [
  'The energizer’s manual and local codes decide. Never mains on a fence, never live barbed wire. Keep head, neck and body away from the wire.',
  'Never two energizers or circuits on one fence; fences of separate energizers, as for several groups, stay 2.5 m (8 ft) apart.',
  'Ground rods: 10 m (33 ft) from supply and telephone earths. Never above power lines; 3 m (10 ft) clear to 1 kV, 4 m (13 ft) to 33 kV, 8 m (26 ft) over that. Measure the volts.',
  'Against swine fever some countries demand a second, fixed fence round outdoor pigs: ask the vet office first.',
];
export const HEAD_CAUTION = 'Look out: manual and local codes decide.';
export const TYPE_HERE = 'Type what you have and what it costs.';
export const WRITE_TO_CHANGE = 'Write it anew from the sidebar to change it.';
export const STANDS_AND_NEXT = `What stands and what goes up next. ${WRITE_TO_CHANGE}`;
export const NEXT_NOTE = 'What the pigs stand in, and what goes up next.';

// What is asked
export const WHICH_FENCE = 'What is the fence made of?';
export const HOW_MANY = 'How many paddocks stand fenced at a time?';
export const WHICH_GROUND = 'What do you fence?';
export const tooMany = (most: number): string => `There must be ${most} paddocks or fewer.`;
export const NO_LIST = 'A paddock list with a paddock in it is needed.';

// The next useful task
export const VOLTS_NEXT = '“Check the volts” says whether this fence bites at its far end.';
