/** Paths of fields, one of each family, as the window asks for their pictures. */
export const FIELDS = ['corner.stop.gap'] as const
