package org.plumbrow.calc.outage.ranking;

import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The smallest relaxation for every single kind of factor and every pair, over all hours that were looked at. */
final class Relaxations {

    private static final int PAIRS_SHOWN = 10;
    private static final Comparator<Relaxation> SMALLEST =
            Comparator.comparingDouble(Relaxation::size).thenComparing(Relaxation::start);

    private final Map<String, Relaxation> singles = new HashMap<>();
    private final Map<String, Relaxation> pairs = new HashMap<>();
    private final SiteClock clock;

    Relaxations(SiteClock clock) {
        this.clock = clock;
    }

    void offer(int start, List<Factor> broken) {
        if (broken.size() > 2) {
            return;
        }
        double size = 0;
        for (Factor factor : broken) {
            // Where value and limit are equal and the limit itself is out, the least step is asked for.
            size += Math.max(factor.lacks(), 1e-9) / factor.kind().step();
        }
        Map<String, Relaxation> into = broken.size() == 1 ? singles : pairs;
        String key = broken.stream().map(factor -> factor.kind().name()).collect(Collectors.joining("+"));
        Relaxation known = into.get(key);
        if (known == null || size < known.size()) {
            into.put(key, new Relaxation(clock.time(start), broken, size));
        }
    }

    /** Singles by size, then pairs by size. */
    List<Relaxation> smallest() {
        List<Relaxation> all = new java.util.ArrayList<>(
                singles.values().stream().sorted(SMALLEST).toList());
        pairs.values().stream().sorted(SMALLEST).limit(PAIRS_SHOWN).forEach(all::add);
        return all;
    }
}
