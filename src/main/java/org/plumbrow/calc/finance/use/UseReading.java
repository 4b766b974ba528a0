package org.plumbrow.calc.finance.use;

import java.util.Comparator;
import java.util.List;

/**
 * What came of reading use: channels, one for each meter and direction, none when it was refused.
 *
 * @param channels empty when refused
 * @param findings worst first
 */
public record UseReading(List<UseChannel> channels, List<UseFinding> findings) {

    public UseReading {
        channels = List.copyOf(channels);
        findings = findings.stream()
                .sorted(Comparator.comparing(UseFinding::severity))
                .toList();
    }

    static UseReading refused(UseRefused why) {
        return new UseReading(List.of(), List.of(why.finding()));
    }

    public boolean isRefused() {
        return findings.stream().anyMatch(finding -> finding.severity() == UseFinding.Severity.REFUSED);
    }
}
