package org.plumbrow.calc.outage.ranking;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import org.plumbrow.calc.outage.MinuteWords;
import org.plumbrow.calc.ridethrough.GeneratorCover;

/**
 * One hour that could be the one, with everything it was judged by. Figures are planning aids: people decide.
 *
 * @param verdict the worst of its factors
 * @param chanceBack that the power is back before anything suffers, 0 to 1, a generator taken as running; empty where
 *     nobody may give it: medical equipment, or no weather for the hour
 * @param neededBy by when the power must be back; empty where nothing binds
 * @param bound what binds
 * @param marginMinutes from the planned end to {@code neededBy}; empty where nothing binds
 * @param latestStart the last minute of the day up to which this window may slip, nothing breaking
 * @param latestReversal the last minute to decide to reverse, begun at {@code start}; empty where nothing binds
 * @param generatorStops what happens if the generator stops after half an hour; empty where there is none
 */
public record HourWindow(
        LocalDateTime start,
        LocalDateTime end,
        String crewId,
        String crewName,
        Verdict verdict,
        OptionalDouble chanceBack,
        Optional<LocalDateTime> neededBy,
        String bound,
        OptionalInt marginMinutes,
        LocalDateTime latestStart,
        Optional<LocalDateTime> latestReversal,
        List<Factor> factors,
        Optional<GeneratorCover.Stopped> generatorStops) {

    public HourWindow {
        factors = List.copyOf(factors);
    }

    /** Why it stands where it stands: chance, margin, then what somebody should look at. */
    public List<String> reasons() {
        List<String> reasons = new ArrayList<>();
        reasons.add(chanceSentence());
        reasons.add(
                marginMinutes.isPresent()
                        ? MinuteWords.of(marginMinutes.getAsInt()) + " from the planned end to " + bound + "."
                        : "Nothing binds the end.");
        factors.stream()
                .filter(factor -> factor.verdict() != Verdict.MET)
                .map(Factor::sentence)
                .forEach(reasons::add);
        return reasons;
    }

    private String chanceSentence() {
        if (chanceBack.isEmpty()) {
            return "No chance is given.";
        }
        double of100 = Math.floor(100 * chanceBack.getAsDouble() + 1e-9);
        return String.format(
                Locale.US,
                "In %s%.0f of 100 cases the power is back before anything suffers%s.",
                of100 >= 99 ? "more than " : "",
                Math.min(99, of100),
                generatorStops.isPresent() ? ", as long as the generator runs" : "");
    }

    int margin() {
        return marginMinutes.orElse(Integer.MAX_VALUE);
    }
}
