package org.plumbrow.survey;

import org.plumbrow.project.gate.GateRule;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Each item of the gate to surveyed that the survey's own data answer. The meter's number is compared by the project room. */
@Configuration(proxyBeanMethods = false)
class SurveyGateRules {

    @Bean
    GateRule gateOnSurveyedVoltages(SurveyLook look) {
        return look.rule("surveyed.1", ServiceFindings::voltages);
    }

    @Bean
    GateRule gateOnSurveyedRatings(SurveyLook look) {
        return look.rule("surveyed.2", ServiceFindings::ratings);
    }

    @Bean
    GateRule gateOnSurveyedTransformer(SurveyLook look) {
        return look.rule("surveyed.4", ServiceFindings::transformer);
    }

    @Bean
    GateRule gateOnSurveyedFaultCurrent(SurveyLook look) {
        return look.rule("surveyed.5", ServiceFindings::faultCurrent);
    }

    @Bean
    GateRule gateOnSurveyedRotation(SurveyLook look) {
        return look.rule("surveyed.6", ServiceFindings::rotation);
    }

    @Bean
    GateRule gateOnSurveyedGrounding(SurveyLook look) {
        return look.rule("surveyed.7", ServiceFindings::grounding);
    }

    @Bean
    GateRule gateOnSurveyedGenerator(SurveyLook look) {
        return look.rule("surveyed.8", ServiceFindings::generator);
    }

    @Bean
    GateRule gateOnSurveyedOtherSources(SurveyLook look) {
        return look.rule("surveyed.9", ServiceFindings::otherSources);
    }

    @Bean
    GateRule gateOnSurveyedRoof(SurveyLook look) {
        return look.rule("surveyed.10", SiteFindings::roof);
    }

    @Bean
    GateRule gateOnSurveyedRoofLife(SurveyLook look) {
        return look.rule("surveyed.11", SiteFindings::roofLife);
    }

    @Bean
    GateRule gateOnSurveyedField(SurveyLook look) {
        return look.rule("surveyed.12", SiteFindings::field);
    }

    @Bean
    GateRule gateOnSurveyedProbes(SurveyLook look) {
        return look.rule("surveyed.13", SiteFindings::probes);
    }

    @Bean
    GateRule gateOnSurveyedGate(SurveyLook look) {
        return look.rule("surveyed.14", SiteFindings::gate);
    }

    @Bean
    GateRule gateOnSurveyedHorizon(SurveyLook look) {
        return look.rule("surveyed.15", SiteFindings::horizon);
    }

    @Bean
    GateRule gateOnSurveyedDistances(SurveyLook look) {
        return look.rule("surveyed.16", ServiceFindings::distances);
    }

    @Bean
    GateRule gateOnSurveyedRoute(SurveyLook look) {
        return look.rule("surveyed.17", SiteFindings::route);
    }

    @Bean
    GateRule gateOnSurveyedLoads(SurveyLook look) {
        return look.rule("surveyed.18", SiteFindings::loads);
    }

    @Bean
    GateRule gateOnSurveyedPhotos(SurveyLook look) {
        return look.rule("surveyed.19", SiteFindings::photos);
    }

    @Bean
    GateRule gateOnSurveyedEnoughToDraw(SurveyLook look) {
        return look.rule("surveyed.20", SiteFindings::enoughToDraw);
    }
}
