package org.plumbrow.cutover;

import java.util.List;
import java.util.Optional;
import java.util.UUID;
import java.util.function.Function;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.GateRuleSet;
import org.plumbrow.project.gate.SeenAt;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the gate to the cutover asks of loads, generator, animals, milk, weather and crew, read from what the house knows. */
@Configuration(proxyBeanMethods = false)
class DayBeforeGateRules {

    private static final String STANDS = "without-power";
    private static final String READINESS = "Readiness";
    private static final String STANDS_WORDS = "What stands without power";

    /** A rule that looks at the day before, wherever else its figures are kept. */
    private record DayBeforeRule(
            String item,
            String page,
            String words,
            Function<ProjectFacts, DayBefore> reader,
            Function<DayBefore, Finding> judge)
            implements GateRule {
        @Override
        public Finding check(GateLook look) {
            return judge.apply(look.once(DayBefore.class, reader));
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt(words, "/projects/" + projectId + "/" + page, May.SEE_CUTOVERS));
        }
    }

    @Bean
    GateRuleSet dayBeforeRules(DayBeforeReading reading) {
        Function<ProjectFacts, DayBefore> reader = reading::of;
        return new GateRuleSet(List.of(
                new DayBeforeRule("cutover.5", STANDS, STANDS_WORDS, reader, DayBeforeFindings::loads),
                new DayBeforeRule("cutover.6", STANDS, STANDS_WORDS, reader, DayBeforeFindings::generatorRan),
                new DayBeforeRule("cutover.7", STANDS, STANDS_WORDS, reader, DayBeforeFindings::flock),
                new DayBeforeRule("cutover.8", STANDS, STANDS_WORDS, reader, DayBeforeFindings::milk),
                new DayBeforeRule("cutover.10", "outage/readiness", READINESS, reader, DayBeforeFindings::weather),
                new DayBeforeRule("cutover.11", "outage/readiness", READINESS, reader, DayBeforeFindings::crew)));
    }
}
