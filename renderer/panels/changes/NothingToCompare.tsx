/** Where there is no other setup to hold this one against: how to get one. */
export const NothingToCompare = ({ only }: { only: boolean }) => (
  <div className="before-after">
    <p>
      {only
        ? 'There is only this setup. Look for what fits or change something by hand, make it a setup, and before and after stand here.'
        : 'It is compared with nothing, or with a setup that has not this axle. Choose one under “Edit”, beside the setups.'}
    </p>
  </div>
)
