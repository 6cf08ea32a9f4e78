import { keysOf } from '../shortcuts.ts'

/** One stop of the first look around: the part of the window it is about, and what is said there. */
export interface GuideStep {
  readonly name: string
  readonly says: string
  /** Finds the part; the note stands in the middle where there is none. */
  readonly part: string
}

export const guideSteps: readonly GuideStep[] = [
  {
    name: 'Measure',
    says: 'Enter what the tape says, such as 2 7/8. How to take each stands below. A broken underline means nobody has measured it yet.',
    part: '.meas',
  },
  {
    name: 'See where the travel goes',
    says: 'Up and down is wheel travel, in every column. The thick line is where the bump stop comes in. Drag the tag on the axis, or use its arrow keys, and everything follows.',
    part: '.plate',
  },
  {
    name: 'Read what is found',
    says: 'What is wrong or worth knowing stands here, with its number and what would change it.',
    part: '.find',
  },
  {
    name: 'Plan beside what is there',
    says: 'As found is the car as it is, Proposed is what you plan. One is drawn solid, the other dashed. Every change is kept, and can be undone.',
    part: '.bar',
  },
  {
    name: 'Ask what a word means',
    says: `The ? at each group explains its words, and ${keysOf('help')} explains all of them. This look around is in the menu under the plan’s name.`,
    part: '.group',
  },
]
