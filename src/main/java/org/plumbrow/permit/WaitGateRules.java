package org.plumbrow.permit;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.function.BiFunction;
import java.util.stream.Stream;
import org.plumbrow.project.ProjectFacts;
import org.plumbrow.project.SiteLoad;
import org.plumbrow.project.gate.Finding;
import org.plumbrow.project.gate.GateLook;
import org.plumbrow.project.gate.GateRule;
import org.plumbrow.project.gate.GateRuleSet;
import org.plumbrow.project.gate.SeenAt;
import org.plumbrow.web.May;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** The papers that gates ask for and that come from somebody who is waited for: whoever wrote the wait down answers once. */
@Configuration(proxyBeanMethods = false)
class WaitGateRules {

    private static final Map<String, AwaitedKind> PAPERS = Map.of(
            "permitted.1", AwaitedKind.INTERCONNECTION,
            "permitted.2", AwaitedKind.AGREEMENT,
            "permitted.4", AwaitedKind.PERMIT,
            "permitted.5", AwaitedKind.BUILDING_PERMIT,
            "permitted.6", AwaitedKind.ZONING,
            "installed.2", AwaitedKind.GROUND_INSPECTION,
            "installed.5", AwaitedKind.TRENCH_INSPECTION,
            "installed.16", AwaitedKind.INSPECTION,
            "commissioned.10", AwaitedKind.PERMISSION,
            "commissioned.12", AwaitedKind.FINAL_INSPECTION);

    private record PaperRule(String item, AwaitedBook book, BiFunction<ProjectFacts, List<Awaited>, Finding> judge)
            implements GateRule {
        @Override
        public Finding check(GateLook look) {
            return judge.apply(look.project(), book.at(look));
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt("Waits", "/projects/" + projectId + "/waits", May.SEE_JOURNAL));
        }
    }

    @Bean
    GateRuleSet paperRules(AwaitedBook book) {
        Stream<GateRule> papers = PAPERS.entrySet().stream()
                .map(one -> new PaperRule(
                        one.getKey(), book, (project, asked) -> WaitFindings.ofKind(one.getValue(), asked)));
        GateRule serviceSide = new PaperRule(
                "cutover.4",
                book,
                (project, asked) ->
                        WaitFindings.serviceSide(project.site().loads().equals(Set.of(SiteLoad.HOME)), asked));
        return new GateRuleSet(Stream.concat(papers, Stream.of(serviceSide)).toList());
    }
}
