/** Who somebody is and how they prove it: passwords, tries, second factors, kept phones, sessions, security events. */
@NullMarked
package org.plumbrow.account.person;

import org.jspecify.annotations.NullMarked;
