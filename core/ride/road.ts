/** What a wheel finds under it: height, m, and how fast it rises, m/s. */
export interface Under {
  road: number
  roadRise: number
}

/** The road under one wheel as it passes, written down by two functions of time. */
export interface RoadShape {
  /** How long it is looked at, s. */
  readonly duration: number
  /** m, 0 where it starts. */
  height(time: number): number
  /** How fast the height rises, m/s. */
  rise(time: number): number
  /** Times where height or rise breaks, s, rising. */
  readonly breaks: readonly number[]
  /** Longest step that cannot miss a feature of it between a time and the next break, s. */
  longestStep(from: number): number
}

/** The road under one wheel as it passes. */
export interface Road extends RoadShape {
  /** Leaves height and rise at a time under a wheel: one look for both. */
  look(time: number, under: Under): void
}

/** Height and rise of a road that is looked at. */
export function lookedAt(look: Road['look']): Pick<RoadShape, 'height' | 'rise'> {
  const under: Under = { road: 0, roadRise: 0 }
  return {
    height: time => {
      look(time, under)
      return under.road
    },
    rise: time => {
      look(time, under)
      return under.roadRise
    },
  }
}

/** A road from two functions, for roads that are not driven in a hurry. */
export const asRoad = (shape: RoadShape): Road => ({
  ...shape,
  look: (time, under) => {
    under.road = shape.height(time)
    under.roadRise = shape.rise(time)
  },
})

/** Level road before and after an obstacle, s. */
export const LEAD_IN = 1
export const RUN_OUT = 2

/** A step no longer than this sees every motion of a car, s. */
export const LONGEST_STEP = 0.04
