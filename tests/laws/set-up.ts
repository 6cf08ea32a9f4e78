import fc from 'fast-check'

/** A law that fails is made smaller for a while, not for ever: what is known by then is reported. */
fc.configureGlobal({ interruptAfterTimeLimit: 30_000, markInterruptAsFailure: true })
