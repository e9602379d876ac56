"""Reference values for the statistics of trials, computed by scipy while the tests run.

Prints one line a value: name;argument argument …;value. Fixed seed, so a failure can be repeated.
"""
import numpy as np
from scipy import integrate, optimize, special as sp, stats

rng = np.random.default_rng(20240229)


def say(name, arguments, value):
    print(f"{name};{' '.join(format(float(a), '.17g') for a in arguments)};{float(value):.17g}")


def tolerance_factors(count):
    for _ in range(count):
        n = int(rng.choice([2, 3, 4, 5, 6, 7, 9, 12, 18, 27, 45, 80, 150]))
        fractile, confidence = rng.choice([0.8, 0.9, 0.95, 0.99]), rng.uniform(0.5, 0.97)
        if n == 2:
            confidence = min(confidence, 0.9)
        delta = stats.norm.ppf(fractile) * np.sqrt(n)
        k = optimize.brentq(lambda t: noncentral_cdf(t, n - 1, delta) - confidence, 0, 400, xtol=1e-13, rtol=1e-13)
        say("tolerance", [n, fractile, confidence], k / np.sqrt(n))


def tolerance_ends():
    """The ends of the ranges: two tests and a hundred, the middle and the far tail, little and much confidence."""
    for n in (2, 3, 5, 10, 30, 100):
        for fractile in (0.5, 0.9, 0.95, 0.999):
            for confidence in (0.6, 0.75, 0.9, 0.99):
                delta = stats.norm.ppf(fractile) * np.sqrt(n)
                k = optimize.brentq(lambda t: noncentral_cdf(t, n - 1, delta) - confidence, 1e-9, 2000, xtol=1e-13, rtol=1e-13)
                say("tolerance_end", [n, fractile, confidence], k / np.sqrt(n))


def both_below(h, k, r):
    """P(X <= h, Y <= k) of two correlated normals, by integrating the conditional law."""
    at, width = k / r, np.sqrt(1 - r * r)
    cuts = np.unique(np.clip([-38, -8, -6, -4, -2, 0, 2, h, *(at + c * width for c in (-10, -2, 0, 2, 10))], -38, h))
    f = lambda z: stats.norm.pdf(z) * stats.norm.cdf((k - r * z) / width)
    return sum(integrate.quad(f, a, b, epsabs=1e-30, epsrel=1e-11, limit=200)[0] for a, b in zip(cuts, cuts[1:]))


def pairs():
    for h, k in ((-3, -3), (-3, -3.5), (-2, -4), (0.5, 0.2), (1, -1)):
        for r in (-0.5, 0.3, 0.8, 0.99):
            say("bivariate", [h, k, r], both_below(h, k, r))


def limit_states(count):
    """Chances of failure by quadrature: a parabola in standard normal space, and a lognormal resistance under a Gumbel load."""
    for _ in range(count):
        b, turn, bend = rng.uniform(1.5, 4), rng.uniform(0, 2 * np.pi), rng.uniform(-0.15, 0.6)
        say("parabola", [b, turn, bend], integrate.quad(lambda t: stats.norm.pdf(t) * stats.norm.sf(b + bend * t * t / 2), -12, 12, epsabs=1e-16, points=(-4, 0, 4))[0])
        mean_r, cov_r, cov_s = rng.uniform(2.5, 5), rng.uniform(0.08, 0.35), rng.uniform(0.1, 0.5)
        (m, s), scale = lognormal(mean_r, cov_r), cov_s * np.sqrt(6) / np.pi
        load = stats.gumbel_r(1 - np.euler_gamma * scale, scale)
        cuts = np.linspace(1e-9, load.isf(1e-15), 40)
        say("strength_and_load", [mean_r, cov_r, cov_s], sum(integrate.quad(lambda q: load.pdf(q) * stats.norm.cdf((np.log(q) - m) / s), a, c, epsabs=1e-16)[0] for a, c in zip(cuts, cuts[1:])))


NODES, WEIGHTS = np.polynomial.legendre.leggauss(200)


def noncentral_cdf(t, df, delta):
    """P(T <= t) from its definition: the chi variable integrated out (series forms lose digits in the tails)."""
    chi = stats.chi(df, scale=1 / np.sqrt(df))
    low, high = chi.ppf(1e-16), chi.isf(1e-16)
    cuts = [np.clip((delta + c) / t, low, high) for c in (-9, 0, 9)] if t > 0 else []
    edges = np.unique([low, *cuts, high])
    total = 0.0
    for a, b in zip(edges, edges[1:]):
        y = 0.5 * (a + b) + 0.5 * (b - a) * NODES
        total += 0.5 * (b - a) * np.sum(WEIGHTS * stats.norm.cdf(t * y - delta) * chi.pdf(y))
    return total


def student_quantile(p, df):
    """By root-finding on the beta integral: scipy's own t.ppf is good to nine digits only."""
    w = optimize.brentq(lambda u: sp.betainc(df / 2, 0.5, np.exp(u)) - 2 * p, -700, 0, xtol=1e-15, rtol=1e-15)
    return -np.sqrt(df * np.expm1(-w))


def special(count):
    for _ in range(count):
        p = 10 ** rng.uniform(-12, -0.31)
        say("normal_quantile", [p], stats.norm.ppf(p))
        x = rng.uniform(-30, 6)
        say("normal_cdf", [x], stats.norm.cdf(x))
        df = rng.uniform(1, 60)
        say("student_quantile", [p, df], student_quantile(p, df))
        a, b, q = rng.uniform(0.3, 40), rng.uniform(0.3, 40), rng.uniform(0.01, 0.99)
        say("beta_inverse", [a, b, q], stats.beta.ppf(q, a, b))
        say("chi_square_tail", [x * x, df], stats.chi2.sf(x * x, df))


def lognormal(mean, cov):
    s2 = np.log1p(cov * cov)
    return np.log(mean) - s2 / 2, np.sqrt(s2)


def installations(count):
    """Brackets on walls under a shared load; resistance and own share of the action lognormal."""
    for i in range(count):
        gumbel = i % 2
        walls, brackets = int(rng.integers(1, 4)), int(rng.integers(1, 9))
        weights = rng.dirichlet(np.ones(walls))
        cov_load = rng.uniform(0.1, 0.6)
        cov_batch = rng.uniform(0.02, 0.3) if not gumbel and i % 3 else 0.0
        cases = [(rng.uniform(150, 900), rng.uniform(0.08, 0.4), rng.uniform(30, 160), rng.uniform(0, 0.2))
                 for _ in range(walls * brackets)]
        arguments = [gumbel, cov_load, cov_batch, walls, brackets, *weights, *[v for c in cases for v in c]]
        say("installation", arguments, installation(gumbel, cov_load, cov_batch, weights, brackets, cases))


def installation(gumbel, cov_load, cov_batch, weights, brackets, cases):
    def given(log_q):
        total = 0.0
        for w, weight in enumerate(weights):
            stands = 1.0
            for mean_r, cov_r, mean_s, cov_s in cases[w * brackets:(w + 1) * brackets]:
                (mr, sr), (ms, ss) = lognormal(mean_r, cov_r), lognormal(mean_s, cov_s)
                stands *= stats.norm.sf((log_q + ms - mr) / np.hypot(sr, ss))
            total += weight * (1 - stands)
        return total

    if gumbel:
        scale = cov_load * np.sqrt(6) / np.pi
        load = stats.gumbel_r(1 - np.euler_gamma * scale, scale)
        low, high = max(1e-9, load.ppf(1e-15)), load.isf(1e-14)
        cuts = np.linspace(low, high, 30)
        return sum(integrate.quad(lambda q: load.pdf(q) * given(np.log(q)), a, b, epsabs=1e-14)[0] for a, b in zip(cuts, cuts[1:]))
    (ml, sl), (mb, sb) = lognormal(1, cov_load), lognormal(1, cov_batch)
    centre, spread = ml - mb, np.hypot(sl, sb)
    cuts = np.linspace(-8, 8, 17)
    return sum(integrate.quad(lambda z: stats.norm.pdf(z) * given(centre + spread * z), a, b, epsabs=1e-14)[0] for a, b in zip(cuts, cuts[1:]))


def shrinkage(count):
    """5 % fractile of one more test, by a dense trapezoidal grid over (ln s, ln tau); which < 0: of a new kind."""
    for i in range(count):
        kinds = [rng.normal(rng.normal(5, 0.3), 0.15, int(rng.integers(1, 6))) for _ in range(int(rng.integers(4, 9)))]
        which = -1 if i == 0 else int(rng.integers(0, len(kinds)))
        arguments = [which] + [v for k in kinds for v in (len(k), *k)]
        say("shrinkage", arguments, dense(kinds, which))


def dense(kinds, which):
    n = np.array([len(k) for k in kinds])
    y = np.array([np.mean(k) for k in kinds])
    squares = sum(np.sum((np.array(k) - m) ** 2) for k, m in zip(kinds, y))
    log_s, log_tau = np.linspace(np.log(0.01), np.log(1.5), 601), np.linspace(np.log(1e-9), np.log(1e3), 601)
    s, tau = np.exp(log_s)[:, None], np.exp(log_tau)[None, :]
    v = s[..., None] ** 2 / n + tau[..., None] ** 2
    sw = np.sum(1 / v, axis=-1)
    mean = np.sum(y / v, axis=-1) / sw
    off = np.sum((y - mean[..., None]) ** 2 / v, axis=-1)
    log_w = (-(n.sum() - len(n)) * np.log(s) - squares / (2 * s**2) - 0.5 * np.sum(np.log(v), axis=-1) - 0.5 * np.log(sw)
             - 0.5 * off + np.log(tau) - np.log1p((tau / 0.2) ** 2))
    w = np.exp(log_w - log_w.max())
    w[[0, -1], :] /= 2
    w /= w.sum()
    if which < 0:
        m, var = mean, 1 / sw + tau**2 + s**2
    else:
        lent = s**2 / n[which] / v[..., which]
        m, var = y[which] + lent * (mean - y[which]), lent * tau**2 + lent**2 / sw + s**2
    keep = w > 1e-16
    w, m, sd = w[keep], m[keep], np.sqrt(np.broadcast_to(var, w.shape)[keep] if var.shape == w.shape else var[keep])
    return optimize.brentq(lambda x: np.sum(w * stats.norm.cdf((x - m) / sd)) - 0.05, m.min() - 40, m.max() + 40, xtol=1e-11)


def doubted(count):
    """As above where the last test of the first kind may be spoilt: 2 in 100 are, with five times the scatter. Two models, weighed by their evidence."""
    for i in range(count):
        kinds = [rng.normal(rng.normal(5, 0.3), 0.15, int(rng.integers(3, 6))) for _ in range(int(rng.integers(4, 7)))]
        kinds[0][-1] += rng.choice([-1, 1]) * rng.uniform(0.3, 1.5)
        which = -1 if i == 0 else i - 1
        say("doubted", [which] + [v for k in kinds for v in (len(k), *k)], spoilt(kinds, which))


def spoilt(kinds, which):
    log_s, log_tau = np.linspace(np.log(0.01), np.log(1.5), 601), np.linspace(np.log(1e-9), np.log(1e3), 601)
    s, tau = np.exp(log_s)[:, None], np.exp(log_tau)[None, :]
    parts = []
    for prior, last in ((0.98, 1.0), (0.02, 1 / 25)):
        weights = [np.ones(len(k)) for k in kinds]
        weights[0][-1] = last
        n = np.array([w.sum() for w in weights])
        y = np.array([np.average(k, weights=w) for k, w in zip(kinds, weights)])
        # Every density is written out: tests about theta, then theta about the common mean, that mean flat.
        log_w = np.log(prior) + np.zeros((601, 601))
        for k, w, m in zip(kinds, weights, y):
            log_w = log_w + np.sum(0.5 * np.log(w)) - len(k) * np.log(s) - np.sum(w * (k - m) ** 2) / (2 * s**2) + 0.5 * np.log(s**2 / w.sum())
        v = s[..., None] ** 2 / n + tau[..., None] ** 2
        sw = np.sum(1 / v, axis=-1)
        mean = np.sum(y / v, axis=-1) / sw
        log_w = (log_w - 0.5 * np.sum(np.log(v), axis=-1) - 0.5 * np.log(sw) - 0.5 * np.sum((y - mean[..., None]) ** 2 / v, axis=-1)
                 + np.log(tau) - np.log1p((tau / 0.2) ** 2))
        log_w[[0, -1], :] -= np.log(2)
        if which < 0:
            m, var = mean, 1 / sw + tau**2
        else:
            lent = s**2 / n[which] / v[..., which]
            m, var = y[which] + lent * (mean - y[which]), lent * tau**2 + lent**2 / sw
        parts += [(np.log(0.98) + log_w, m, var + s**2), (np.log(0.02) + log_w, m, var + 25 * s**2)]
    top = max(p[0].max() for p in parts)
    w, m, sd = (np.concatenate([np.broadcast_to(f(p), (601, 601)).ravel() for p in parts]) for f in (lambda p: np.exp(p[0] - top), lambda p: p[1], lambda p: np.sqrt(p[2])))
    keep = w > 1e-16
    w, m, sd = w[keep] / w[keep].sum(), m[keep], sd[keep]
    return optimize.brentq(lambda x: np.sum(w * stats.norm.cdf((x - m) / sd)) - 0.05, m.min() - 60, m.max() + 60, xtol=1e-11)


def effects(count):
    """Ratio of one level to the most common one and its standard error, by least squares with a mean for each kind."""
    for _ in range(count):
        kinds, levels, tests = int(rng.integers(2, 5)), int(rng.integers(2, 4)), int(rng.integers(14, 30))
        kind = np.arange(tests) % kinds
        level = rng.permutation(np.r_[np.zeros(tests // 2, int), rng.integers(0, levels, tests - tests // 2)])
        level[:levels] = np.arange(levels)
        y = 6 + 0.3 * kind - 0.2 * level + 0.1 * rng.standard_normal(tests)
        common = np.argmax(np.bincount(level))
        others = [v for v in range(levels) if v != common and np.any(level == v)]
        x = np.column_stack([kind == k for k in range(kinds)] + [level == v for v in others]).astype(float)
        b, _, rank, _ = np.linalg.lstsq(x, y, rcond=None)
        s2 = np.sum((y - x @ b) ** 2) / (tests - rank)
        for i, v in enumerate(others):
            arguments = [v] + [n for t in zip(kind, level, y) for n in t]
            say("effect", arguments, b[kinds + i])
            say("effect_error", arguments, np.sqrt(s2 * np.linalg.inv(x.T @ x)[kinds + i, kinds + i]))


say("worked_installation", [6], installation(0, 0.4, 0.1, [1.0], 6, [(400, 0.2, 150, 0)] * 6))
tolerance_factors(40)
shrinkage(6)
special(8)
installations(12)
effects(4)
doubted(6)
tolerance_ends()
pairs()
limit_states(12)
