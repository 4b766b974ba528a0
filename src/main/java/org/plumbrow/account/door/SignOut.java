package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.person.Credentials;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.Devices;
import org.plumbrow.account.person.SecurityLog;
import org.plumbrow.web.SignedIn;
import org.springframework.security.core.Authentication;
import org.springframework.security.web.authentication.logout.LogoutHandler;
import org.springframework.stereotype.Component;

/** Signing out ends the session and lets go of the phone, if it was kept. */
@Component
class SignOut implements LogoutHandler {

    private final Devices devices;
    private final Credentials credentials;
    private final SecurityLog log;

    SignOut(Devices devices, Credentials credentials, SecurityLog log) {
        this.devices = devices;
        this.credentials = credentials;
        this.log = log;
    }

    @Override
    public void logout(
            HttpServletRequest request, HttpServletResponse response, @Nullable Authentication authentication) {
        KeptPhone.tokenOf(request).ifPresent(token -> {
            devices.end(token);
            KeptPhone.forget(request, response);
        });
        if (authentication != null && authentication.getPrincipal() instanceof SignedIn who) {
            credentials
                    .of(who.personId())
                    .map(Proof::actor)
                    .ifPresent(actor -> log.write("signed-out", actor, "Signed out."));
        }
    }
}
