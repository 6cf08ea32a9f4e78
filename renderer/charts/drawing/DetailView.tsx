import type { Detail } from './detail.ts'
import { shape } from './look.ts'
import { pagePath } from './pen.ts'
import { Shapes } from './Shapes.tsx'
import { Words } from './Words.tsx'

/** Detail A: its title under a rule, the enlarged parts cut off at the frame, the dimension over them. */
export const DetailView = ({ id, detail }: { readonly id: string; readonly detail: Detail }) => {
  const { frame, over, clip, title, shapes, dimension } = detail
  const rule = pagePath([
    [frame.x - 2, clip.y - 1],
    [frame.x + frame.width, clip.y - 1],
  ])
  return (
    <g>
      <rect
        x={frame.x - 6}
        y={frame.y}
        width={frame.width + 12}
        height={frame.height + 6}
        style={{ fill: 'var(--sheet)', stroke: over ? 'var(--rule)' : 'none' }}
      />
      <Words x={frame.x - 2} y={frame.y + 13} spans={title} />
      <Shapes shapes={[shape('rule', rule)]} />
      <clipPath id={id}>
        <rect x={clip.x} y={clip.y} width={clip.width} height={clip.height} />
      </clipPath>
      <g clipPath={`url(#${id})`}>
        <Shapes shapes={shapes} />
        <Shapes shapes={dimension.shapes} />
        <Words x={dimension.x} y={dimension.y} spans={dimension.spans} />
      </g>
    </g>
  )
}
