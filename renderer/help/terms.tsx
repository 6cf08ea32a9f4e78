import type { ReactNode } from 'react'
import { HowPicture } from '../charts/measuring/HowPicture.tsx'
import * as draw from './pictures.tsx'

/** A word of the job: what it is, why it matters, and where it can hurt somebody. */
export interface Term {
  readonly id: string
  readonly name: string
  readonly says: readonly string[]
  readonly caution?: string
  readonly picture: ReactNode
}

const pictured = (drawn: ReactNode): ReactNode => (
  <svg viewBox="0 0 84 92" width="100%" aria-hidden="true">
    {drawn}
  </svg>
)

const measured = (field: string): ReactNode => <HowPicture field={field} />

const nitrogen =
  'Pressurised nitrogen can kill. Only dry nitrogen, through a regulator, with rated hoses and eye protection. Let all pressure out before anything is opened, and keep your face away from the valve.'
const springs = 'Springs hold energy even on a hanging wheel. Back the preload off first, and never undo a loaded seat.'
const stands = 'Work under a raised vehicle only when it stands on rated stands.'

/** Every word help explains, in groups, in the order the measurements are taken. */
export const termGroups: readonly { readonly name: string; readonly terms: readonly Term[] }[] = [
  {
    name: 'Wheel travel',
    terms: [
      {
        id: 'wheel-travel',
        name: 'Wheel travel',
        says: [
          'How far the wheel moves up and down, from hanging to as high as it goes. It is the upright axis of every page.',
          'Think of it as money to spend: the coilover spends the first part alone, then the bump stop helps, then something ends it.',
        ],
        picture: pictured(<draw.Travel measured="all" />),
      },
      {
        id: 'bump-droop',
        name: 'Bump and droop',
        says: [
          'Bump is the wheel going up toward the chassis. Droop is the wheel going down, away from it.',
          'Both are counted from ride height: bump is positive, droop negative.',
        ],
        picture: pictured(<draw.Travel measured="bump" />),
      },
      {
        id: 'ride-height',
        name: 'Ride height',
        says: [
          'Where the wheel sits with the car standing level, at its usual weight. All positions are counted from here, so it is zero.',
          'Gap and shaft showing are both taken here. Roll the car forward and back first, so that the tires let go.',
        ],
        caution: stands,
        picture: pictured(<draw.RideHeight />),
      },
      {
        id: 'full-bump',
        name: 'Full bump',
        says: [
          'As high as the wheel can go. Whatever gives out first ends it: the stop closed, the shock closed, a spring in coil bind, metal near metal, or the linkage.',
          'The best end is the one that is made to take it, which is the bump stop.',
        ],
        picture: measured('corner.clearance.bump'),
      },
      {
        id: 'full-droop',
        name: 'Full droop',
        says: [
          'As low as the wheel can hang: the shock fully out, a strap pulled tight, or the linkage.',
          'A shock that is stretched out again and again wears at its top. A limit strap takes that load.',
        ],
        picture: measured('corner.clearance.droop'),
      },
      {
        id: 'motion-ratio',
        name: 'Motion ratio',
        says: [
          'How far the shock, or the stop, moves while the wheel moves one inch. On most cars it is below 1: the shock moves less than the wheel.',
          'Force at the wheel is force of the shock times this ratio. A spring’s rate counts with its square.',
        ],
        picture: measured('corner.linkage.shock'),
      },
      {
        id: 'rising-rate',
        name: 'Rising rate',
        says: [
          'The suspension gets stiffer as the wheel goes up. The linkage can do it, when the motion ratio grows with travel; so can a crossover, gas, and the bump stop.',
          'Falling is the other way about: soft exactly where the car needs support.',
        ],
        picture: pictured(<draw.Rising />),
      },
      {
        id: 'wheel-rate',
        name: 'Wheel rate',
        says: [
          'How much more force the wheel needs for one more inch, with linkage, springs and gas together. It is how steep the curve of forces is at that place.',
        ],
        picture: pictured(<draw.Slope />),
      },
      {
        id: 'ride-frequency',
        name: 'Ride frequency',
        says: [
          'How many times a second the car would bob by itself. Low is soft and slow, high is stiff and quick.',
          'It goes by wheel rate and by the weight carried, so springs can be compared across cars.',
        ],
        picture: pictured(<draw.Frequency />),
      },
    ],
  },
  {
    name: 'Shock and springs',
    terms: [
      {
        id: 'coilover',
        name: 'Coilover',
        says: ['A shock with its springs around it, in one piece. It carries the car from ride height to the stop.'],
        picture: pictured(<draw.Coilover />),
      },
      {
        id: 'shaft-showing',
        name: 'Shaft showing',
        says: [
          'The bright shaft you can see at ride height, seal to end. It is what the shock can still go in: when it is used up, the shock is closed.',
        ],
        picture: measured('corner.shock.showing'),
      },
      {
        id: 'shock-stroke',
        name: 'Stroke',
        says: [
          'All a shock or a stop can move, from fully out to closed. Its maker gives it; a tape on the shaft proves it.',
        ],
        picture: measured('corner.shock.stroke'),
      },
      {
        id: 'preload',
        name: 'Preload',
        says: [
          'How far the springs are already pressed together with the shock fully out. More of it lifts the car; it does not make a spring stiffer.',
          'Too little, and the springs come loose when the wheel hangs.',
        ],
        caution: springs,
        picture: measured('corner.springs.preload'),
      },
      {
        id: 'tender-main',
        name: 'Tender and main',
        says: [
          'Two springs in one line, with a divider between. Both carry the same force, so both give, and together they are softer than either.',
          'The main is the one at the wheel’s end. The tender sits above it, toward the chassis.',
        ],
        caution: springs,
        picture: pictured(<draw.InSeries />),
      },
      {
        id: 'crossover',
        name: 'Crossover',
        says: [
          'Where the tender stops moving: its divider meets a stop ring, or it binds. From there on the main works alone, and the car is stiffer.',
          'Moving the ring moves the place.',
        ],
        caution: springs,
        picture: measured('corner.springs.crossover.gap'),
      },
      {
        id: 'coil-bind',
        name: 'Coil bind',
        says: [
          'A spring pressed until its coils touch. It is then a piece of steel and gives no more.',
          'A tender may bind early and be none the worse. A main that binds before full bump takes hits it is not made for.',
        ],
        picture: measured('corner.springs.springs.0.solidLength'),
      },
      {
        id: 'damper-curve',
        name: 'Damper curve',
        says: [
          'How hard the shock resists at each speed of its shaft, going in and coming out. It slows movement; it holds no weight.',
          'A shop can measure it. Without it, rides are worked out with none, and marked so.',
        ],
        picture: measured('corner.shock.compression'),
      },
    ],
  },
  {
    name: 'Bump stop',
    terms: [
      {
        id: 'bump-stop',
        name: 'Bump stop',
        says: [
          'A second, short and strong spring for the end of the travel. A hydraulic one is nitrogen over oil in a body; an elastomer one is a block of foam or rubber.',
        ],
        caution: nitrogen,
        picture: measured('corner.stop.stroke'),
      },
      {
        id: 'stop-gap',
        name: 'Stop gap',
        says: [
          'The air between the stop’s foot and its pad at ride height, taken along the stop. Together with the linkage it decides where the stop comes in.',
          'Below zero means the stop is already pushed in, and helps to carry the car.',
        ],
        picture: measured('corner.stop.gap'),
      },
      {
        id: 'engagement',
        name: 'Engagement',
        says: [
          'The wheel position where pad and stop meet. The one thick line across the window.',
          'Early, and the car rides on its stops and is harsh. Late, and there is too little of the stop left to catch a landing.',
        ],
        picture: pictured(<draw.Meeting />),
      },
      {
        id: 'coilover-share',
        name: 'Coilover share',
        says: [
          'The part of the bump travel the coilover has to itself: from ride height to engagement, over all the way to full bump.',
          'That stretch is the coilover zone. The rest, up to full bump, is the engagement zone.',
        ],
        picture: pictured(<draw.Zones shown="coilover" />),
      },
      {
        id: 'engagement-zone',
        name: 'Engagement zone',
        says: ['Wheel travel from engagement to full bump, where springs and stop work together.'],
        picture: pictured(<draw.Zones shown="engagement" />),
      },
      {
        id: 'charge',
        name: 'Bump stop charge',
        says: [
          'The nitrogen pressure in the stop at full length, above the air around. More of it is a harder first touch and a harder end.',
          'Check it cold, fully out. It rises as the stop goes in, and as it gets warm.',
        ],
        caution: nitrogen,
        picture: measured('corner.stop.charge'),
      },
      {
        id: 'step',
        name: 'Step',
        says: [
          'A charged stop pushes back from the first touch, before it moves at all: charge times the area of its shaft. On the curve of forces that is a jump.',
          'A car can come to rest anywhere on it, with the stop just touching.',
        ],
        picture: pictured(<draw.Step />),
      },
      {
        id: 'slow-fast',
        name: 'Slow and fast gas',
        says: [
          'Gas pressed slowly gives its heat away; pressed fast it keeps it and pushes harder. A real hit lies between, so both are shown, as a band.',
        ],
        picture: pictured(<draw.SlowFast />),
      },
      {
        id: 'gas-volume',
        name: 'Gas volume',
        says: [
          'The room the nitrogen has at full length. The smaller it is, the steeper the force climbs toward the end. More oil means less of it.',
        ],
        caution: nitrogen,
        picture: measured('corner.stop.gasVolume'),
      },
      {
        id: 'spacer',
        name: 'Spacer',
        says: [
          'A piece of tube over the shaft inside a hydraulic stop. The stop comes out less far by its length: less stroke, more gap, and the closed end stays where it was.',
        ],
        caution: nitrogen,
        picture: measured('corner.stop.spacer.length'),
      },
    ],
  },
  {
    name: 'Car and ground',
    terms: [
      {
        id: 'weights',
        name: 'Corner and unsprung weight',
        says: [
          'Corner weight is what one tire carries at ride height, on a scale. Unsprung is the part below the springs: wheel, hub, brake, half the links.',
          'What is left is what the springs and the stop hold up.',
        ],
        caution: stands,
        picture: measured('corner.cornerMass'),
      },
      {
        id: 'static-position',
        name: 'Where it rests',
        says: [
          'The wheel position at which the forces worked out carry the weight. It should be ride height.',
          'When it is not, a measurement is off, or the stop is carrying part of the car.',
        ],
        picture: measured('corner.unsprungMass'),
      },
      {
        id: 'demands',
        name: 'Demands and balance',
        says: [
          'Each load, such as people, braking or a corner, uses some of the coilover zone. The balance is what they leave before the stop comes in.',
          'Loads that come together are worked out together, not added up.',
          'A name switches its load on and off. Its bar is dragged, stepped with the arrow keys, or pressed to type its size.',
        ],
        picture: pictured(<draw.Demands />),
      },
      {
        id: 'roll',
        name: 'Roll',
        says: ['The body leaning in a corner. The outer wheel goes into bump, so it meets its stop first.'],
        picture: measured('loads.0.lateral'),
      },
      {
        id: 'landing',
        name: 'Landing height',
        says: [
          'How far the car falls, wheels hanging, until they touch. The height it takes before metal meets metal says how much a setup can catch.',
        ],
        caution: 'A number on a screen is no reason to jump. Test gently, and work up to it.',
        picture: measured('terrains.0.drop'),
      },
      {
        id: 'tire',
        name: 'Tire rate',
        says: ['The tire is a spring too: how much more weight it takes to press it down one more inch.'],
        picture: measured('corner.tire.rate'),
      },
    ],
  },
  {
    name: 'The plan',
    terms: [
      {
        id: 'setups',
        name: 'As found and proposed',
        says: [
          'As found is the car as it was measured. Proposed is what is planned. Every page shows one and draws the other in dashes.',
        ],
        picture: pictured(<draw.TwoSetups />),
      },
      {
        id: 'shelf',
        name: 'Shelf',
        says: [
          'The stops, springs and tubes the shop has to hand. Changes are sought among them, and spacers are cut from its tubes.',
          'It is kept for every plan, apart from the plan’s own file, and can be carried to another computer as a file.',
        ],
        picture: pictured(<draw.Shelf />),
      },
      {
        id: 'assumed',
        name: 'Assumed',
        says: [
          'A value nobody has measured yet: in italics, with a broken underline. It stands in so that the rest can be worked out. Measure it, and mark it as measured.',
        ],
        picture: pictured(<draw.NotMeasured />),
      },
      {
        id: 'recorded-run',
        name: 'Recorded run',
        says: [
          'What a travel sensor wrote down while the car was driven. Laid over the plan it shows how much of the time the wheel was in each zone, and how often and how fast the stop was met. Let it record while the car stands at ride height and hangs at full droop: zero and sign come from there.',
        ],
        picture: pictured(<draw.Zones shown="engagement" />),
      },
      {
        id: 'how-sure',
        name: 'How sure',
        says: [
          'No tape is read exactly. The plan is worked out many times, each measurement a little off, to see how far each result can be out, and which measurement to take again first.',
          'No end means that the gas may run out before the travel does: the stop is then as good as solid, and no number says how hard it hits. Measure its gas volume.',
        ],
        picture: pictured(<draw.Heap />),
      },
      {
        id: 'finding',
        name: 'Finding',
        says: [
          'Something worth saying, with its number and what would change it. An octagon is danger, a triangle caution, a circle a note.',
        ],
        caution:
          'Cutting or welding structural parts, and anything driven on a road, is for qualified people under local rules. Measure again after the work, and cycle the suspension without springs.',
        picture: pictured(<draw.Zones shown="coilover" />),
      },
    ],
  },
]
