package org.plumbrow.calc.outage.ranking;

import java.time.temporal.ChronoUnit;
import java.util.List;
import org.plumbrow.calc.outage.ranking.LoadHours.Stands;

/** The worst of all loads in each hour of the clock. */
final class LoadTable {

    private final Stands[] worst;
    private final String[] binding;
    private final boolean[] known;
    private final boolean empty;

    LoadTable(SiteSpans site, List<LoadHours> loads) {
        int hours = (int) ChronoUnit.DAYS.between(site.first(), site.last().plusDays(1)) * 24;
        worst = new Stands[hours];
        binding = new String[hours];
        known = new boolean[hours];
        empty = loads.isEmpty();
        for (int hour = 0; hour < hours; hour++) {
            fill(site.clock(), loads, hour);
        }
    }

    private void fill(SiteClock clock, List<LoadHours> loads, int hour) {
        worst[hour] = Stands.ENDLESS;
        binding[hour] = "";
        known[hour] = true;
        for (LoadHours load : loads) {
            int at = hour - clock.at(load.first()) / 60;
            if (at < 0 || at >= load.hours().size()) {
                known[hour] = false;
            } else {
                Stands stands = load.hours().get(at);
                if (stands.shortEnd() < worst[hour].shortEnd()) {
                    binding[hour] = load.load();
                }
                worst[hour] = worst[hour].and(stands);
            }
        }
    }

    /** Is nothing on the site that asks for power? */
    boolean isEmpty() {
        return empty;
    }

    /** @param from minute, @param to minute, not included */
    boolean isKnown(int from, int to) {
        for (int hour = from / 60; hour <= (to - 1) / 60; hour++) {
            if (hour >= known.length || !known[hour]) {
                return false;
            }
        }
        return true;
    }

    /** The worst hour inside the window decides. */
    Stands worst(int from, int to) {
        Stands all = Stands.ENDLESS;
        for (int hour = from / 60; hour <= (to - 1) / 60 && hour < worst.length; hour++) {
            all = all.and(worst[hour]);
        }
        return all;
    }

    String binding(int from, int to) {
        double least = Double.POSITIVE_INFINITY;
        String name = "";
        for (int hour = from / 60; hour <= (to - 1) / 60 && hour < worst.length; hour++) {
            if (worst[hour].shortEnd() < least) {
                least = worst[hour].shortEnd();
                name = binding[hour];
            }
        }
        return name.isEmpty() ? "What is on site" : name;
    }
}
