import type { CarEnd, CarGeometry } from './car-geometry.ts'

const WIDTH = 124
const HEIGHT = 46

export const CAR_SIZE = { width: WIDTH, ground: HEIGHT - 2 } as const

/** Nose up or down in words. */
export function pitchWords(pitch: number): string {
  const degrees = Math.abs((pitch * 180) / Math.PI)
  return degrees < 0.05 ? 'level' : `nose ${pitch > 0 ? 'down' : 'up'} ${degrees.toFixed(1)}°`
}

const End = ({ end: { x, wheel, radius, body, road } }: { readonly end: CarEnd }) => (
  <>
    <line className="car-road" x1={x - 20} x2={x + 20} y1={road} y2={road} />
    <line className="car-strut" x1={x} x2={x} y1={body} y2={wheel} />
    <circle className="car-wheel" cx={x} cy={wheel} r={radius} />
  </>
)

/** The whole car at the moment shown: how it heaves and pitches over its wheels. */
export function CarDrawing({ car: { front, rear, pitch } }: { readonly car: CarGeometry }) {
  const slope = (front.body - rear.body) / (front.x - rear.x)
  const out = front.radius
  return (
    <figure className="car-drawing">
      <svg width={WIDTH} height={HEIGHT} role="img" aria-label={`Whole car, ${pitchWords(pitch)}`}>
        <End end={rear} />
        <End end={front} />
        <line
          className="car-body"
          x1={rear.x - out}
          x2={front.x + out}
          y1={rear.body - slope * out}
          y2={front.body + slope * out}
        />
      </svg>
      <figcaption aria-hidden="true">{pitchWords(pitch)}</figcaption>
    </figure>
  )
}
