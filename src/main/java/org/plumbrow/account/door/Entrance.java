package org.plumbrow.account.door;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.util.Objects;
import java.util.Optional;
import org.jspecify.annotations.Nullable;
import org.plumbrow.account.person.Credentials.Proof;
import org.plumbrow.account.person.Devices;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.ui.Model;

/** Lets a person in who has proved everything that was asked, and says where they go on. */
@Component
class Entrance {

    private final WebSignIn signIn;
    private final Devices devices;

    Entrance(WebSignIn signIn, Devices devices) {
        this.signIn = signIn;
        this.devices = devices;
    }

    /** @return the view: the page they wanted, or the form that outlived its session */
    String letIn(
            Proof person,
            String how,
            boolean keep,
            @Nullable String next,
            @Nullable String carried,
            Model model,
            HttpServletRequest request,
            HttpServletResponse response) {
        open(person, how, keep, request, response);
        Optional<CarriedForm> form = CarriedForm.unpack(carried);
        if (form.isPresent()) {
            model.addAttribute("carried", form.get());
            return "account/again";
        }
        return "redirect:" + goOn(next);
    }

    void open(Proof person, String how, boolean keep, HttpServletRequest request, HttpServletResponse response) {
        signIn.open(person, how, request, response);
        if (keep) {
            String userAgent = Objects.toString(request.getHeader(HttpHeaders.USER_AGENT), "");
            KeptPhone.carry(devices.keep(person.id(), userAgent), request, response);
        }
    }

    static String goOn(@Nullable String next) {
        return LocalAddress.isOurs(next) ? next : "/";
    }
}
