package org.plumbrow.permit;

import java.util.Map;
import java.util.Optional;
import java.util.UUID;
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

    private record PaperRule(String item, AwaitedKind kind, AwaitedBook book) implements GateRule {
        @Override
        public Finding check(GateLook look) {
            return WaitFindings.paper(
                    kind,
                    book.at(look).stream().filter(one -> one.kind() == kind).toList());
        }

        @Override
        public Optional<SeenAt> seenAt(UUID projectId) {
            return Optional.of(new SeenAt("Waits", "/projects/" + projectId + "/waits", May.SEE_JOURNAL));
        }
    }

    @Bean
    GateRuleSet paperRules(AwaitedBook book) {
        return new GateRuleSet(PAPERS.entrySet().stream()
                .<GateRule>map(one -> new PaperRule(one.getKey(), one.getValue(), book))
                .toList());
    }
}
