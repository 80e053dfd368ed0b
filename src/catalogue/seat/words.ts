import type { FamilyWords } from '../../core/familyWords';

export const seatWords: FamilyWords = {
  title: 'Tapered seat',
  question: 'How does a tapered insert seat, hold, sink and come out again?',
  also: 'insert pocket taper wedge cone core plug',
  functions: {
    'SEAT.PUSH':
      'melt force on the insert face; injection pressure times area; load on a core or shutoff face; how hard the plastic pushes',
    'SEAT.FORCE':
      'wedging force; drive home; press in; force to seat; tap in; side load on the pocket walls; normal load; force against the flanks',
    'SEAT.SPREAD':
      'force that opens up the pocket; wedge splitting force; bursting load on the block; prying apart',
    'SEAT.PRESSURE': 'bearing stress on the taper; surface load; galling; marks on the flanks',
    'SEAT.RELEASE':
      'break loose; pull out force; stuck insert; jammed taper; unseat; how hard to knock it out',
    'SEAT.FREEDRAFT':
      'self releasing angle; self holding taper; non locking; minimum draft; smallest angle that will not stick; locking taper',
    'SEAT.SINK':
      'how far the insert goes in under pressure; seats deeper; elastic deflection; compress; gets pushed back; moves under load',
    'SEAT.WEDGESINK':
      'rectangular insert; flat sided wedge; how far a wedge block goes in under load; gib; heel block',
    'SEAT.STIFFNESS': 'spring constant of the seat; rigidity; load per travel; give of the pocket',
    'SEAT.STEP':
      'witness line; mismatch at the face; ledge; insert stands below or above the cavity face; flush under pressure',
    'SEAT.MILLPUSH':
      'hold down force while milling in place; preload for flush cutting; weight on the insert when facing; clamp for finishing in the block',
    'SEAT.PUSHOUT':
      'knock out effort; ejector force on the insert; force to push insert against springs; hand force; opening effort',
    'SEAT.HEIGHT':
      'insert sits high; sits low; proud or shy; width error to height; fit too tight or loose; taper ratio',
    'SEAT.HEATDROP': 'insert rises when hot; thermal change of height; hot mold; warm up; grows',
    'SEAT.SLIDEBACK': 'creeps back; springs back out; loses hold; load left when the pressure goes',
    'SEAT.CLEAR': 'side clearance when lifted; gap opened; air gap; free of the wall; rubbing on the way out',
    'SEAT.LIFT': 'how far to raise for clearance; travel to free the sides',
    'SEAT.HOOP': 'hoop stress; tangential stress around the pocket; block cracks; burst; split the plate',
    'SEAT.BALLWIDTH':
      'measure a taper bore with a ball; gauge ball; width at the top of a tapered pocket; check a tapered hole',
    'SEAT.PINWIDTH':
      'measurement over pins; gauge pins on a taper; over wires; check the size of a tapered insert',
  },
};
