package org.plumbrow.branch.change;

import org.plumbrow.web.May;
import org.plumbrow.web.Place;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** Where the settings stand in the navigation. */
@Configuration(proxyBeanMethods = false)
class ChangePlaces {

    @Bean
    Place branchSettingsPlace() {
        return Place.underOwnName(10, "branch.settings.place", "/settings", May.CHANGE_SETTINGS);
    }
}
