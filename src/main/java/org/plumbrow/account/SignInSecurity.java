package org.plumbrow.account;

import org.plumbrow.web.Access;
import org.plumbrow.web.SecurityHeaders;
import org.plumbrow.web.VisitorFilter;
import org.plumbrow.web.VisitorSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;

/** The chain every request of a person with an account passes. Pages behind a private link have a chain of their own. */
@Configuration
class SignInSecurity {

    @Bean
    SecurityFilterChain signedInPeople(HttpSecurity http, Access access, VisitorSource people) throws Exception {
        return http.authorizeHttpRequests(requests -> requests.requestMatchers(
                                "/sign-in",
                                "/error",
                                "/webjars/**",
                                "/plumbrow.css",
                                "/*.js",
                                "/favicon.svg",
                                "/favicon.ico",
                                "/actuator/health/**",
                                "/actuator/health")
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .headers(SecurityHeaders.strict())
                .formLogin(form -> form.loginPage("/sign-in")
                        .usernameParameter("email")
                        .passwordParameter("password")
                        .permitAll())
                .logout(out -> out.logoutUrl("/sign-out").logoutSuccessUrl("/sign-in?out"))
                .addFilterAfter(new VisitorFilter(access, people), AnonymousAuthenticationFilter.class)
                .build();
    }
}
