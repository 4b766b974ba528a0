package org.plumbrow.web.link;

import org.plumbrow.web.SecurityHeaders;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.core.annotation.Order;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.config.http.SessionCreationPolicy;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.header.writers.ReferrerPolicyHeaderWriter.ReferrerPolicy;
import org.springframework.security.web.header.writers.StaticHeadersWriter;

/**
 * The chain of everything behind a private link: no account, no session, no cookie. The address is the credential, so
 * there is nothing a foreign page could misuse, and nothing may carry the address out of the house.
 */
@Configuration(proxyBeanMethods = false)
class PrivateLinkSecurity {

    @Bean
    @Order(10)
    SecurityFilterChain privateLinkChain(HttpSecurity http) throws Exception {
        return http.securityMatcher("/s/**", "/c/**", "/f/**")
                .authorizeHttpRequests(requests -> requests.anyRequest().permitAll())
                .sessionManagement(session -> session.sessionCreationPolicy(SessionCreationPolicy.STATELESS))
                .csrf(AbstractHttpConfigurer::disable)
                .requestCache(AbstractHttpConfigurer::disable)
                .headers(SecurityHeaders.strict())
                .headers(headers -> headers.referrerPolicy(referrer -> referrer.policy(ReferrerPolicy.NO_REFERRER))
                        .addHeaderWriter(new StaticHeadersWriter("X-Robots-Tag", "noindex, nofollow")))
                .build();
    }
}
