"""A beam document by stiffness matrices of cubic elements in numbers of 60 digits (mpmath): reactions. In ordinary numbers
they lose so many digits on pieces of a hundredth of a millimetre that the rail looks as if it moved freely. Run by hand: beam_exact.py FILE."""
import json
import sys

import mpmath as mp

mp.mp.dps = 60
RIGID = mp.mpf(10) ** 40

with open(sys.argv[1], encoding="utf-8") as file:
    doc = json.load(file)
ends, at = [], {0.0}
for part in doc["stretches"]:
    ends.append((ends[-1] if ends else 0) + part["length_mm"])
at |= set(ends) | {s["at_mm"] for s in doc["supports"]} | {load[k] for load in doc["loads"] for k in ("from_mm", "to_mm", "at_mm") if k in load}
at = sorted(at)
stiff, force = mp.zeros(2 * len(at)), mp.zeros(2 * len(at), 1)
for i in range(len(at) - 1):
    h, middle = mp.mpf(at[i + 1]) - mp.mpf(at[i]), (at[i] + at[i + 1]) / 2
    ei = mp.mpf(next(p["ei_nmm2"] for p, end in zip(doc["stretches"], ends) if middle < end))
    q = mp.mpf(sum(load["n_per_mm"] for load in doc["loads"] if load["kind"] == "uniform" and load["from_mm"] < middle < load["to_mm"]))
    k = [[12, 6 * h, -12, 6 * h], [6 * h, 4 * h * h, -6 * h, 2 * h * h], [-12, -6 * h, 12, -6 * h], [6 * h, 2 * h * h, -6 * h, 4 * h * h]]
    f = [q * h / 2, q * h * h / 12, q * h / 2, -q * h * h / 12]
    for a in range(4):
        force[2 * i + a] += f[a]
        for b in range(4):
            stiff[2 * i + a, 2 * i + b] += ei / h**3 * k[a][b]
for load in doc["loads"]:
    if load["kind"] == "point":
        force[2 * at.index(load["at_mm"])] += mp.mpf(load["n"])
springs = [(at.index(s["at_mm"]), mp.mpf(s.get("stiffness_n_per_mm", 0)) or RIGID, s.get("clamped") == "yes") for s in doc["supports"]]
for i, k, clamped in springs:
    stiff[2 * i, 2 * i] += k
    if clamped:
        stiff[2 * i + 1, 2 * i + 1] += RIGID
moved = mp.lu_solve(stiff, force)
print([float(k * moved[2 * i]) for i, k, _ in springs])
