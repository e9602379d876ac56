"""Least cost of mixed integer programs by scipy.optimize.milp, which is HiGHS. Reads a list of programs, writes their costs."""
import json
import sys

import numpy as np
from scipy.optimize import Bounds, LinearConstraint, milp
from scipy.sparse import csr_matrix


def solve(program):
    count = len(program["cost"])
    rows, columns, times, low, high = [], [], [], [], []
    for r, row in enumerate(program["rows"]):
        rows += [r] * len(row["at"])
        columns += [int(i) for i in row["at"]]
        times += row["times"]
        low.append(row["bounds"][0])
        high.append(row["bounds"][1])
    low = np.where(np.array(low) < -1e29, -np.inf, low)
    high = np.where(np.array(high) > 1e29, np.inf, high)
    matrix = csr_matrix((times, (rows, columns)), shape=(len(program["rows"]), count))
    found = milp(program["cost"], constraints=LinearConstraint(matrix, low, high), integrality=program["whole"],
                 bounds=Bounds(np.zeros(count), program["upper"]), options={"mip_rel_gap": 0})
    assert found.success, found.message
    return found.fun


with open(sys.argv[1], encoding="utf-8") as file:
    print(json.dumps([solve(p) for p in json.load(file)]))
