import { existsSync, readdirSync, readFileSync } from 'node:fs';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';
import type { Plugin } from 'vite';

export interface ShippedPackage {
  readonly name: string;
  readonly version: string;
  readonly licence: string;
  /** Licence and notice files, whole. */
  readonly texts: readonly string[];
}

/** Built from, though not listed as dependencies: OpenCV is split out of its package (wasm/). */
const alsoShipped = ['@opencvjs/web'];

/** Writes licences.txt: every package whose code or data is in the build, with its licence. */
export function licencesPlugin(): Plugin {
  const root = fileURLToPath(new URL('../../', import.meta.url));
  return {
    name: 'crestwise-licences',
    apply: 'build',
    generateBundle(_options, bundle) {
      const bundled = Object.values(bundle).flatMap((part) =>
        part.type === 'chunk' ? part.moduleIds.map(packageOfModule) : [],
      );
      const names = [...alsoShipped, ...bundled.filter((name) => name !== null)];
      const source = licencesText(shippedPackages(root, names));
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source });
    },
  };
}

function packageOfModule(id: string): string | null {
  return /.*node_modules\/((?:@[^/]+\/)?[^/]+)/.exec(id)?.[1] ?? null;
}

/** All production dependencies, theirs in turn, and the packages named. */
export function shippedPackages(root: string, alsoNames: readonly string[]): ShippedPackage[] {
  const own = readManifest(root);
  const found = new Map<string, ShippedPackage>();
  const visit = (name: string, from: string) => {
    const folder = findPackage(name, from, root);
    if (!folder || found.has(folder)) return;
    const manifest = readManifest(folder);
    found.set(folder, {
      name,
      version: manifest.version ?? '',
      licence: licenceOf(manifest),
      texts: [...licenceTexts(folder, manifest), ...(compiledIn[name] ?? [])],
    });
    for (const dependency of Object.keys(manifest.dependencies ?? {})) visit(dependency, folder);
  };
  for (const name of [...Object.keys(own.dependencies ?? {}), ...alsoNames]) visit(name, root);
  return [...found.values()].sort((a, b) => a.name.localeCompare(b.name));
}

export function licencesText(packages: readonly ShippedPackage[]): string {
  const rule = `\n${'-'.repeat(78)}\n\n`;
  const overview = packages.map((p) => `${p.name} ${p.version}: ${p.licence}`).join('\n');
  const whole = packages.map((p) =>
    [`${p.name} ${p.version}`, `Licence: ${p.licence}`, ...p.texts].join('\n\n'),
  );
  return [`Crestwise contains these packages.\n\n${overview}\n`, ...whole].join(rule);
}

/** What a package's wasm is compiled from and its own files do not mention. */
const compiledIn: Readonly<Record<string, readonly string[]>> = {
  '@jsquash/avif': [
    'Contains libavif (BSD-2-Clause, https://github.com/AOMediaCodec/libavif) and libaom (BSD-2-Clause with the Alliance for Open Media Patent License 1.0, https://aomedia.googlesource.com/aom).',
  ],
  'libheif-js': [
    [
      'Contains libheif and libde265 (both LGPL-3.0) as files of their own, code unchanged:',
      'assets/libheif-*.wasm and assets/libheif-*.js. They are loaded when a HEIC photo comes and may be',
      'exchanged for another build of the same interface. Sources: https://github.com/strukturag/libheif',
      'and https://github.com/strukturag/libde265; how they were compiled:',
      'https://github.com/catdad-experiments/libheif-emscripten.',
    ].join('\n'),
  ],
  '@cwasm/jpeg-turbo': [
    [
      'Contains libjpeg-turbo (IJG licence, modified BSD licence, zlib licence;',
      'https://libjpeg-turbo.org, LICENSE.md there).',
      'This software is based in part on the work of the Independent JPEG Group.',
    ].join('\n'),
  ],
};

interface Manifest {
  readonly version?: string;
  readonly author?: string | { readonly name?: string };
  readonly license?: string | { readonly type?: string };
  readonly dependencies?: Readonly<Record<string, string>>;
}

function readManifest(folder: string): Manifest {
  return JSON.parse(readFileSync(join(folder, 'package.json'), 'utf8'));
}

function licenceOf({ license }: Manifest): string {
  return (typeof license === 'string' ? license : license?.type) ?? 'see its licence file';
}

/** Nested copies first, as Node resolves. */
function findPackage(name: string, from: string, root: string): string | null {
  const places = [join(from, 'node_modules', name), join(root, 'node_modules', name)];
  return places.find((place) => existsSync(join(place, 'package.json'))) ?? null;
}

/** In the package's folder and, for wrapped codecs, beside the codec. A package that names the MIT
 *  licence without enclosing it gets the licence's own text. */
function licenceTexts(folder: string, manifest: Manifest): string[] {
  const texts = [
    folder,
    join(folder, 'codec'),
    join(folder, 'codec', 'pkg'),
    join(folder, 'libheif-wasm'),
  ]
    .filter((place) => existsSync(place))
    .flatMap((place) =>
      readdirSync(place, { withFileTypes: true })
        .filter((entry) => entry.isFile() && /^(licen[cs]e|copying|notice)/i.test(entry.name))
        .map((entry) => readFileSync(join(place, entry.name), 'utf8').trim()),
    );
  return texts.length === 0 && licenceOf(manifest) === 'MIT' ? [mitLicence(manifest)] : texts;
}

/** https://spdx.org/licenses/MIT */
function mitLicence({ author }: Manifest): string {
  const holder = (typeof author === 'string' ? author : author?.name) ?? 'the authors';
  return `MIT License

Copyright (c) ${holder}

Permission is hereby granted, free of charge, to any person obtaining a copy of this software and
associated documentation files (the "Software"), to deal in the Software without restriction,
including without limitation the rights to use, copy, modify, merge, publish, distribute,
sublicense, and/or sell copies of the Software, and to permit persons to whom the Software is
furnished to do so, subject to the following conditions:

The above copyright notice and this permission notice shall be included in all copies or
substantial portions of the Software.

THE SOFTWARE IS PROVIDED "AS IS", WITHOUT WARRANTY OF ANY KIND, EXPRESS OR IMPLIED, INCLUDING BUT
NOT LIMITED TO THE WARRANTIES OF MERCHANTABILITY, FITNESS FOR A PARTICULAR PURPOSE AND
NONINFRINGEMENT. IN NO EVENT SHALL THE AUTHORS OR COPYRIGHT HOLDERS BE LIABLE FOR ANY CLAIM,
DAMAGES OR OTHER LIABILITY, WHETHER IN AN ACTION OF CONTRACT, TORT OR OTHERWISE, ARISING FROM, OUT
OF OR IN CONNECTION WITH THE SOFTWARE OR THE USE OR OTHER DEALINGS IN THE SOFTWARE.`;
}
