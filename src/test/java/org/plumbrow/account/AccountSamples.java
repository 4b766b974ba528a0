package org.plumbrow.account;

import org.plumbrow.RouteSamples;
import org.springframework.stereotype.Component;

/** Values for the addresses of the account pages. */
@Component
class AccountSamples implements RouteSamples {}
