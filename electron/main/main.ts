import { start } from './application.ts'

start()
