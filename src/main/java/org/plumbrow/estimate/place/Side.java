package org.plumbrow.estimate.place;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import org.jspecify.annotations.Nullable;

/**
 * One of the two places: what it holds, and what it gives at the contract's size.
 *
 * @param spots the best first
 * @param wantedKw the contract's size; null where it names none
 */
record Side(List<Spot> spots, @Nullable Double wantedKw) {

    private static final double KW = 0.05;

    static Side of(List<Spot> spots, @Nullable Double wantedKw) {
        return new Side(
                spots.stream()
                        .sorted(Comparator.comparingDouble(Spot::orNothing).reversed())
                        .toList(),
                wantedKw);
    }

    double fitsKw() {
        return spots.stream().mapToDouble(Spot::kwDc).sum();
    }

    int modules() {
        return spots.stream().mapToInt(Spot::modules).sum();
    }

    boolean isEnough() {
        return wantedKw != null && fitsKw() >= wantedKw - KW;
    }

    /** The contract's size, or as much as fits. */
    double usedKw() {
        return wantedKw == null ? fitsKw() : Math.min(wantedKw, fitsKw());
    }

    /** The best spots first, to the contract's size; empty while nothing fits or there is no estimate. */
    OptionalDouble kwh() {
        double left = usedKw();
        double kwh = 0;
        for (Spot spot : spots) {
            if (spot.kwhPerKw() == null) {
                return OptionalDouble.empty();
            }
            double here = Math.min(left, spot.kwDc());
            kwh += here * spot.kwhPerKw();
            left -= here;
        }
        return usedKw() > 0 ? OptionalDouble.of(kwh) : OptionalDouble.empty();
    }

    OptionalDouble kwhPerKw() {
        OptionalDouble kwh = kwh();
        return kwh.isEmpty() ? kwh : OptionalDouble.of(kwh.getAsDouble() / usedKw());
    }

    Optional<String> size() {
        if (spots.isEmpty()) {
            return Optional.empty();
        }
        String fits = say("Holds about %,d modules, %,.1f kW DC.", modules(), fitsKw());
        if (wantedKw == null) {
            return Optional.of(fits);
        }
        return Optional.of(
                isEnough()
                        ? fits + say(" That is enough for the contract’s %,.1f kW DC.", wantedKw)
                        : fits + say(" The contract’s %,.1f kW DC need %,.1f kW more.", wantedKw, wantedKw - fitsKw()));
    }

    Optional<String> year() {
        OptionalDouble kwh = kwh();
        if (kwh.isEmpty()) {
            return Optional.empty();
        }
        String with = wantedKw != null && isEnough() ? "With the contract’s" : "With all that fits,";
        return Optional.of(say("%s %,.1f kW DC: %,.0f kWh.", with, usedKw(), kwh.getAsDouble()));
    }

    static String say(String format, Object... values) {
        return String.format(Locale.US, format, values);
    }
}
