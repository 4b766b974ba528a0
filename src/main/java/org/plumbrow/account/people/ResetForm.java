package org.plumbrow.account.people;

import org.jspecify.annotations.Nullable;

/** A new password, chosen behind a link. */
record ResetForm(@Nullable String password, @Nullable String again) {}
