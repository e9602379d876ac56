"""Rails by stiffness matrices of cubic elements (numpy), written apart from the program, which carries the state from node to node:
sections, hinges, clamped ends, springs, settlements, overhangs, loads over parts, cups. Rigid supports are multipliers; of cups every
state is tried until one fits. Reads a list of cases, writes reactions, and deflection and moment at the places asked for."""
import itertools
import json
import sys

import numpy as np


def element(ei, h):
    return ei / h**3 * np.array([[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]])


def solve(case, held):
    ends = np.cumsum([s[0] for s in case["stretches"]])
    at = sorted({0.0, *ends, *case["hinges"], *case["probes"], *(s["at"] for s in case["supports"]), *(x for u in case["uniform"] for x in u[:2]), *(p[0] for p in case["points"])})
    at = [x for i, x in enumerate(at) if i == 0 or x - at[i - 1] > 1e-9]
    node = lambda x: int(np.argmin([abs(x - a) for a in at]))
    n = len(at)
    # Down, then the slope left and right of each node: one unknown but at a hinge.
    left, right, free = [], [], n
    for x in at:
        left.append(free)
        hinged = any(abs(x - h) < 1e-9 for h in case["hinges"])
        right.append(free + 1 if hinged else free)
        free += 2 if hinged else 1
    stiff, force = np.zeros((free, free)), np.zeros(free)
    elements = []
    for i in range(n - 1):
        h, middle = at[i + 1] - at[i], (at[i] + at[i + 1]) / 2
        ei = case["stretches"][int(np.searchsorted(ends, middle))][1]
        q = sum(u[2] for u in case["uniform"] if u[0] < middle < u[1])
        dofs, k, f = [i, right[i], i + 1, left[i + 1]], element(ei, h), q * h / 12 * np.array([6, h, 6, -h])
        stiff[np.ix_(dofs, dofs)] += k
        force[dofs] += f
        elements.append((dofs, k, f))
    for x, p in case["points"]:
        force[node(x)] += p
    rows, sides = [], []
    for s, on in zip(case["supports"], held):
        i = node(s["at"])
        if on and s["k"] > 0:
            stiff[i, i] += s["k"]
            force[i] += s["k"] * s["settlement"]
        for dof, value, wanted in ((i, s["settlement"], on and s["k"] == 0), (right[i], 0.0, s["clamped"])):
            if wanted:
                row = np.zeros(free)
                row[dof] = 1
                rows.append(row)
                sides.append(value)
    # Every unknown in units of its own stiffness.
    unit = 1 / np.sqrt(np.diag(stiff))
    hold = np.array(rows).reshape(len(rows), free) * unit
    lengths = np.linalg.norm(hold, axis=1)
    hold = hold / lengths[:, None]
    whole = np.block([[stiff * np.outer(unit, unit), hold.T], [hold, np.zeros((len(rows), len(rows)))]])
    if np.linalg.svd(whole, compute_uv=False).min() < 1e-13:
        return None
    u = unit * np.linalg.solve(whole, np.concatenate([force * unit, np.array(sides) / lengths]))[:free]
    out = stiff @ u - force
    reactions = []
    for s, on in zip(case["supports"], held):
        i = node(s["at"])
        reactions.append(0.0 if not on else s["k"] * (u[i] - s["settlement"]) if s["k"] > 0 else -out[i])
    moments = []
    for x in case["probes"]:
        dofs, k, f = elements[min(node(x), n - 2)]
        moments.append(float((k @ u[dofs] - f)[1] if node(x) < n - 1 else -(k @ u[dofs] - f)[3]))
    return {"reactions": [float(r) for r in reactions], "deflections": [float(u[node(x)]) for x in case["probes"]], "moments": moments,
            "fits": all(r >= -1e-7 if on else u[node(s["at"])] <= s["settlement"] + 1e-9 for s, r, on in zip(case["supports"], reactions, held) if s["cup"])}


def answer(case):
    states = itertools.product(*[(True, False) if s["cup"] else (True,) for s in case["supports"]])
    for held in states:
        found = solve(case, held)
        if found and found["fits"]:
            return found
    return None


if __name__ == "__main__":
    with open(sys.argv[1], encoding="utf-8") as file:
        json.dump([answer(case) for case in json.load(file)], sys.stdout)
