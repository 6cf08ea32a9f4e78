/** A round tube as it is bought. */
export interface TubeSize {
  /** m. */
  readonly outerDiameter: number
  /** m, less than half the outer diameter. */
  readonly wall: number
}

export interface TubeSection {
  /** m. */
  readonly bore: number
  /** Of metal, m². */
  readonly area: number
  /** Second moment of area, m⁴. */
  readonly inertia: number
  /** √(inertia/area), m. */
  readonly gyration: number
}

/** Of carbon steel, kg/m³: 0.2836 lb/in³, the figure behind 10.69·(OD − t)·t lb/ft of the tube trade. */
export const STEEL_DENSITY = 7850

/** The section of a tube: π/4·(OD² − ID²), π/64·(OD⁴ − ID⁴) (any strength-of-materials text). */
export function tubeSection({ outerDiameter, wall }: TubeSize): TubeSection {
  const bore = outerDiameter - 2 * wall
  const area = (Math.PI / 4) * (outerDiameter ** 2 - bore ** 2)
  const inertia = (Math.PI / 64) * (outerDiameter ** 4 - bore ** 4)
  return { bore, area, inertia, gyration: Math.sqrt(outerDiameter ** 2 + bore ** 2) / 4 }
}

/** The same tube with its bore opened up to `bore`, m. */
export const boredOut = ({ outerDiameter }: TubeSize, bore: number): TubeSize => ({
  outerDiameter,
  wall: (outerDiameter - bore) / 2,
})

/** Metal in a length of tube, m³: the oil it pushes aside, and so the oil to leave out. */
export const metalVolume = (size: TubeSize, length: number): number => tubeSection(size).area * length

/** kg. */
export const tubeMass = (size: TubeSize, length: number): number => metalVolume(size, length) * STEEL_DENSITY
