import { STROKE_SHARES } from '../../core/runs/strokes.ts'
import type { Log } from './log-command.ts'
import type { LogFile } from './log-source.ts'

function fileJson(file: LogFile) {
  if (file.kind === 'kept') return { kept: file.digest }
  const { detected, table } = file
  const { encoding, lineEnd, delimiter, decimalComma, headerRows, unitsRow, time } = detected.reading
  return {
    encoding,
    lineEnd,
    delimiter,
    decimal: decimalComma ? ',' : '.',
    headerRows,
    unitsRow,
    time,
    rows: table.rows,
    ...table.faults,
    firstLines: table.firstLines,
    startedAt: table.startedAt,
    doubts: detected.doubts.map(({ says }) => says),
  }
}

/** A recorded run for programs: SI units, wheel positions in m from ride height, shares of the recorded time. */
export function logJson({ setup, axle, file, channels, since, kept, changed }: Log) {
  const travel = axle.model.bump - axle.model.droop
  return {
    setup,
    axle: axle.axle.id,
    file: fileJson(file),
    kept,
    changed,
    since,
    channels: channels.map(({ channel, seen, findings, strokes, asked, laid: { figures, calibration, run } }) => ({
      name: channel.name,
      side: channel.side,
      measures: channel.measures,
      calibration,
      zero: channel.rideHeightAt === null ? 'as recorded' : 'ride height picked',
      lowPass: channel.lowPass,
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
      events: figures.events,
      strokesAMinute: STROKE_SHARES.map((share, i) => ({ longerThan: share * travel, strokes: strokes[i] })),
      askedAboveStatic: asked,
      engagement: { computed: axle.model.engagement, ...seen },
      findings: findings.map(({ id, severity, message, values }) => ({ id, severity, message, values })),
    })),
  }
}
