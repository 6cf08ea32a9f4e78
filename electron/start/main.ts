import { start } from './start.ts'

process.exitCode = await start(process.argv.slice(2))
