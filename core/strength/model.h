#pragma once

/// The strength model, on one page.
///
/// **What is estimated.** For each lifter and lift, the most that could be lifted once in the
/// competition variation on a usual training day, week by week, from ordinary sets: load, reps,
/// effort rating, misses, and bar velocity where there is one.
///
/// **State** (state_belief.h). Jointly normal; ln units of the max unless said otherwise.
///   chain, moves from Sunday to Sunday:
///     level       random walk with the slope as its mean step; SD of a step: learned, about 0.8 %
///     slope       decays by 4 % a week; SD 0.2 % a week
///     layoff      <= 0; from the eleventh day off it falls toward -15 % with a half-life of five
///                 weeks, uncertain by half of that; regained at 30 % a week of training
///     rating bias random walk, 0.045 reps a week
///   of one session: the day form, Student's t with 3 degrees as a normal whose variance is chosen
///     when the session has been read (one step of reweighting)
///   border, constant for a lifter: ln kappa and power of the rep curve; compression of ratings;
///     fatigue per hard set; usual reserve of unrated sets; for each variation met, ln of its ratio
///     to the competition max and ln of its rep cost; shift and stretch of the load-velocity line.
///
/// **What a set is expected to show** (set_expectation.h).
///     drop = level + layoff + form + ln ratio - fatigue x hard sets before - ln load
///     N    = 1 + (drop / (kappa x rep cost))^(1 / power), straight near and above the max
/// is the number of reps that could be done. In a lead-rep set of l lead reps the rest of the set
/// has the share 1 - l / N(lead variation) of the reps that its own variation would allow.
///
/// **What a set says** (set_readings.h), always in reps, where the noise is:
///     finished    N > reps; racked before the plan was done: probably N < reps + 1
///     missed      reps <= N < reps + 1; at the first rep N < 1
///     rated       10 - rating = bias + reserve said + noise; the reserve N - reps is said in full
///                 up to one rep and compressed beyond; SD 0.55 + 0.13 x reserve, by the reserve
///                 that the model expects and not by the one that was said; a 10 and a rating at or
///                 below the lifter's lowest, or "light", are intervals
///     unrated     N - reps about the lifter's usual, SD 12: nearly nothing, since what goes
///     unrated
///                 goes so for a reason that many sets share; nothing at all for a warm-up
///     velocity    the published load-velocity line, shifted and stretched
/// Every reading may be gross (2 or 3 %): then it says nothing. Where nearly all sets of late were
/// gross, the level starts anew from the sets. How far a rating or a day scatters is adapted to the
/// lifter as the log grows.
///
/// **How it is computed.** Each reading is a scalar: its gradient is taken at the belief (iterated
/// while the max is hardly known), and the first two moments of the posterior are matched
/// (moments.h). That is one rank-one update, so a fit costs time linear in the sets: sessions are
/// eliminated as they pass, weeks in a chain, and the border stays with the chain throughout. The
/// backward pass (chain_smoother.h) runs over the weeks given the border.
/// *Filtered* estimates use no later set of this lifter, not even for the border. *Smoothed* ones
/// use all, with gradients as the filter took them.
///
/// **Pooling** (pooling.h). Means and spreads between lifters of kappa, rating bias, fatigue,
/// ratios, rep costs and velocity lines, and the roster's drift, day form and rating
/// noise, by expectation maximisation; the published values (roster_priors.cpp names them) count as
/// six lifters more. The power and the compression keep their published priors: a roster of
/// wrong-shaped curves pulls them to where they mend the bulk of the sets and spoil the max. The
/// pooled values are learned from the whole roster over all time, so a filtered path owes them a
/// little of the future (0.2-0.5 % RMS in the trials); an estimate made today owes nothing.
///
/// **Interval.** 90 %, of the belief and two allowances for what the belief does not doubt: for
/// what no curve of this family fits, 0.11 % for every rep that the curve has to reach down, from
/// the rated and missed sets of late to a single; and for ratings that err together, 4.5 % over the
/// root of the number of rated and missed sets of late (fading over eight weeks).
/// **Today** is passed in; without sets the chain runs on to the last Sunday up to it.
/// **Standing**: estimate_report.cpp.
///
/// **What it cannot know.**
///   - A lifter who always rates too low or too high looks weaker or stronger by about 3 % a rep.
///   Only
///     misses, sets cut short and finished heavy singles tell a rating habit from strength; without
///     them the habit stays near the roster's, and the interval says so.
///   - With one load or one rep range, the curve and the max cannot be told apart.
///   - A variation that is never trained beside the competition lift keeps its table ratio.
///   - A max that differs from what the whole log shows (a meet's excitement, a peak after a taper)
///     is not in the log.
///   - How much a layoff costs this lifter is a guess until they are back.
///   - Soreness, sleep and other lifts are seen only through the day form.
///
/// **Sources.** Filtering and smoothing: Durbin & Koopman (2012), Time Series Analysis by State
/// Space Methods, 2nd ed.; Rauch, Tung & Striebel (1965). Moment matching: Minka (2001). Iterated
/// linearisation: Bell & Cathey (1993), IEEE Trans Autom Control 38(2):294-297. Empirical Bayes by
/// expectation maximisation: Dempster, Laird & Rubin (1977). The trade's numbers: beside each value
/// in roster_priors.cpp and set_readings.cpp. All from memory.
namespace strength {
}
