package fairboil.analysis.normalise;

import fairboil.analysis.heat.Loss;

/**
 * How pots of one group lose heat, from all coolings that were logged of them.
 *
 * @param group the group
 * @param loss mean UA, and k
 * @param scatter standard deviation of UA from run to run, W/K; of a single run, what is taken for
 *     it
 * @param perPascalUncertainty standard uncertainty of k, W/Pa
 * @param perKelvinByPerPascal by how much UA changes with k, Pa/K
 * @param ownUncertainty standard uncertainty of UA of one run by its own cooling, the mean of them,
 *     W/K
 * @param coolings how many runs, at least 1
 */
public record PooledLoss(
    LossGroup group,
    Loss loss,
    double scatter,
    double perPascalUncertainty,
    double perKelvinByPerPascal,
    double ownUncertainty,
    int coolings) {}
