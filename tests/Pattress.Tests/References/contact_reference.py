"""Forces on the fixings of brackets by scipy, written apart from the program: the outline is clipped corner by corner, the
clipped polygon cut into triangles, and each integrated with three midpoints (exact for degree two); the energy is minimised
by BFGS and its gradient brought to zero by MINPACK's hybrid method. Further outlines add, holes take away; fixings may be set with a
tension and may yield, the wall may crush. Reads a list of cases, writes tensions and contact."""
import json
import sys

import numpy as np
from scipy.optimize import minimize, root


def clipped(corners, u):
    """The part of the outline where the plate presses (gap below zero)."""
    kept = []
    for p, q in zip(corners, np.roll(corners, -1, axis=0)):
        dp, dq = u[0] + u[1:] @ p, u[0] + u[1:] @ q
        if dp < 0:
            kept.append(p)
        if (dp < 0) != (dq < 0):
            kept.append(p + (q - p) * dp / (dp - dq))
    return np.array(kept)


def pressed_all(rings, u):
    """The same over several convex rings, each with +1 (a foot) or -1 (a hole)."""
    parts = [(sign, pressed(corners, u)) for sign, corners in rings]
    return sum(sign * p[0] for sign, p in parts), sum(sign * p[1] for sign, p in parts)


def pressed(corners, u):
    """Integrals of the gap times 1, x, y, and of its square, over the pressing part."""
    part = clipped(corners, u)
    force, square = np.zeros(3), 0.0
    for i in range(1, len(part) - 1):
        a, b, c = part[0], part[i], part[i + 1]
        area = 0.5 * abs((b[0] - a[0]) * (c[1] - a[1]) - (c[0] - a[0]) * (b[1] - a[1]))
        for m in ((a + b) / 2, (b + c) / 2, (c + a) / 2):
            d = u[0] + u[1:] @ m
            force += area / 3 * d * np.array([1.0, m[0], m[1]])
            square += area / 3 * d * d
    return force, square


def solve(case):
    rings = [(sign, np.array(ring, float)) for sign, ring in case["rings"]]
    every = np.vstack([ring for _, ring in rings])
    fixings = np.array(case["fixings"], float)
    load = np.array(case["load"], float)
    middle, size = every.mean(axis=0), np.abs(every - every.mean(axis=0)).max()
    rings = [(sign, (ring - middle) / size) for sign, ring in rings]
    places = np.column_stack([np.ones(len(fixings)), (fixings[:, :2] - middle) / size])
    k, gap, pre, bed = fixings[:, 2], fixings[:, 3], fixings[:, 4], case["bed"] * size * size
    cap = np.where(fixings[:, 5] > 0, fixings[:, 5], np.inf)
    crush = np.array([case["crush"] / case["bed"], 0, 0]) if case["crush"] > 0 else None
    load = np.array([load[0], (load[1] - load[0] * middle[0]) / size, (load[2] - load[0] * middle[1]) / size])
    scale, stiff = max(np.linalg.norm(load), pre.max()), k.sum() + bed

    def tensions(v):
        return np.clip(pre + k * (places @ (v * scale / stiff) - gap), 0, cap)

    def wall(u):
        """Integrals over the bed, less what a crushing wall does not give."""
        force, square = pressed_all(rings, u)
        if crush is None:
            return force, square
        over_force, over_square = pressed_all(rings, u + crush)
        return force - over_force, square - over_square

    def energy(v):
        u = v * scale / stiff
        pull = np.maximum(pre + k * (places @ u - gap), 0)
        held = np.minimum(pull, cap)
        return ((held * (pull - 0.5 * held) / k).sum() + 0.5 * bed * wall(u)[1] - load @ u) * stiff / scale**2

    def gradient(v):
        return (places.T @ tensions(v) + bed * wall(v * scale / stiff)[0] - load) / scale

    whole = (places.T * k) @ places + bed * np.diag([1.0, 0.3, 0.3])
    start = np.linalg.solve(whole, load) * stiff / scale
    coarse = minimize(energy, start, jac=gradient, method="BFGS", options={"gtol": 1e-9, "maxiter": 500})
    fine = root(gradient, coarse.x, method="hybr", options={"xtol": 1e-15, "maxfev": 2000})
    best = min((coarse.x, fine.x), key=lambda v: np.linalg.norm(gradient(v)))
    return {
        "tensions": tensions(best).tolist(),
        "contact": float(-bed * wall(best * scale / stiff)[0][0]),
        "residual": float(np.linalg.norm(gradient(best))),
    }


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as file:
        json.dump([solve(case) for case in json.load(file)], sys.stdout)
