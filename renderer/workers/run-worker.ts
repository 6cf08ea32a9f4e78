import { runAttendant } from './run-attendant.ts'
import type { RunWord } from './run-messages.ts'

/** What runs beside the page: reads recorded runs, holds them and lays them over a plan. */
const attend = runAttendant((reply, transfer) => postMessage(reply, { transfer }))

addEventListener('message', ({ data }: MessageEvent<RunWord>) => attend(data))
