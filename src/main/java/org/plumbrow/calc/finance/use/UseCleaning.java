package org.plumbrow.calc.finance.use;

import java.time.Instant;
import java.time.format.DateTimeFormatter;
import java.time.zone.ZoneRules;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Locale;

/** Makes one channel of what was read, and says whatever is odd about it. */
final class UseCleaning {

    private static final DateTimeFormatter WHEN = DateTimeFormatter.ofPattern("d MMM uuuu HH:mm", Locale.US);
    private static final double A_SECOND_H = 1 / 3600.0;

    private final String meter;
    private final Flow flow;
    private final ZoneRules clock;
    private final List<UseFinding> findings;
    private final List<UseInterval> kept = new ArrayList<>();

    UseCleaning(String meter, Flow flow, ZoneRules clock, List<UseFinding> findings) {
        this.meter = meter;
        this.flow = flow;
        this.clock = clock;
        this.findings = findings;
    }

    UseChannel of(List<UseInterval> read) {
        if (read.isEmpty()) {
            throw new UseRefused("%s: there is no reading.".formatted(meter), "Bring a file with readings.");
        }
        keepOnce(read);
        sayGaps();
        sayNegatives();
        sayEstimates();
        return new UseChannel(meter, flow, clock, kept);
    }

    private void keepOnce(List<UseInterval> read) {
        int repeated = 0;
        List<UseInterval> sorted =
                read.stream().sorted(Comparator.comparing(UseInterval::start)).toList();
        for (UseInterval each : sorted) {
            UseInterval last = kept.isEmpty() ? each : kept.get(kept.size() - 1);
            if (kept.isEmpty() || !each.start().isBefore(last.end())) {
                kept.add(each);
            } else if (each.start().equals(last.start()) && each.end().equals(last.end())) {
                repeated++;
                sayConflict(last, each);
            } else {
                findings.add(UseFinding.warning(
                        "%s: the reading from %s lies partly in the one before it."
                                .formatted(meter, when(each.start())),
                        "It was left out."));
            }
        }
        if (repeated > 0) {
            findings.add(UseFinding.warning(
                    "%s: %,d %s twice.".formatted(meter, repeated, repeated == 1 ? "reading stands" : "readings stand"),
                    "Each was counted once."));
        }
    }

    private void sayConflict(UseInterval first, UseInterval again) {
        if (first.kwh() != again.kwh()) {
            findings.add(UseFinding.warning(
                    "%s: the reading from %s stands twice with different values, %,.3f and %,.3f kWh."
                            .formatted(meter, when(first.start()), first.kwh(), again.kwh()),
                    "The first was taken; ask the utility which is right."));
        }
    }

    private void sayGaps() {
        for (int at = 1; at < kept.size(); at++) {
            Instant from = kept.get(at - 1).end();
            Instant to = kept.get(at).start();
            double hours = (to.toEpochMilli() - from.toEpochMilli()) / 3_600_000.0;
            if (hours > A_SECOND_H) {
                findings.add(UseFinding.warning(
                        "%s: nothing is known from %s to %s (%,.1f h).".formatted(meter, when(from), when(to), hours),
                        "The rest of the month stands in for it."));
            }
        }
    }

    private void sayNegatives() {
        List<UseInterval> negative =
                kept.stream().filter(interval -> interval.kwh() < 0).toList();
        if (!negative.isEmpty()) {
            findings.add(UseFinding.warning(
                    "%s: %,d %s below zero, first from %s."
                            .formatted(
                                    meter,
                                    negative.size(),
                                    negative.size() == 1 ? "reading is" : "readings are",
                                    when(negative.get(0).start())),
                    "It was kept; a meter that already counts generation backwards reads so."));
        }
    }

    private void sayEstimates() {
        long estimated = kept.stream().filter(UseInterval::estimated).count();
        if (estimated > 0) {
            findings.add(UseFinding.note(
                    "%s: the utility estimated %,d of %,d readings.".formatted(meter, estimated, kept.size()),
                    "They were taken as they are."));
        }
    }

    private String when(Instant instant) {
        return instant.atOffset(clock.getOffset(instant)).format(WHEN);
    }
}
