"""The same OpenCV steps as wasm-steps.ts, with Debian's python3-opencv on one thread.
Prints one JSON object per photo: median milliseconds by step."""
import json
import sys
import time

import cv2

cv2.setNumThreads(1)
rounds = int(sys.argv[1])

if hasattr(cv2.aruco, "ArucoDetector"):
    dictionary = cv2.aruco.getPredefinedDictionary(cv2.aruco.DICT_4X4_50)
    detect = cv2.aruco.ArucoDetector(dictionary).detectMarkers
else:  # before OpenCV 4.7
    dictionary = cv2.aruco.Dictionary_get(cv2.aruco.DICT_4X4_50)

    def detect(image):
        return cv2.aruco.detectMarkers(image, dictionary)


disc = cv2.getStructuringElement(cv2.MORPH_ELLIPSE, (7, 7))


def steps(data):
    times = {}

    def timed(name, work):
        start = time.perf_counter()
        result = work()
        times[name] = 1000 * (time.perf_counter() - start)
        return result

    import numpy as np

    flags = cv2.IMREAD_GRAYSCALE | cv2.IMREAD_IGNORE_ORIENTATION
    grey = timed("decode", lambda: cv2.imdecode(np.frombuffer(data, np.uint8), flags))
    scale = 1000 / max(grey.shape)
    size = (round(grey.shape[1] * scale), round(grey.shape[0] * scale))
    small = timed("resize", lambda: cv2.resize(grey, size, interpolation=cv2.INTER_AREA))
    timed("markers", lambda: detect(small))
    timed("blur", lambda: cv2.GaussianBlur(small, (0, 0), 1.5))
    _, mask = timed("otsu", lambda: cv2.threshold(small, 0, 255, cv2.THRESH_BINARY + cv2.THRESH_OTSU))
    timed("open", lambda: cv2.morphologyEx(mask, cv2.MORPH_OPEN, disc))
    timed("components", lambda: cv2.connectedComponentsWithStats(mask, connectivity=8))
    timed("contours", lambda: cv2.findContours(mask, cv2.RETR_EXTERNAL, cv2.CHAIN_APPROX_NONE))
    return times


for path in sys.argv[2:]:
    with open(path, "rb") as file:
        data = file.read()
    results = [steps(data) for _ in range(rounds + 1)][1:]
    median = {
        name: sorted(result[name] for result in results)[rounds // 2] for name in results[0]
    }
    print(json.dumps(median))
