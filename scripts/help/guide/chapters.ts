/**
 * The guide's text. A name in braces stands for what the sheet of the guide holds under that name, with its unit; with
 * `=` before it, for the verdict of that label; in double brackets, for a formula and what it gives. No number that a
 * sheet knows is typed here.
 */
export interface Chapter {
  readonly title: string;
  /** Sections of the design sheet that the chapter is about, by id or heading: their rows are its picture. */
  readonly sections: readonly string[];
  readonly text: readonly string[];
  /** Where hands get hurt. */
  readonly caution?: string;
}

export const chapters: readonly Chapter[] = [
  {
    title: 'From a drawing to a sheet',
    sections: ['Verdicts'],
    text: [
      'The part of this guide is invented: a round cap of {resin} for the handle of a bench tool, deep for its width, so that it grips the core it is molded on. {quantity} of them are wanted. The press stands on a bench; a hand closes its clamp and air drives its plunger.',
      'Start with a design sheet, not with functions. On the page open the menu Samples and choose “A design sheet of your own sections…”; on the command line type `moldsheet new cap.xlsx`; in Excel it is under Sheets in the pane. It holds one section for each thing that has to be decided, in the order of the job, filled with the numbers of this cap. Every yellow cell is yours to type over; everything else follows.',
      'A number without a unit is read in the units that the sheet names at its top. A number with its unit is read as it stands: `3/8 in` and `9.5 mm` may stand in the same column. A comma is never taken for a decimal point: the cell says so instead.',
      'At the top stands the sum of it: every verdict is one of four, holds, little to spare, does not hold, not known. At this moment the whole design says “{=The whole design}”. When you have typed your own numbers it may say something else, and the row that is to blame says what to do.',
      'What a function cannot know it does not guess. Select any result and open Work: the equation, the numbers that went in, the range in which it holds, and what each source is worth.',
    ],
  },
  {
    title: 'Will the press fill it and hold it shut?',
    sections: ['press'],
    text: [
      'Air at {air_pressure} on a cylinder of {air_bore} drives a plunger of {plunger_dia}. The ratio of the areas makes it {melt_pressure} in the melt, less what drag takes. A resin usually wants more or less than that: the cavity pressure to design for is the lower of the two, here {cavity_pressure}.',
      'That pressure on the projected area pushes the mold open. The clamp holds {clamp_spare} times as much: “{=Clamp}”. Below 1 the mold opens and the part flashes, however well it was milled.',
      'The shot is melt, and melt takes more room than the part it becomes: {melt_volume} are needed, the plunger gives {shot_volume}. A thicker plunger gives more and makes less pressure; this is the trade that a small press is always about.',
      'Before you cut steel, look at the room to take the part out: {daylight} are left when the press is open. A mold that fills well and cannot be emptied is scrap.',
    ],
    caution:
      'Compressed air, hot melt and a closing clamp crush and burn. Guards in place, follow the manual of the machine, and bleed the air before you reach in.',
  },
  {
    title: 'Ways for the melt, ways for the air',
    sections: ['runner'],
    text: [
      'A runner is opened, never closed: begin with {runner_dia}. Through its length the melt loses {runner_drop}. Half of what the press makes should be left at the gate; the sheet says “{=Runner: half the pressure is left}”.',
      'The gate begins at {gate_depth}, a part of the wall. Steel that is still there can be cut; a gate that is too deep leaves a scar and cannot be made smaller without welding.',
      'The melt drives the air out ahead of it. A vent of {vent_depth} lets air through and not this resin, and it takes {vent_needed} of such width, all together. Trapped air burns the part, and the mark sits where the vent should have been.',
      'The flow of a melt comes from the curve in its data sheet. Where you have none, the number is an estimate: fill short on purpose at the first shots and see how far it runs.',
    ],
    caution:
      'A mold that is vented badly burns the part and can spit. Stand aside on the first shots, with a face shield on.',
  },
  {
    title: 'What size to cut the cavity',
    sections: [],
    text: [
      'The cap shrinks while it cools, so the cavity is cut larger. The shrinkage of a resin is the difference between cold mold and cold part over the size of the mold: the part is divided by one less the shrinkage. [[MOLD.SHRINK.CAVITY("30 mm","PP","mm")]].',
      'A resin’s shrinkage is a range, not a number. [[MOLD.RESIN.VALUE("PP","shrinkage low","mm")]] and [[MOLD.RESIN.VALUE("PP","shrinkage high","mm")]] of the length, as lists of such grades have it; your own grade, wall and packing decide where in it you land.',
      'So cut to the side from which steel can still be taken: cores large, cavities small. Mold a dozen, let them rest for a day, measure, and correct once.',
      'Warm steel grows, but that is in the shrinkage already, since it compares cold with cold. Adding it again is the usual mistake.',
    ],
  },
  {
    title: 'The insert in its taper',
    sections: ['seat'],
    text: [
      'The core of the cap is a tapered insert that is pushed out with the part on it. Under injection the melt pushes {seat_push} on its face. A taper turns that into {seat_force} square to the flanks: a wedge, which is why a small draft is so strong.',
      'Two questions pull the draft in different directions. A steep taper sinks less and lets go better; a shallow one centers harder and locks. With the friction of the sheet, any draft below {free_draft} stays stuck until something pushes: this one, at {draft}, needs {seat_release}.',
      'Under pressure the insert sinks {seat_sink} into its seat, since steel and block give. Drive it home with {seating_push} first, mill the face flush while {milling_push} hold it, and most of that is taken up beforehand: what is left is a step of {witness} at the face, “{=Witness within 0.05 mm}”.',
      'These numbers are known to about 40 %: blue the seat and look how much of it bears. A seat that bears on its wide end only sinks deeper than any equation says.',
      'Leave {flush_stock} of stock for milling it flush in place: the tolerances of seat, cut-off and touching off add up to no less.',
    ],
    caution:
      'A seat that lets go at once can throw the insert. Press it out against a stop, hands and face out of its way.',
  },
  {
    title: 'The spring that pulls it home',
    sections: ['spring'],
    text: [
      'After ejection a spring pulls the insert back. Lying in its pocket it must hold {spring_hold}: the weight of what moves and what drags on it, with a margin. This one, at a rate of {spring_rate}, gives {spring_preload}: “{=Keeps the insert home}”.',
      'Preload is set by a shim. For just enough it would be {shim_needed} thick; a negative number means that the pocket may be deeper by as much.',
      'Look at the other end too. At full lift the spring is {lifted_length} long and pushes with {lifted_force}; coil on coil it is {solid_length}. Counted from the pocket less its shim it allows {spring_travel} of lift with a tenth kept in reserve: “{=Lift}”. A spring that goes solid stops the insert, and something bends.',
      'Wire that is stressed beyond its yield sets: the insert comes home today and not in a month. The sheet compares the two.',
    ],
    caution:
      'A compressed spring stores energy. Relieve it under control, wear eye protection, never look along its axis.',
  },
  {
    title: 'Screws and tapped holes',
    sections: ['screw', 'holes'],
    text: [
      'The insert is held from behind by {thread}. Pulled to a part of its proof load it clamps with {screw_preload}, at a torque of {screw_torque}. Friction scatters that by a third either way: it is a figure to set a wrench by, not a measurement.',
      'A thread in a soft block strips before the screw breaks, which ruins the block instead of the screw. With {engage_needed} engaged the screw would be the first to go; here “{=Engagement}”.',
      'The tap drill is {tap_drill}, the clearance hole {clearance_hole}, the counterbore {bore_dia} wide and {bore_depth} deep, so that the head ends below the face.',
      'The hole schedule below lists every thread of the mold with its drill. Type a thread as you would say it, `10-32` or `M6`: the cells are text, so that none becomes a date.',
    ],
    caution:
      'A screw that strips under load lets go at once. Pull it with a torque wrench. Clamp every plate before you drill it, and wear no gloves at the spindle.',
  },
  {
    title: 'Pins, where there is no insert',
    sections: ['eject'],
    text: [
      'A part that shrank onto a core grips it. The cap would take {strip_force} to strip, and a closed core adds {vacuum_force} of vacuum until air gets under it: a vent in the core takes that away. With the margin it is {eject_force}.',
      'Pins push on plastic that is still warm. So that they neither push through nor mark it, {pin_count} of this size would do; the sheet has {pins}: “{=Pins}”.',
      'A long thin pin buckles before it wears. Each bears {pin_load}: “{=Pins in buckling}”. The verdict asks for {buckling_reserve} times the load on one, since pins are never evenly loaded. Guide it longer, or step it, where the sheet says little to spare.',
      'Around each pin the melt finds a gap. {pin_flash} are to spare before it flashes: “{=Pins without flash}”.',
    ],
    caution:
      'Pins and plates close fast. Keep hands out while anything can move, and lock the press out before you reach in.',
  },
  {
    title: 'Plates, pillars and the cutters for them',
    sections: ['plate', 'cutters'],
    text: [
      'The melt bends the plate behind the cavity. Without pillars it sags {plate_sag}, and the parting line opens by as much; {thickness_needed} would keep to {allow_sag}: “{=Plate}”.',
      'Pillars under the cavity carry the load straight through. They give {pillar_give}: grind them longer by about this, so that they bear before the plate does.',
      'Cutting speed for {work_metal} begins at {cut_speed}; the table turns that into a speed and a feed for every cutter, down to what the spindle can do. They are for a short reach and the first chip: a cutter that sticks out far bends with the cube of its length, and CUT.BEND says by how much.',
      'Look the metal up by its state: hardened steel has its own row, and a name alone is refused where it could be two things.',
    ],
    caution:
      'Plates are heavy, cutters break: eyebolts screwed home, guards closed, eye protection on, and slower than these figures at first.',
  },
  {
    title: 'First shots, cost, and handing on',
    sections: ['cost'],
    text: [
      'The wall cools in {cool_time}; with filling, holding and the hand it makes {cycle} a shot. A part comes to {part_cost} at this quantity: “{=Cost}”. What-if shows from how many parts on a second cavity pays.',
      'Write every trial shot into the shot log: what was set, what came out. In a design of your own it is empty and nothing rests on it until two shots are there. On this sheet {fitted_release_friction_shots} invented shots put the friction coming out at {fitted_release_friction}, and the seat goes on with that; beside it stands how far the scatter leaves it open and how far the shots lie from the prediction, which is what the design should allow for. One word there goes back to the number above it.',
      'Then ask what if, in the tab of that name: vary the draft or the friction over what is usual, and see where a verdict turns. A design that holds on one number only does not hold.',
      'A colleague without Moldsheet gets a copy: plain formulas with its basis on a sheet beside it, or one file that opens in any browser. Both say what they were made from. When the copy comes back, the functions are restored in place and changed inputs are taken along.',
      'A sheet supports your judgment and does not replace it. Where it differs from the machine’s manual, local codes or the advice of a licensed engineer, follow those.',
    ],
    caution:
      'The first shots are the ones that spit. Guards closed, face shield on, low pressure first, and nobody beside the parting line.',
  },
];
