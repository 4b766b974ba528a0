package org.plumbrow.project.intake;

import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

@Configuration
class IntakePlaces {

    @Bean
    Place projectIntake() {
        return Place.underOwnName(60, "project.intake.place", "/projects/intake", May.IMPORT);
    }
}
