package org.plumbrow.survey;

import java.util.List;
import org.plumbrow.project.gate.GateRuleSet;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Each item of the gate to surveyed that the survey's own data answer. The meter's number is compared by the project room. */
@Configuration(proxyBeanMethods = false)
class SurveyGateRules {

    @Bean
    GateRuleSet gateOnSurveyed(SurveyLook look) {
        return new GateRuleSet(List.of(
                look.rule("surveyed.1", ServiceFindings::voltages),
                look.rule("surveyed.2", ServiceFindings::ratings),
                look.rule("surveyed.4", ServiceFindings::transformer),
                look.rule("surveyed.5", ServiceFindings::faultCurrent),
                look.rule("surveyed.6", ServiceFindings::rotation),
                look.rule("surveyed.7", ServiceFindings::grounding),
                look.rule("surveyed.8", ServiceFindings::generator),
                look.rule("surveyed.9", ServiceFindings::otherSources),
                look.rule("surveyed.10", SiteFindings::roof),
                look.rule("surveyed.11", SiteFindings::roofLife),
                look.rule("surveyed.12", SiteFindings::field),
                look.rule("surveyed.13", SiteFindings::probes),
                look.rule("surveyed.14", SiteFindings::gate),
                look.rule("surveyed.15", SiteFindings::horizon),
                look.rule("surveyed.16", ServiceFindings::distances),
                look.rule("surveyed.17", SiteFindings::route),
                look.rule("surveyed.18", SiteFindings::loads),
                look.rule("surveyed.19", SiteFindings::photos),
                look.rule("surveyed.20", SiteFindings::enoughToDraw)));
    }
}
