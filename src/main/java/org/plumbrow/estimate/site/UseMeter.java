package org.plumbrow.estimate.site;

import java.time.Instant;
import java.time.YearMonth;
import java.util.List;
import java.util.UUID;
import org.jspecify.annotations.Nullable;

/**
 * One source of a site's use: a meter typed month by month, or a file with the readings of one or more.
 *
 * @param typed null for a file
 * @param evidenceId the file; null for typed months
 * @param wattHours the person said that a file without a unit is in Wh
 * @param counted whether it counts as the site's use; a file is looked at first
 */
public record UseMeter(
        UUID id,
        UUID branchId,
        UUID projectId,
        long version,
        String name,
        Kind kind,
        @Nullable TypedUse typed,
        @Nullable UUID evidenceId,
        boolean wattHours,
        boolean counted,
        Reading reading,
        Instant broughtAt,
        String broughtBy) {

    /** How it came. */
    public enum Kind {
        TYPED("typed from the bills"),
        TABLE("table"),
        GREEN_BUTTON("Green Button file");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        public String words() {
            return words;
        }
    }

    /** @param first month of the first value @param kwh a value for each month in order */
    public record TypedUse(String first, List<Double> kwh) {
        public TypedUse {
            kwh = List.copyOf(kwh);
        }

        YearMonth firstMonth() {
            return YearMonth.parse(first);
        }
    }

    /**
     * What was read, worked out once.
     *
     * @param said gaps, estimates and conflicts, worst first
     * @param preview the first rows of a table, its heading first
     */
    public record Reading(List<Channel> channels, List<String> said, List<List<String>> preview) {
        public Reading {
            channels = List.copyOf(channels);
            said = List.copyOf(said);
            preview = List.copyOf(preview);
        }

        public double kwh() {
            return channels.stream()
                    .filter(Channel::isUse)
                    .mapToDouble(Channel::kwh)
                    .sum();
        }
    }

    /**
     * One direction of one meter.
     *
     * @param isUse what the customer takes; else what the customer gives
     * @param intervals how many readings @param longestHours the longest of them
     */
    public record Channel(
            String meter,
            boolean isUse,
            Instant from,
            Instant to,
            double kwh,
            int intervals,
            long estimated,
            double longestHours,
            List<Month> months) {
        public Channel {
            months = List.copyOf(months);
        }
    }

    /** @param month "2026-03" @param knownPercent of its hours */
    public record Month(String month, double kwh, double knownPercent, int estimated) {

        /** "Mar 2026". */
        public String words() {
            YearMonth known = YearMonth.parse(month);
            return MonthRow.name(known.getMonth()) + " " + known.getYear();
        }
    }
}
