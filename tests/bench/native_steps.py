"""The same OpenCV steps as wasm-steps.ts, with Debian's python3-opencv on one thread.
Prints one JSON object per photo: median milliseconds by step."""
import json
import sys
import time

import cv2
import numpy as np

cv2.setNumThreads(1)
rounds = int(sys.argv[1])

if hasattr(cv2.aruco, "ArucoDetector"):
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    detect = cv2.aruco.ArucoDetector(dictionary).detectMarkers
else:  # before OpenCV 4.7
    dictionary = cv2.aruco.Dictionary_get(cv2.aruco.DICT_4X4_50)

    def detect(image):
        return cv2.aruco.detectMarkers(image, dictionary)


# Here the faster way to close; by distanceTransform it takes half as long again.
disc = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (27, 27))


def components(mask):
    return cv2.connectedComponentsWithStats(mask, connectivity=8)


def steep_pixels(image):
    grey = image.astype(np.int16)
    steep = np.zeros_like(image)
    across = np.abs(grey[1:-1, 2:] - grey[1:-1, :-2]) > 8
    down = np.abs(grey[2:, 1:-1] - grey[:-2, 1:-1]) > 8
    steep[1:-1, 1:-1] = np.where(across | down, 255, 0)
    return steep


def steps(data):
    times = {}

    def timed(name, work):
        start = time.perf_counter()
        result = work()
        times[name] = 1000 * (time.perf_counter() - start)
        return result

    flags = cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION
    grey = timed("decode", lambda: cv2.imdecode(np.frombuffer(data, np.uint8), flags))
    scale = 1200 / max(grey.shape)
    size = (round(grey.shape[1] * scale), round(grey.shape[0] * scale))
    small = timed("resize", lambda: cv2.resize(grey, size, interpolation=cv2.INTER_AREA))
    timed("markers", lambda: detect(small))
    view = cv2.resize(grey, (710, 470), interpolation=cv2.INTER_AREA)
    timed("blur wide", lambda: cv2.GaussianBlur(view, (0, 0), 5))
    fine = timed("blur fine", lambda: cv2.GaussianBlur(view, (0, 0), 0.8))
    edges = steep_pixels(fine)
    timed("components", lambda: components(edges))
    closed = timed("close", lambda: cv2.morphologyEx(edges, cv2.MORPH_CLOSE, disc))
    timed("of closed", lambda: components(closed))
    return times


for path in sys.argv[2:]:
    with open(path, "rb") as file:
        data = file.read()
    results = [steps(data) for _ in range(rounds + 1)][1:]
    median = {
        name: sorted(result[name] for result in results)[rounds // 2] for name in results[0]
    }
    print(json.dumps(median))
