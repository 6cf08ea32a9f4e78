/** A small line picture of how a field is measured. */
export const HowPicture = ({ field }: { readonly field: string }) => <svg viewBox="0 0 84 92" aria-label={field} />
