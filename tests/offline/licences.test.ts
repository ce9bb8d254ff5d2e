import { readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { licencesText, shippedPackages } from '../../src/offline/licences-plugin';

const root = new URL('../../', import.meta.url).pathname;
const packages = shippedPackages(root, ['@opencvjs/web']);

test('every production dependency, theirs in turn, and OpenCV are listed', () => {
  const { dependencies } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'));
  const names = packages.map((p) => p.name);
  expect(names).toEqual(expect.arrayContaining([...Object.keys(dependencies), '@opencvjs/web']));
  // pdf-lib's own dependency.
  expect(names).toContain('pako');
});

test('each names its licence, and none forbids shipping the page under its own', () => {
  for (const { name, licence } of packages)
    if (name !== 'libheif-js')
      expect(licence, name).toMatch(/MIT|Apache-2\.0|BSD|ISC|Zlib|Unlicense|0BSD/);
});

test('the one under the LGPL is named as files of their own, with both licences and the sources', () => {
  const libheif = packages.find(({ name }) => name === 'libheif-js')!;
  expect(libheif.licence).toBe('LGPL-3.0');
  const text = libheif.texts.join('\n');
  expect(text).toContain('GNU LESSER GENERAL PUBLIC LICENSE');
  expect(text).toContain('GNU GENERAL PUBLIC LICENSE');
  expect(text).toMatch(/assets\/libheif-\*\.wasm[\s\S]*github\.com\/strukturag\/libheif/);
});

test('licence texts are whole', () => {
  const text = licencesText(packages);
  expect(text).toContain('Apache License');
  expect(text).toContain('Permission is hereby granted, free of charge');
  for (const { name, version, texts } of packages) {
    expect(text).toContain(`${name} ${version}: `);
    expect(texts.length, `${name} has no licence file`).toBeGreaterThan(0);
  }
});
