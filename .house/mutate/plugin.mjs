import { declareClassPlugin, PluginKind } from '@stryker-mutator/api/plugin';
import { Notes } from './notes.mjs';
import { RoomsRunner } from './rooms-runner.mjs';

export const strykerPlugins = [
  declareClassPlugin(PluginKind.TestRunner, 'rooms', RoomsRunner),
  declareClassPlugin(PluginKind.Reporter, 'notes', Notes),
];
