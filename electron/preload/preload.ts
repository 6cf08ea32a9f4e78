import { contextBridge, type IpcRendererEvent, ipcRenderer, webUtils } from 'electron'
import { type Bridge, channels } from '../contract/bridge.ts'

const bridge: Bridge = {
  call: (name, request) => ipcRenderer.invoke(channels.call, name, request),
  listen: hear => {
    const pass = (_event: IpcRendererEvent, name: string, payload: unknown) => hear(name, payload)
    ipcRenderer.on(channels.event, pass)
    return () => ipcRenderer.off(channels.event, pass)
  },
  fileToken: async file => {
    const path = webUtils.getPathForFile(file as File)
    return path === '' ? null : ipcRenderer.invoke(channels.dropped, path)
  },
}

contextBridge.exposeInMainWorld('stopgap', bridge)
