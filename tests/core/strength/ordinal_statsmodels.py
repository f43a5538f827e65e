"""Compares the engine's proportional-odds model with statsmodels' OrderedModel on the same data. The
one argument is the program ordinal_fit. Exit 77 where statsmodels is missing."""
import subprocess
import sys

try:
    import numpy as np
    from statsmodels.miscmodels.ordinal_model import OrderedModel
except ImportError as error:
    print(error)
    sys.exit(77)


def simulated(seed, n, cuts, slopes):
    rng = np.random.default_rng(seed)
    x = rng.normal(0, 1, (n, len(slopes)))
    latent = x @ slopes + rng.logistic(0, 1, n)
    return np.searchsorted(cuts, latent), x


def ours(program, score, x, categories):
    rows = "\n".join(" ".join(map(repr, [float(s), *map(float, r)])) for s, r in zip(score, x))
    out = subprocess.run([program, str(categories), str(x.shape[1])], input=rows, text=True,
                         capture_output=True, check=True).stdout.strip().split("\n")
    lines = [np.array([float(v) for v in line.split()]) for line in out]
    return lines[0], lines[1], np.array(lines[2:-1]), lines[-1][0]


def main():
    worst = 0.0
    for name, (seed, n, cuts, slopes) in {
            "five scores, one slope": (31, 150, [-1.5, 0.0, 1.0, 2.5], [1.3]),
            "four scores, three slopes": (32, 400, [-1.0, 0.3, 1.4], [0.8, -0.5, 0.0])}.items():
        score, x = simulated(seed, n, cuts, np.array(slopes))
        model = OrderedModel(score, x, distr="logit")
        fit = model.fit(method="bfgs", gtol=1e-9, maxiter=2000, disp=False)
        thresholds, beta, covariance, llf = ours(sys.argv[1], score, x, len(cuts) + 1)
        p = x.shape[1]
        their_thresholds = model.transform_threshold_params(fit.params)[1:-1]
        # statsmodels orders slopes before thresholds.
        order = [*range(p, len(fit.params)), *range(p)]
        their_covariance = np.asarray(fit.cov_params())[np.ix_(order, order)]
        gap = max(np.max(np.abs(thresholds - their_thresholds)),
                  np.max(np.abs(beta - fit.params[:p])), abs(llf - fit.llf),
                  np.max(np.abs(covariance - their_covariance)))
        print(f"{name}: greatest difference {gap:.2e}")
        worst = max(worst, gap)
    sys.exit(0 if worst < 1e-4 else 1)


main()
