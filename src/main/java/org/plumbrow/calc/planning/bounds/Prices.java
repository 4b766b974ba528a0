package org.plumbrow.calc.planning.bounds;

import java.util.List;
import org.plumbrow.calc.planning.search.BranchModel;

/**
 * What a half-day of each crew and of each kind of equipment costs. Beyond a horizon all is free, which can only make
 * the bound smaller.
 */
final class Prices {

    /** Of each crew by present slot, of each pool by slot. */
    final double[][] crew;

    final double[][] pool;
    /** The sum of all before, one entry more. */
    final double[][] crewBefore;

    final double[][] poolBefore;
    /** Of each crew: how many of its present slots have a price. */
    final int[] crewSlots;

    final int horizon;
    private final BranchModel model;

    Prices(BranchModel model, int horizon) {
        this.model = model;
        this.horizon = horizon;
        int crews = model.crews.length;
        crew = new double[crews][];
        crewBefore = new double[crews][];
        crewSlots = new int[crews];
        for (int number = 0; number < crews; number++) {
            crew[number] = new double[model.crews[number].present.length];
            crewBefore[number] = new double[crew[number].length + 1];
            crewSlots[number] = model.crews[number].indexAtOrAfter[horizon];
        }
        pool = new double[model.pools.length][model.slots.size];
        poolBefore = new double[model.pools.length][model.slots.size + 1];
    }

    double of(int cell) {
        int resource = Usage.resource(cell);
        return resource < crew.length ? crew[resource][Usage.at(cell)] : pool[resource - crew.length][Usage.at(cell)];
    }

    void sumUp() {
        for (int number = 0; number < crew.length; number++) {
            sumUp(crew[number], crewBefore[number]);
        }
        for (int number = 0; number < pool.length; number++) {
            sumUp(pool[number], poolBefore[number]);
        }
    }

    private static void sumUp(double[] each, double[] before) {
        for (int at = 0; at < each.length; at++) {
            before[at + 1] = before[at] + each[at];
        }
    }

    /** What all that there is would cost. */
    double worth() {
        double sum = 0;
        for (int number = 0; number < crew.length; number++) {
            for (int index = 0; index < crewSlots[number]; index++) {
                sum += crew[number][index] * crewFree(number, index);
            }
        }
        for (int number = 0; number < pool.length; number++) {
            for (int slot = 0; slot < horizon; slot++) {
                sum += pool[number][slot] * poolFree(number, slot);
            }
        }
        return sum;
    }

    int crewFree(int number, int index) {
        return model.crews[number].isTaken(index) ? 0 : 1;
    }

    int poolFree(int number, int slot) {
        return Math.max(0, model.pools[number].free[slot]);
    }

    /**
     * What is used beyond what there is, as a direction in which prices rise; less than is used lets them fall.
     *
     * @param grain so many half-days on end have one price, and so the mean of their excess
     * @param alike crews that have one price; each crew is in one of these lists
     */
    void excess(Usage usage, Prices direction, double share, int grain, List<int[]> alike) {
        for (int from = 0; from < horizon; from += grain) {
            int to = Math.min(horizon, from + grain);
            for (int[] crews : alike) {
                excess(usage, direction, share, from, to, crews);
            }
            for (int number = 0; number < pool.length; number++) {
                double over = 0;
                for (int slot = from; slot < to; slot++) {
                    over += usage.pool[number][slot] - poolFree(number, slot);
                }
                mix(direction.pool[number], from, to, over / (to - from), share);
            }
        }
    }

    private void excess(Usage usage, Prices direction, double share, int from, int to, int[] crews) {
        double over = 0;
        int count = 0;
        for (int number : crews) {
            int[] indexes = model.crews[number].indexAtOrAfter;
            for (int index = indexes[from]; index < indexes[to]; index++) {
                over += usage.crew[number][index] - crewFree(number, index);
                count++;
            }
        }
        for (int number : crews) {
            int[] indexes = model.crews[number].indexAtOrAfter;
            mix(direction.crew[number], indexes[from], indexes[to], over / Math.max(1, count), share);
        }
    }

    private static void mix(double[] direction, int from, int to, double now, double share) {
        for (int at = from; at < to; at++) {
            direction[at] = share * now + (1 - share) * direction[at];
        }
    }

    /** Squared length of a direction, leaving out what would push a price below nothing. */
    double square(Prices direction) {
        double sum = 0;
        for (int number = 0; number < crew.length; number++) {
            sum += square(crew[number], direction.crew[number], crewSlots[number]);
        }
        for (int number = 0; number < pool.length; number++) {
            sum += square(pool[number], direction.pool[number], horizon);
        }
        return sum;
    }

    private static double square(double[] price, double[] direction, int to) {
        double sum = 0;
        for (int at = 0; at < to; at++) {
            sum += price[at] > 0 || direction[at] > 0 ? direction[at] * direction[at] : 0;
        }
        return sum;
    }

    /** These prices become those of another, moved along a direction. */
    void move(Prices from, Prices direction, double step) {
        for (int number = 0; number < crew.length; number++) {
            move(crew[number], from.crew[number], direction.crew[number], step, crewSlots[number]);
        }
        for (int number = 0; number < pool.length; number++) {
            move(pool[number], from.pool[number], direction.pool[number], step, horizon);
        }
    }

    void take(Prices other) {
        for (int number = 0; number < crew.length; number++) {
            System.arraycopy(other.crew[number], 0, crew[number], 0, crew[number].length);
        }
        for (int number = 0; number < pool.length; number++) {
            System.arraycopy(other.pool[number], 0, pool[number], 0, pool[number].length);
        }
    }

    private static void move(double[] price, double[] from, double[] direction, double step, int to) {
        for (int at = 0; at < to; at++) {
            price[at] = Math.max(0, from[at] + step * direction[at]);
        }
    }
}
