package org.plumbrow.crew;

import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Where the crews stand in the navigation. */
@Configuration(proxyBeanMethods = false)
class CrewPlaces {

    @Bean
    Place crewsPlace() {
        return Place.inTheRow(40, "crew.place", CrewPages.ALL, May.SEE_CREWS);
    }
}
