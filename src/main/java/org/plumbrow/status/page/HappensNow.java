package org.plumbrow.status.page;

import java.util.Arrays;
import java.util.Optional;
import java.util.Set;
import org.plumbrow.cutover.daylog.DayStory;

/** What a customer is told of the work under way: five stretches of the procedure, and putting everything back. */
enum HappensNow {
    BEFORE("1", "2", "3", "H1", "4"),
    OFF("5", "6", "H2"),
    WIRES("7", "8", "H3"),
    COMES_BACK("9", "10", "H4"),
    LOADS("11", "H5"),
    PUT_BACK();

    private final Set<String> codes;

    HappensNow(String... codes) {
        this.codes = Set.of(codes);
    }

    /** Empty while nothing is written, and once the power is back. */
    static Optional<HappensNow> of(DayStory day) {
        return switch (day.how()) {
            case REVERSING -> Optional.of(PUT_BACK);
            case RUNNING ->
                day.here()
                        .flatMap(line -> Arrays.stream(values())
                                .filter(one -> one.codes.contains(line.code()))
                                .findFirst());
            default -> Optional.empty();
        };
    }
}
