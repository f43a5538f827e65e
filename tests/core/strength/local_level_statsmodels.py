"""Compares the engine's filter and smoother, run as a local level, with statsmodels on the Nile and
on a simulated series with gaps. The one argument is the program local_level_path. Exit 77 where
statsmodels is missing."""
import subprocess
import sys

try:
    import numpy as np
    import statsmodels.api as sm
except ImportError as error:
    print(error)
    sys.exit(77)


def ours(program, series, start, noise):
    args = [program] + [repr(float(x)) for x in (*start, *noise)]
    out = subprocess.run(args, input=" ".join(repr(float(y)) for y in series), text=True,
                         capture_output=True, check=True).stdout.split("\n")
    path = np.array([[float(x) for x in line.split()] for line in out[:len(series)]])
    return path, float(out[len(series)])


def theirs(series, start, noise):
    model = sm.tsa.UnobservedComponents(series, "llevel")
    model.ssm.initialize_known(np.array([start[0]]), np.array([[start[1]]]))
    model.ssm.loglikelihood_burn = 0
    model.ssm.tolerance = 0  # else it stops updating the variance once it is nearly steady
    fit = model.smooth(list(noise))
    return np.column_stack([
        fit.predicted_state[0, :-1], fit.predicted_state_cov[0, 0, :-1],
        fit.filtered_state[0], fit.filtered_state_cov[0, 0],
        fit.smoothed_state[0], fit.smoothed_state_cov[0, 0]]), fit.llf


def main():
    rng = np.random.default_rng(20)
    level = np.log(120) + np.cumsum(rng.normal(0, 0.008, 300))
    weekly = level + rng.normal(0, 0.02, 300)
    weekly[rng.random(300) < 0.2] = np.nan
    nile = np.asarray(sm.datasets.nile.load_pandas().data.volume, dtype=float)
    cases = {"nile": (nile, (1000.0, 1e6), (15099.0, 1469.1)),
             "weekly": (weekly, (np.log(100), 0.04), (4e-4, 6.4e-5))}
    worst = 0.0
    for name, (series, start, noise) in cases.items():
        (a, a_llf), (b, b_llf) = ours(sys.argv[1], series, start, noise), theirs(series, start, noise)
        gap = max(np.max(np.abs(a - b) / np.abs(b)), abs(a_llf - b_llf) / abs(b_llf))
        print(f"{name}: greatest relative difference {gap:.2e}")
        worst = max(worst, gap)
    sys.exit(0 if worst < 1e-6 else 1)


main()
