import type { Log } from './log-command.ts'

/** A recorded run for programs: SI units, wheel positions in m from ride height, shares of the recorded time. */
export const logJson = ({ setup, axle, table, encoding, lowPass, zeroPicked, channels }: Log) => ({
  setup,
  axle: axle.axle.id,
  file: {
    encoding,
    delimiter: table.shape.delimiter,
    decimal: table.shape.decimalComma ? ',' : '.',
    headerRows: table.shape.headerRows,
    rows: table.rows,
    ...table.faults,
  },
  lowPass,
  zero: zeroPicked ? 'ride height picked' : 'as recorded',
  channels: channels.map(({ name, measures, laid: { figures, findings, calibration, run } }) => ({
    name,
    measures,
    calibration,
    step: run.step,
    gaps: run.gaps,
    lost: run.lost,
    duration: figures.duration,
    share: figures.share,
    hits: figures.hits,
    bottoms: figures.bottoms,
    wheelMax: figures.wheelMax,
    wheelMin: figures.wheelMin,
    wheelMean: figures.wheelMean,
    stopSpeedMax: figures.stopSpeedMax,
    still: figures.still,
    histogram: figures.histogram,
    shaftSpeeds: figures.shaftSpeeds,
    beyond: figures.beyond,
    findings: findings.map(({ id, severity, message, values }) => ({ id, severity, message, values })),
  })),
})
