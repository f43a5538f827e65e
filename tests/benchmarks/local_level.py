#!/usr/bin/python3
"""The local-level baseline by a general-purpose library (Debian: python3-statsmodels).

Reads CSV on standard input, no header: one row a series, its values in weeks, an empty field for a
week without data. Writes, for each series, two rows of mean:variance fields: the filtered level and
the smoothed one. Both variances are fitted by maximum likelihood to the whole series, which favours
this baseline: its filtered level knows the future's noise.

Writes the seconds that fitting and smoothing took, reading and writing left out, to standard error
as `fit S1 smooth S2`.
"""
import csv
import sys
import time
import warnings

import numpy as np
from statsmodels.tsa.statespace.structural import UnobservedComponents

warnings.simplefilter("ignore")


def row(states, covariances, first):
    """Fields from the week `first` on; before it there is nothing but the diffuse start."""
    known = [f"{m:.10g}:{v:.6g}" for m, v in zip(states[0], covariances[0, 0])]
    return [""] * first + known[first:]


def main():
    series = [
        np.array([float(field) if field else np.nan for field in fields])
        for fields in csv.reader(sys.stdin)
    ]
    out = csv.writer(sys.stdout, lineterminator="\n")
    fitting = smoothing = 0.0
    for y in series:
        if np.isfinite(y).sum() < 3:
            for _ in range(2):
                out.writerow([""] * len(y))
            continue
        started = time.perf_counter()
        model = UnobservedComponents(y, "llevel")
        fit = model.fit(disp=False)
        fitted = time.perf_counter()
        smooth = model.smooth(fit.params)
        smoothing += time.perf_counter() - fitted
        fitting += fitted - started
        first = int(np.flatnonzero(np.isfinite(y))[0])
        out.writerow(row(smooth.filtered_state, smooth.filtered_state_cov, first))
        out.writerow(row(smooth.smoothed_state, smooth.smoothed_state_cov, first))
    print(f"fit {fitting:.6f} smooth {smoothing:.6f}", file=sys.stderr)


if __name__ == "__main__":
    main()
