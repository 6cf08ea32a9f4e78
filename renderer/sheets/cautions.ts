/** A caution in our own words, and the public body whose advice it follows; null: our own. */
export interface Caution {
  readonly text: string
  readonly source: string | null
}

/** Stands first on every sheet. */
export const LOCAL_RULES =
  'Local codes and licensed practice come first: they decide what may be changed, welded or driven on a road, and who may do it. This sheet does not replace them.'

/** For whoever works on a charged stop; paraphrased, with where to read on. */
export const SHOP_CAUTIONS: readonly Caution[] = [
  {
    text: 'Dry nitrogen only, through a regulator and rated hoses. Cylinders are looked over, stored, moved and used as the gas trade’s own rules say.',
    source: 'OSHA 29 CFR 1910.101',
  },
  {
    text: 'A cylinder hurts by blast, flying parts, escaping gas and by falling: trained people, the right regulator, eye protection, no face over a valve.',
    source: 'HSE INDG308',
  },
  {
    text: 'Nitrogen pushes the air out without a warning. Let it off where there is a draught.',
    source: 'EIGA Doc 44',
  },
  {
    text: 'Nobody under a vehicle that hangs on a jack. Rated stands with their pins, hard level ground, wheels chocked.',
    source: 'HSE INDG434',
  },
  {
    text: 'A body that gas holds up is propped, or let down, before anybody goes under it.',
    source: 'HSE, May 2020',
  },
  {
    text: 'Gas more than 0.5 bar above the air’s own pressure is a pressure system: its risks are thought through first.',
    source: 'UK pressure systems rules',
  },
  { text: 'Let all pressure off before anything is opened; never drill or heat a charged part.', source: null },
  { text: 'A spring in compression holds energy. Back the preload off before a bolt is loosened.', source: null },
  {
    text: 'Cutting or welding a structural part is for qualified people. Torque and thread-locker: from the maker’s data.',
    source: null,
  },
]
