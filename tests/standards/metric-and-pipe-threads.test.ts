import { expect, test } from 'vitest';
import { gThreads } from '../../src/standards/g-threads';
import { metricTaperThreads } from '../../src/standards/metric-taper-threads';
import { metricThreads } from '../../src/standards/metric-threads';
import { nptThreads } from '../../src/standards/npt-threads';
import { rThreads } from '../../src/standards/r-threads';
import { findThread } from '../../src/standards/threads';

/** Major max and min (6g), minor min and max (6H), mm, from the OpenSCAD library 'threadlib'
 *  (design/metric_thread.csv), a general-purpose thread table. */
const metric: Record<string, readonly [number, number, number, number]> = {
  M6x1: [5.974, 5.794, 4.917, 5.153],
  M8x1: [7.974, 7.794, 6.917, 7.153],
  'M10x1.5': [9.968, 9.732, 8.376, 8.676],
  M10x1: [9.974, 9.794, 8.917, 9.153],
  'M12x1.5': [11.97, 11.73, 10.376, 10.676],
  'M12x1.25': [11.97, 11.76, 10.647, 10.912],
  'M14x1.5': [13.97, 13.73, 12.376, 12.676],
  'M16x1.5': [15.97, 15.73, 14.376, 14.676],
  'M18x2.5': [17.96, 17.62, 15.294, 15.744],
  'M18x1.5': [17.97, 17.73, 16.376, 16.676],
  'M22x1.5': [21.97, 21.73, 20.376, 20.676],
  'M26x1.5': [25.97, 25.73, 24.376, 24.676],
  M27x2: [26.96, 26.68, 24.835, 25.21],
  'M30x3.5': [29.95, 29.52, 26.211, 26.771],
  M30x2: [29.96, 29.68, 27.835, 28.21],
  M33x2: [32.96, 32.68, 30.835, 31.21],
};

// The standard's tables round each tolerance to preferred numbers; the formulas do not.
test('metric limits follow ISO 965-1, within the rounding of its tables', () => {
  for (const [name, limits] of Object.entries(metric)) {
    const { crests, bore } = findThread(name)!;
    const ours = [crests.maxMm, crests.minMm, bore.minMm, bore.maxMm];
    ours.forEach((mm, i) => {
      expect(Math.abs(mm - limits[i]!), `${name} ${i}`).toBeLessThan(0.02);
    });
  }
});

test('metric diameters run from 4 to 64 mm with their coarse pitches', () => {
  expect(metricThreads.map((t) => t.basicMajorMm)).toEqual(
    expect.arrayContaining([4, 5, 7, 14, 26, 38, 52, 64]),
  );
  // ISO 261 coarse pitches (from memory).
  for (const name of ['M4x0.7', 'M8x1.25', 'M12x1.75', 'M20x2.5', 'M24x3', 'M42x4.5', 'M64x6'])
    expect(findThread(name)?.series, name).toBe('coarse');
});

/** Threads per inch, major, pitch and minor diameter, mm: 'threadlib' (design/BSPP_thread.csv). */
const parallelPipe: Record<string, readonly [number, number, number, number]> = {
  'G1/16': [28, 7.723, 7.142, 6.561],
  'G1/8': [28, 9.728, 9.147, 8.566],
  'G1/4': [19, 13.157, 12.301, 11.445],
  'G3/8': [19, 16.662, 15.806, 14.95],
  'G1/2': [14, 20.955, 19.793, 18.631],
  'G5/8': [14, 22.911, 21.749, 20.587],
  'G3/4': [14, 26.441, 25.279, 24.117],
  'G7/8': [14, 30.201, 29.039, 27.877],
  G1: [11, 33.249, 31.77, 30.291],
  'G1 1/8': [11, 37.897, 36.418, 34.939],
  'G1 1/4': [11, 41.91, 40.431, 38.952],
  'G1 1/2': [11, 47.803, 46.324, 44.845],
  'G1 3/4': [11, 53.746, 52.267, 50.788],
  G2: [11, 59.614, 58.135, 56.656],
  'G2 1/2': [11, 75.184, 73.705, 72.226],
  G3: [11, 87.884, 86.405, 84.926],
  G4: [11, 113.03, 111.551, 110.072],
  G5: [11, 138.43, 136.951, 135.472],
  G6: [11, 163.83, 162.351, 160.872],
};

test('G threads have the diameters of ISO 228-1', () => {
  for (const [name, [tpi, major, pitch, minor]] of Object.entries(parallelPipe)) {
    const t = findThread(name)!;
    expect(t.tpi).toBe(tpi);
    expect(t.basicMajorMm).toBe(major);
    expect(t.pitchDiameterMm).toBeCloseTo(pitch, 2.7);
    expect(t.minorInternalMm).toBeCloseTo(minor, 2.7);
    expect(t.flankAngleDeg).toBe(55);
  }
  expect(gThreads).toHaveLength(24);
});

test('R threads share the diameters of G at the gauge plane, and taper 1:16', () => {
  for (const r of rThreads) {
    const g = findThread(r.designation.replace('R', 'G'))!;
    expect(r.basicMajorMm).toBe(g.basicMajorMm);
    expect(r.pitchMm).toBe(g.pitchMm);
    expect(r.taper).toBe(1 / 16);
    const { gaugeLengthMm, majorAtSmallEndMm, usefulLengthMm } = r.taperPlanes!;
    expect(majorAtSmallEndMm + gaugeLengthMm / 16).toBeCloseTo(r.basicMajorMm, 9);
    expect(usefulLengthMm).toBeGreaterThan(gaugeLengthMm);
  }
});

/** E0, E1, L2, inches: ASME B1.20.1-2013 Table 2 (from memory). */
const npt: Record<string, readonly [number, number, number]> = {
  '1/8 NPT': [0.36351, 0.3736, 0.2639],
  '1/4 NPT': [0.47739, 0.49163, 0.4018],
  '3/8 NPT': [0.61201, 0.62701, 0.4078],
  '1/2 NPT': [0.75843, 0.77843, 0.5337],
  '3/4 NPT': [0.96768, 0.98887, 0.5457],
  '1 NPT': [1.21363, 1.23863, 0.6828],
  '1 1/4 NPT': [1.55713, 1.58338, 0.7068],
  '2 NPT': [2.26902, 2.29627, 0.7565],
};

test('NPT diameters and lengths by formula equal the tabulated ones', () => {
  for (const [name, [e0, e1, l2]] of Object.entries(npt)) {
    const { taperPlanes, pitchDiameterMm } = findThread(name)!;
    expect(taperPlanes!.pitchDiameterAtSmallEndMm / 25.4).toBeCloseTo(e0, 4.7);
    expect(pitchDiameterMm / 25.4).toBeCloseTo(e1, 4.7);
    expect(taperPlanes!.usefulLengthMm / 25.4).toBeCloseTo(l2, 3.7);
  }
});

test('NPSM follows the table for external majors', () => {
  // ASME B1.20.1 NPSM, class 2A major max, inches (from memory).
  for (const [name, max] of [
    ['1/4 NPSM', 0.527],
    ['1/2 NPSM', 0.826],
  ] as const)
    expect(Math.abs(findThread(name)!.crests.maxMm - max * 25.4)).toBeLessThan(0.1);
  expect(nptThreads.filter((t) => t.series === 'NPTF').every((t) => !t.separable)).toBe(true);
});

test('3/8 NPT at its small end reads like G 3/8, 1/4 NPT like G 1/4', () => {
  for (const size of ['3/8', '1/4']) {
    const small = findThread(`${size} NPT`)!.taperPlanes!.majorAtSmallEndMm;
    const g = findThread(`G${size}`)!.crests;
    expect(Math.abs(small - g.maxMm)).toBeLessThan(0.15);
  }
});

// DIN 158-1 (from memory): the basic profile of ISO 68-1 on a taper of 1:16, basic diameters at the gauge
// plane, in a parallel internal thread.
test('metric taper threads have the diameters of the parallel ones at the gauge plane', () => {
  expect(metricTaperThreads.map((t) => t.designation)).toEqual(
    expect.arrayContaining(['M8x1 keg', 'M10x1 keg', 'M14x1.5 keg', 'M22x1.5 keg']),
  );
  for (const t of metricTaperThreads) {
    const straight = findThread(t.designation.replace(' keg', ''))!;
    expect(t.basicMajorMm).toBe(straight.basicMajorMm);
    expect(t.pitchMm).toBe(straight.pitchMm);
    expect(t.taper).toBe(1 / 16);
    const { gaugeLengthMm, majorAtSmallEndMm, usefulLengthMm } = t.taperPlanes!;
    expect(majorAtSmallEndMm + gaugeLengthMm / 16).toBeCloseTo(t.basicMajorMm, 9);
    expect(usefulLengthMm).toBeGreaterThan(gaugeLengthMm);
  }
});
