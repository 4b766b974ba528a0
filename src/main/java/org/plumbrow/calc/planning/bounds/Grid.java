package org.plumbrow.calc.planning.bounds;

import java.util.Arrays;
import java.util.List;
import org.plumbrow.calc.planning.search.BranchModel;

/** Half-days and crews that have one price put together: so many half-days on end, of all crews of a list. */
final class Grid {

    private final int[][] row;
    /** Of each row: how many half-days of a crew or of a piece of equipment there are. */
    final double[] free;

    Grid(BranchModel model, Prices prices, int grain, List<int[]> alike) {
        int crews = model.crews.length;
        int blocks = prices.horizon / grain + 1;
        row = new int[crews + model.pools.length][];
        free = new double[(alike.size() + model.pools.length) * blocks];
        for (int list = 0; list < alike.size(); list++) {
            for (int crew : alike.get(list)) {
                row[crew] = new int[prices.crewSlots[crew]];
                for (int index = 0; index < row[crew].length; index++) {
                    row[crew][index] = list * blocks + model.crews[crew].present[index] / grain;
                    free[row[crew][index]] += prices.crewFree(crew, index);
                }
            }
        }
        for (int pool = 0; pool < model.pools.length; pool++) {
            row[crews + pool] = new int[prices.horizon];
            for (int slot = 0; slot < prices.horizon; slot++) {
                row[crews + pool][slot] = (alike.size() + pool) * blocks + slot / grain;
                free[row[crews + pool][slot]] += prices.poolFree(pool, slot);
            }
        }
    }

    /** The rows of what is used within the horizon. */
    int[] rows(int[] cells) {
        int[] rows = new int[cells.length];
        int count = 0;
        for (int cell : cells) {
            int[] own = row[Usage.resource(cell)];
            if (Usage.at(cell) < own.length) {
                rows[count++] = own[Usage.at(cell)];
            }
        }
        return Arrays.copyOf(rows, count);
    }

    /** Gives each half-day the price of its row, or some of the way there from other prices. */
    void price(Prices into, double[] rowPrices, Prices from, double share) {
        for (int crew = 0; crew < into.crew.length; crew++) {
            price(into.crew[crew], row[crew], rowPrices, from.crew[crew], share);
        }
        for (int pool = 0; pool < into.pool.length; pool++) {
            price(into.pool[pool], row[into.crew.length + pool], rowPrices, from.pool[pool], share);
        }
    }

    private static void price(double[] into, int[] row, double[] rowPrices, double[] from, double share) {
        for (int at = 0; at < row.length; at++) {
            into[at] = share * rowPrices[row[at]] + (1 - share) * from[at];
        }
    }
}
