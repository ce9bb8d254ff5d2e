import { parseArgs } from 'node:util';
import { aliasesOf } from '../standards/aliases';
import type { Connection } from '../standards/connections/connection';
import { connections } from '../standards/connections/connections';
import type { Thread } from '../standards/thread';
import { threads } from '../standards/threads';
import { type Command, runIfStarted } from './arguments';

const usage = 'npm run --silent standards -- [--json]';

async function run(args: string[], print: (text: string) => void): Promise<number> {
  const { values } = parseArgs({ args, options: { json: { type: 'boolean', default: false } } });
  const tables = { threads: threads.map(threadRow), connections: connections.map(connectionRow) };
  print(values.json ? JSON.stringify(tables) : asText(tables));
  return 0;
}

/** Names that outside tests rely on: add, never rename. */
function threadRow(thread: Thread) {
  const { system, designation, series, tpi, pitchMm, basicMajorMm, minorInternalMm } = thread;
  const { flankAngleDeg, taper, crests, bore, source } = thread;
  return {
    ...{ system, designation, series, tpi, pitchMm, basicMajorMm, minorInternalMm },
    ...{ flankAngleDeg, taper, crests, bore, source },
  };
}

/** `tubeOd` in mm; a hose end gives its bore instead. `metricTubeOdMm` is the first of several. */
function connectionRow(connection: Connection) {
  const { tubeOdMm, ...rest } = connection;
  const metricTubeOdMm = rest.metricTubesMm[0] ?? null;
  return { ...rest, tubeOd: tubeOdMm, metricTubeOdMm, aliases: aliasesOf(connection) };
}

type Tables = {
  threads: ReturnType<typeof threadRow>[];
  connections: ReturnType<typeof connectionRow>[];
};

function asText({ threads, connections }: Tables): string {
  return [
    ...threads.map(
      (t) =>
        `${t.designation.padEnd(20)} ${t.basicMajorMm.toFixed(4).padStart(9)} mm  pitch ${t.pitchMm.toFixed(4)} mm  ${t.source}`,
    ),
    '',
    ...connections.map(
      (c) =>
        `${c.family.padEnd(14)} ${c.size.padEnd(10)} ${c.end.padEnd(7)} ${(c.thread ?? 'flange head').padEnd(18)} ${c.seat.padEnd(18)} ${c.source}`,
    ),
  ].join('\n');
}

export const standards: Command = { usage, run };
// Last, when all constants above have their values.
await runIfStarted(import.meta.url, standards);
