import { pictureOf } from './picture-of.tsx'

/**
 * A small line picture of how a field is measured.
 * @param field path inside an axle or a plan, such as `corner.stop.gap` or `loads.0.lateral`
 */
export const HowPicture = ({ field }: { readonly field: string }) => (
  <svg viewBox="0 0 84 92" width="100%" aria-hidden="true">
    {pictureOf(field)}
  </svg>
)
