package org.plumbrow.account.door;

import org.plumbrow.account.firm.FirstRun;
import org.plumbrow.account.firm.FirstRunFirst;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Devices;
import org.plumbrow.web.Access;
import org.plumbrow.web.SecurityHeaders;
import org.plumbrow.web.VisitorFilter;
import org.plumbrow.web.VisitorSource;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.security.config.annotation.web.builders.HttpSecurity;
import org.springframework.security.config.annotation.web.configurers.AbstractHttpConfigurer;
import org.springframework.security.web.SecurityFilterChain;
import org.springframework.security.web.authentication.AnonymousAuthenticationFilter;
import org.springframework.security.web.context.HttpSessionSecurityContextRepository;
import org.springframework.security.web.context.SecurityContextRepository;
import org.springframework.security.web.csrf.CsrfFilter;
import org.springframework.security.web.csrf.CsrfTokenRepository;
import org.springframework.security.web.csrf.HttpSessionCsrfTokenRepository;

/**
 * The chain every request of a person with an account passes. Pages behind a private link have a chain of their own.
 * Signing in is a page of ours ({@link SignInPage}), as it takes two steps and may carry a form through.
 */
@Configuration
class SignInSecurity {

    private static final String[] FOR_EVERYBODY = {
        "/sign-in",
        "/sign-in/**",
        "/forgotten",
        "/reset/*",
        "/invited/*",
        "/first-run",
        "/error",
        "/webjars/**",
        "/*.css",
        "/*.js",
        "/*.png",
        "/icons/**",
        "/favicon.svg",
        "/favicon.ico",
        "/actuator/health/**",
        "/actuator/health"
    };

    @Bean
    SecurityContextRepository sessionContexts() {
        return new HttpSessionSecurityContextRepository();
    }

    @Bean
    CsrfTokenRepository formTokens() {
        return new HttpSessionCsrfTokenRepository();
    }

    @Bean
    SecurityFilterChain signedInPeople(
            HttpSecurity http,
            Access access,
            VisitorSource people,
            WebSignIn signIn,
            SignOut signOut,
            Away away,
            FirstRun firstRun,
            Devices devices,
            Credentials credentials,
            SecurityContextRepository contexts,
            CsrfTokenRepository formTokens)
            throws Exception {
        return http.authorizeHttpRequests(requests -> requests.requestMatchers(FOR_EVERYBODY)
                        .permitAll()
                        .anyRequest()
                        .authenticated())
                .headers(SecurityHeaders.strict())
                .securityContext(context -> context.securityContextRepository(contexts))
                .csrf(csrf -> csrf.csrfTokenRepository(formTokens))
                .requestCache(AbstractHttpConfigurer::disable)
                .exceptionHandling(missing -> missing.authenticationEntryPoint(
                                (request, response, nobody) -> away.nobody(request, response))
                        .accessDeniedHandler((request, response, refused) -> away.wrongToken(request, response)))
                .logout(out ->
                        out.logoutUrl("/sign-out").addLogoutHandler(signOut).logoutSuccessUrl("/sign-in?out"))
                .addFilterBefore(new TwelveHours(signIn), CsrfFilter.class)
                .addFilterBefore(new KeptPhone(devices, credentials, signIn), CsrfFilter.class)
                .addFilterAfter(new VisitorFilter(access, people), AnonymousAuthenticationFilter.class)
                .addFilterAfter(new FormTokenAhead(access), VisitorFilter.class)
                .addFilterAfter(new FirstRunFirst(firstRun, access), VisitorFilter.class)
                .build();
    }
}
