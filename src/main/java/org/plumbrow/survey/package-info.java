/**
 * Survey: what was read on the site, so that a design can be drawn and nobody has to drive there twice.
 * <p>Start at {@link Surveys} and {@link SurveyFacts} (what other rooms read), {@code SurveyPart} (which readings there
 * are, with unit and limits) and {@code Completeness} (what the designer still lacks). Rules: a reading outside its limits
 * is kept and asked about, only what is no value is refused; a phone's sending counts once however often it arrives.
 * Tells others through the project's journal and {@code ProjectChanged}. Never judges a design and never refuses a reading.
 */
@NullMarked
@ApplicationModule(
        displayName = "Survey",
        allowedDependencies = {
            "database",
            "web",
            "branch",
            "evidence",
            "project",
            "project :: gate",
            "calc",
            "calc :: duration",
            "calc :: electrical"
        })
package org.plumbrow.survey;

import org.jspecify.annotations.NullMarked;
import org.springframework.modulith.ApplicationModule;
